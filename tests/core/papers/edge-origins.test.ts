import { describe, expect, test } from 'vitest'
import { design } from '../../../core/design.ts'
import { layoutCorners } from '../../../core/ground/index.ts'
import { guardPlans } from '../../../core/papers/drawings/guard-plan.ts'
import { guardTable } from '../../../core/papers/tables/guard-table.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

function deckOf(file: string) {
  const made = design(CATALOGUE.find((one) => one.file === file)?.job ?? {})
  if (!made.ok || made.value.guard === null) throw new Error(file)
  return { made: made.value, guard: made.value.guard }
}

describe('the corner from which an edge’s posts are measured', () => {
  test('of the deck around the house: edge 5 runs from front left, corner 6; edge 6 from rear left, corner 1', () => {
    // corners as in the job: 1 rear left, 2, 3, 4 at the house, 5 front right, 6 front left; tapes run right or to the yard
    const { made, guard } = deckOf('wrap-hip.json')
    const edges = guardTable(guard, made).rows.map(({ edge }) => edge)
    expect(edges).toContain('front side (edge 5, from corner 6)')
    expect(edges).toContain('left side (edge 6, from corner 1)')
  })

  test.each(['wrap-hip.json', 'largest.json'])(
    'of %s is the one where the ring with the 0 is drawn',
    (file) => {
      const { made, guard } = deckOf(file)
      const corners = new Map(
        layoutCorners(made).map(({ number, along, fromWall }) => [number, { x: along, y: fromWall }]),
      )
      const ringed = new Map(
        guardPlans(made, guard).flatMap(({ primitives }) =>
          primitives.flatMap((p) => (p.kind === 'circle' ? [[p.id, { x: p.cx, y: p.cy }] as const] : [])),
        ),
      )
      let seen = 0
      for (const { edge } of guardTable(guard, made).rows) {
        const [, number, corner] = /edge (\d+), from corner (\d+)/.exec(edge ?? '') ?? []
        const [ring, named] = [ringed.get(`edge-${number}`), corners.get(Number(corner))]
        if (ring === undefined || named === undefined) continue
        seen += 1
        // 12 in before the edge and 6 in out of it: 13.4 in, 430 ticks
        expect(Math.hypot(ring.x - named.x, ring.y - named.y), edge).toBeLessThan(450)
      }
      expect(seen).toBeGreaterThan(1)
    },
  )
})
