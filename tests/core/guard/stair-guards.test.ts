import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import type { Design } from '../../../core/estimate-types.ts'
import { inches } from '../../../core/units/index.ts'

// 60 in up on level ground: 8 risers of 7-1/2 in, 7 treads of 10-1/4 in. Slope 7-1/2 in 10-1/4: 36.19°, its cosine
// 10.25 ÷ √(7.5² + 10.25²) = 0.80704, its tangent 0.73171.
const HIGH = { version: 1, size: { width: '16 ft', depth: '12 ft', height: '60 in' } } as const
const STAIRS = { kind: 'straight', width: '48 in', run: '10 1/4 in' } as const
const [RISE, RUN, TREADS] = [7.5, 10.25, 7]
// riser boards of 1 in and nosings of 7/8 in reach 7/8 in further over their cuts than the deck's boards over the rim, 1 in:
// the uppermost run is shorter by it
const LONG = TREADS * RUN - 0.875
const COSINE = RUN / Math.hypot(RISE, RUN)
const TANGENT = RISE / RUN

function designOf(statement: object): Design {
  const made = design({ ...HIGH, stairs: STAIRS, guard: { where: 'where needed' }, ...statement })
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value
}

const membersOf = ({ guard }: Design, id: RegExp) => guard?.members.filter((one) => id.test(one.id)) ?? []

describe('the guard beside stairs', () => {
  const made = designOf({})
  const sides = made.guard?.stairs ?? []

  it('goes from the rim’s inner face, where the deck’s post stands, to the lowest rise cut', () => {
    expect(sides.map(({ from, to }) => [from / 32, to / 32])).toEqual([
      [-1.5, LONG],
      [-1.5, LONG],
    ])
    for (const { length } of sides) expect(Math.abs(length / 32 - (1.5 + LONG) / COSINE)).toBeLessThan(1 / 16)
  })

  it('has posts no further apart along the slope than on the level, by hand', () => {
    // from the middle of the deck's post, 3-1/4 in inside the edge, to the last at 70.875 − 1.75: 72.375 in level, 89.7 along
    // the slope: two bays of 36.1875 in level between centres, 32.6875 clear
    for (const { posts, bays } of sides) {
      expect(posts.map(({ at }) => at / 32)).toEqual([32.9375, 69.125])
      expect(bays.map(({ clear }) => clear / 32)).toEqual([32.6875, 32.6875])
      // (32.6875 − 5 × 1.5) ÷ 6 = 4.20 in; four would leave 5.3 in
      expect(bays.map(({ balusters }) => balusters)).toEqual([5, 5])
    }
  })

  it('has rails as long as their bay along the slope, to the long points of plumb cuts', () => {
    const rails = membersOf(made, /^stair-guard-rail/)
    expect(rails).toHaveLength(8)
    // an edge of 32.6875 ÷ cosine, and 3-1/2 in × tangent more to the other edge's point
    const long = 32.6875 / COSINE + 3.5 * TANGENT
    for (const { length, ends } of rails) {
      expect(length / 32 - long).toBeGreaterThanOrEqual(0)
      expect(length / 32 - long).toBeLessThan(1 / 16)
      expect(ends).toEqual([3619, 3619])
    }
  })

  it('has a cap along all of it, 1-1/2 in thick and cut plumb', () => {
    const caps = membersOf(made, /^stair-guard-cap/)
    const long = (1.5 + LONG) / COSINE + 1.5 * TANGENT
    expect(caps).toHaveLength(2)
    for (const { length } of caps) expect(Math.abs(length / 32 - long)).toBeLessThan(1 / 16)
  })

  it('has posts that end under the cap, 18 in below the nosings or on the ground', () => {
    // at a post's upper face the cap's top is 36 in over the nosings; the cap is 1-1/2 in ÷ cosine upright
    const upper = 36 + 1.75 * TANGENT - 1.5 / COSINE
    const [first, last] = membersOf(made, /^stair-guard-post-1-/)
    expect(Math.abs((first?.length ?? 0) / 32 - (upper + 18))).toBeLessThan(1 / 16)
    // 1.75 in before the lowest cut the nosings are 1.75 in × tangent + a riser over the ground, and × tangent what the
    // riser's board of 1 in and the nosing reach out
    const nosing = made.stairs[0]?.tread.nosing ?? 0
    const over = RISE + 1.75 * TANGENT + (1 + nosing / 32) * TANGENT
    expect(over).toBeLessThan(18)
    expect(Math.abs((last?.length ?? 0) / 32 - (upper + over))).toBeLessThan(1 / 16)
    for (const { ends } of [first, last].flatMap((one) => one ?? [])) expect(ends).toEqual([0, 3619])
  })

  it('has balusters as long as they stand, in the stock that reaches', () => {
    // upright from the lower rail, 1 in over the nosings, to the cap, and 1-1/2 in × tangent to the long point
    const long = 36 - 1.5 / COSINE - 1 + 1.5 * TANGENT
    const sloped = made.guard?.balusters.find((one) => one.sloped)
    expect(Math.abs((sloped?.length ?? 0) / 32 - long)).toBeLessThan(1 / 16)
    expect(sloped).toMatchObject({ stock: inches(36), count: 20 })
  })

  it('lets no 6 in ball through under its lower rail', () => {
    // the circle in a right triangle is a + b − c across; raised by 1 in the triangle grows by 1 in × cosine on its height
    const step = Math.hypot(RISE, RUN)
    const circle = RISE + RUN - step
    const height = (RISE * RUN) / step
    const ball = (circle * (height + COSINE)) / height
    expect(ball).toBeLessThan(6)
    for (const { triangle, lowerRail } of sides) {
      expect(lowerRail).toBe(inches(1))
      expect(triangle / 32).toBeCloseTo(ball, 6)
    }
    // treads so deep that 1 in is too much: the rail comes lower
    const deep = designOf({ stairs: { ...STAIRS, run: '14 in' } }).guard?.stairs ?? []
    for (const { triangle, lowerRail } of deep) {
      expect(lowerRail).toBeLessThan(inches(1))
      expect(triangle).toBeLessThan(inches(6))
    }
  })

  it('has a block between the stringers behind each of its posts, and a hold-down and two bolts for each', () => {
    const { guard, takeoff, stairs } = made
    const spacing = (48 - 1.5) / ((stairs[0]?.patterns[0]?.count ?? 0) - 1)
    const blocks = membersOf(made, /^stair-guard-blocking/)
    expect(blocks).toHaveLength(4)
    for (const { length } of blocks) expect(Math.abs(length / 32 - (spacing - 1.5))).toBeLessThan(1 / 16)
    const count = (sku: string) => (takeoff.goods.find((one) => one.sku === sku)?.thousandths ?? 0) / 1000
    const posts = guard?.members.filter(({ role }) => role === 'guard post').length ?? 0
    expect(guard?.stairPosts).toBe(4)
    expect(count('guard-hold-down')).toBe(posts)
    expect(count('carriage-bolt-1/2')).toBe(2 * posts)
  })
})

