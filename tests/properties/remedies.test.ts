import fc from 'fast-check'
import { expect, it } from 'vitest'
import { design } from '../../core/design.ts'
import { setField } from '../../core/job/index.ts'
import { remediesFor } from '../../core/sizing/index.ts'
import { drawnDeck } from './arbitrary-deck.ts'

/** A deck is framed for every value that is tried: a tenth of the runs of other laws. */
const RUNS = Math.max(12, Math.round(Number(process.env.FC_RUNS ?? 100) / 10))

it('offers for a check that does not pass only what makes it pass, and says what else then does not', () => {
  let offered = 0
  fc.assert(
    fc.property(drawnDeck, fc.integer({ min: 0, max: 30 }), (statement, pick) => {
      const now = design(statement)
      if (!now.ok) return
      const open = now.value.checks.filter(({ status }) => status !== 'passes' && status !== 'near')
      const check = open[pick % Math.max(1, open.length)]
      if (check === undefined) return
      for (const { changes, words, opens } of remediesFor(statement, check.id)) {
        offered += 1
        expect(changes.length).toBeGreaterThan(0)
        expect(words).toContain('instead of')
        const then = design(changes.reduce((sum, { field, value }) => setField(sum, field, value), statement))
        if (!then.ok) throw new Error(JSON.stringify(then.error))
        const left = then.value.checks.filter(({ status }) => status !== 'passes' && status !== 'near')
        expect(left.map(({ id }) => id)).not.toContain(check.id)
        const newly = left.filter(({ id }) => !open.some((one) => one.id === id)).map(({ title }) => title)
        expect([...new Set(newly)]).toEqual(opens)
      }
    }),
    { numRuns: RUNS },
  )
  expect(offered).toBeGreaterThan(RUNS / 2)
})
