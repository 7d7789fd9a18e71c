import fc from 'fast-check'
import { expect, it } from 'vitest'
import { frameJob } from '../../core/design.ts'
import { readJob } from '../../core/job/index.ts'
import { SAMPLE_BOOK } from '../../core/pricing/index.ts'
import { catalogueOf } from '../../core/sizing/catalogue.ts'
import { withChoice } from '../../core/sizing/choice.ts'
import { PartsOnce } from '../../core/sizing/parts-once.ts'
import { CATALOGUE } from '../fixtures/catalogue.ts'
import { drawnDeck } from './arbitrary-deck.ts'

const deck = fc.oneof(
  drawnDeck,
  fc.constantFrom(...CATALOGUE).map(({ job }) => job),
)
const picks = fc.array(fc.array(fc.nat(), { minLength: 6, maxLength: 6 }), { minLength: 2, maxLength: 6 })

it('frames every way of a deck the same whether its parts were framed before or not', () => {
  fc.assert(
    fc.property(deck, picks, (statement, ways) => {
      const read = readJob(statement)
      if (!read.ok) throw new Error(JSON.stringify(read.error))
      const { job } = read.value
      const { setbacks, joists, front, rear, postSizes, footings } = catalogueOf(job, SAMPLE_BOOK, [])
      const parts = new PartsOnce(job)
      for (const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] of ways) {
        const way = withChoice(job, {
          setbacks: nth(setbacks, a),
          joist: nth(joists, b),
          front: nth(front, c),
          rear: nth(rear, d),
          postSize: nth(postSizes, e),
          footing: nth(footings, f),
        })
        expect(JSON.stringify(frameJob(way, parts.of))).toBe(JSON.stringify(frameJob(way)))
      }
    }),
  )
})

function nth<Value>(values: readonly Value[], n: number): Value {
  return values[n % values.length] as Value
}
