import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import type { Design } from '../../../core/estimate-types.ts'
import { inches } from '../../../core/units/index.ts'

const HIGH = {
  version: 1,
  size: { width: '18 ft', depth: '12 ft', height: '9 ft' },
  frame: { beams: { front: { setback: '20 in', posts: 5 } } },
  guard: { where: 'where needed' },
} as const
const STAIRS = { side: 'front', align: 'middle', width: '4 ft', landingDepth: '36 in' } as const

function designOf(statement: object): Design {
  const made = design({ ...HIGH, ...statement })
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value
}

const good = ({ takeoff }: Design, sku: RegExp): number =>
  takeoff.goods.reduce((sum, one) => sum + (sku.test(one.sku) ? one.thousandths / 1000 : 0), 0)
const onLanding = ({ guard }: Design) => guard?.stretches.filter(({ landing }) => landing !== null) ?? []

describe('the guard of a landing between two flights', () => {
  const made = designOf({ stairs: { ...STAIRS, kind: 'landing' } })

  it('stands on both sides, and is open where the flights come and go', () => {
    // 36 in deep: both sides from end to end; 48 in wide: open to both flights
    expect(onLanding(made).map(({ from, to }) => [from, to])).toEqual([
      [0, inches(36)],
      [0, inches(36)],
    ])
  })

  it('has posts behind the beams and balusters between them, by hand', () => {
    // a beam of two plies, 3 in, and one with a board before it, 4-1/2 in: post centres 1-3/4 in past them; 36 − 6-1/2 − 8 =
    // 21-1/2 in clear; 4 balusters leave (21-1/2 − 6) ÷ 5 = 3.1 in, 3 would leave 4.25 in
    for (const { posts, bays } of onLanding(made)) {
      expect(posts.map(({ at }) => at / 32)).toEqual([4.75, 29.75])
      expect(bays.map(({ clear, balusters }) => [clear / 32, balusters])).toEqual([[21.5, 4]])
    }
  })

  it('has blocks in two bays of its joists behind each post: 15-1/2 in apart, 14 in clear', () => {
    for (const { posts } of onLanding(made))
      for (const { id } of posts) {
        const blocks = made.guard?.members.filter(
          ({ role, cause }) => role === 'guard blocking' && cause.ids.includes(id),
        )
        // one that lies against the posts of two edges serves both
        expect(
          blocks?.map(({ length }) => length / 32),
          id,
        ).toEqual([14, 14])
      }
  })

  it('is in the goods and in the hours: four posts with their hold-downs, eight balusters', () => {
    // the same stairs seven feet lower down, where no landing is high
    const { guard } = made
    const whole = guard?.stretches.flatMap(({ posts }) => posts).length ?? 0
    expect(guard?.deckPosts).toBe(whole)
    expect(good(made, /^guard-hold-down$/)).toBe(whole + (guard?.stairPosts ?? 0))
    const balusters = guard?.stretches
      .flatMap(({ bays }) => bays)
      .reduce((sum, one) => sum + one.balusters, 0)
    expect(guard?.balusters.find(({ sloped }) => !sloped)?.count).toBe(balusters)
    const pieces = made.takeoff.pieces.filter(({ memberId }) =>
      onLanding(made).some(({ posts }) => posts.some(({ id }) => id === memberId)),
    )
    expect(pieces).toHaveLength(4)
  })

  it('lets the check pass, which it failed before', () => {
    expect(made.checks.find(({ id }) => id === 'guard')?.status).toBe('passes')
  })

  it.each([
    ['landing left', 2],
    ['landing right', 2],
  ])('where the lower flight turns off (%s) the front and the other side are guarded', (kind, count) => {
    const turned = designOf({ stairs: { ...STAIRS, kind } })
    expect(onLanding(turned)).toHaveLength(count)
    // the front is as long as the landing is wide, the side as it is deep
    expect(
      onLanding(turned)
        .map(({ from, to }) => (to - from) / 32)
        .sort((a, b) => a - b),
    ).toEqual([36, 48])
    expect(turned.checks.find(({ id }) => id === 'guard')?.status).toBe('passes')
  })

  it('is not asked for by a landing 30 in up or lower', () => {
    // 42 in: six risers of 7 in, the landing after three of them 21 in up
    const low = designOf({
      size: { ...HIGH.size, height: '42 in' },
      stairs: { ...STAIRS, kind: 'landing' },
    })
    expect(onLanding(low)).toEqual([])
  })
})