describe('where no post of the deck stands at the head', () => {
  it('stairs along the whole of an edge have posts of their own there', () => {
    const whole = designOf({ stairs: { ...STAIRS, kind: 'full width' } })
    for (const { posts, from } of whole.guard?.stairs ?? []) {
      expect(from).toBe(0)
      expect(posts[0]?.at).toBe(inches(1.75))
    }
    expect(whole.guard?.stretches.some(({ edge }) => edge.side === 'front')).toBe(false)
    // the guards of both sides go on to the corner: their last post is behind the rim, 1-1/2 + 1-3/4 in from it
    for (const { posts, edge } of whole.guard?.stretches ?? [])
      expect((edge.length - (posts.at(-1)?.at ?? 0)) / 32).toBe(3.25)
    expect(whole.checks.find(({ id }) => id === 'guard')?.status).toBe('passes')
  })

  it('a flight that turns on a landing begins at the last post of the flight above', () => {
    const turned = designOf({
      size: { ...HIGH.size, height: '9 ft' },
      stairs: { ...STAIRS, kind: 'landing left' },
    })
    const { guard, stairs } = turned
    const own = guard?.stairs.filter(({ flight }) => flight === stairs[0]?.flights[1]?.number) ?? []
    // one of its sides begins at a post that the flight above has, a post's thickness down from the landing
    expect(own.map(({ from }) => from / 32).sort()).toEqual([0, 3.5])
    const boxes = guard?.members.filter(({ role }) => role === 'guard post').map(({ box }) => box) ?? []
    const inEachOther = boxes.filter((a, i) =>
      boxes
        .slice(i + 1)
        .some(
          (b) =>
            a.x0 < b.x1 - 1 &&
            b.x0 < a.x1 - 1 &&
            a.y0 < b.y1 - 1 &&
            b.y0 < a.y1 - 1 &&
            a.z0 < b.z1 &&
            b.z0 < a.z1,
        ),
    )
    expect(inEachOther).toEqual([])
  })
})
