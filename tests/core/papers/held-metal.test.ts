import { describe, expect, test } from 'vitest'
import { heldOf } from '../../../core/papers/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'

/** Counted by hand of the plan: AWC DCA 6 has two bolts through each guard post, the hold-down at the upper one. */
const EACH_POST = { bolts: 2, holdDowns: 1 }

describe('the order of a high deck with a landing, whose guard posts beside stairs and hung flights are in doubt', () => {
  const { estimate } = paperSource(
    CATALOGUE.find(({ file }) => file === 'high-stairs-landing.json')?.job ?? {},
  )
  const { holds, lines } = heldOf(estimate)
  const named = (words: RegExp) => holds.find(({ what }) => words.test(what))?.name ?? ''
  const heldBy = (id: string) => lines.get(id as never)
  const [deckPosts, stairPosts] = [named(/^Hold-downs of guard posts/), named(/^Guard posts beside/)]
  const [upper, lower] = [named(/^What flight 1/), named(/^What flight 2/)]

  test('holds a hold-down and two bolts of every post in doubt, on the deck and beside the stairs', () => {
    // GP1 to GP3 of the deck, SG1-1 to SG4-2 beside the stairs
    const posts = 3 + 8
    const holdDowns = heldBy('good-guard-hold-down')
    expect(holdDowns?.thousandths).toBe(posts * EACH_POST.holdDowns * 1000)
    expect(holdDowns?.by.toSorted()).toEqual([deckPosts, stairPosts])
    const bolts = heldBy('good-carriage-bolt-1/2')
    expect(bolts?.thousandths).toBe(posts * EACH_POST.bolts * 1000)
    expect(bolts?.by.toSorted()).toEqual([deckPosts, stairPosts])
  })

  test('holds the hangers of the stringers and the bolts of the headers of flights that hang in doubt', () => {
    // four stringers in either flight; two bolts at each end of four uprights, and two in each of two landing posts; six
    // more hold the braces of the landing, which no check doubts
    expect(heldBy('good-stringer-hanger')).toEqual({ thousandths: 8000, by: [upper, lower] })
    expect(heldBy('good-ledger-bolt-1/2')).toEqual({ thousandths: 20_000, by: [upper, lower] })
  })

  test('holds the boards of the uprights behind a header in doubt, and of the strip under a flight', () => {
    const boardsOf = (role: string) => {
      const ids = new Set(
        estimate.stairs.flatMap(({ members }) =>
          members.filter((one) => one.role === role).map(({ id }) => id),
        ),
      )
      const pieces = new Set(
        estimate.takeoff.pieces.flatMap(({ id, memberId }) => (ids.has(memberId) ? [id] : [])),
      )
      expect(pieces.size).toBeGreaterThan(0)
      return estimate.plans.flatMap(({ plan }) =>
        plan.boards.filter(({ cuts }) => cuts.some(({ pieceId }) => pieces.has(pieceId))),
      )
    }
    for (const role of ['stair upright', 'stair strip'])
      for (const { stockId } of boardsOf(role)) expect(heldBy(`lumber-${stockId}`), role).toBeDefined()
  })
})
