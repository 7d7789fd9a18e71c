import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import type { Design } from '../../../core/estimate-types.ts'
import { inches } from '../../../core/units/index.ts'

// IRC 2021 R312.1.1: a guard where the floor lies more than 30 in above the grade at any point within 36 in horizontally
// of the open side. Need is found here by looking round every inch of every edge, on ground that is a plane.

const [LIMIT, REACH] = [30, 36]

interface Case {
  readonly width: number
  readonly depth: number
  readonly height: number
  /** inches that the ground falls over the width to the right, and over the depth away from the house */
  readonly right: number
  readonly away: number
}

const CASES: readonly Case[] = [
  { width: 288, depth: 144, height: 24, right: 24, away: 0 },
  { width: 288, depth: 144, height: 24, right: 0, away: 24 },
  { width: 240, depth: 168, height: 22, right: 14, away: 10 },
  { width: 288, depth: 144, height: 40, right: -30, away: 6 },
  { width: 192, depth: 120, height: 29, right: 0, away: 0 },
]

function guarded({ width, depth, height, right, away }: Case): Design {
  const made = design({
    size: { width: `${width} in`, depth: `${depth} in`, height: `${height} in` },
    site: {
      attachment: 'ledger',
      ground: {
        along: { fall: `${right} in`, over: `${width} in` },
        away: { fall: `${away} in`, over: `${depth} in` },
      },
    },
    frame: {
      joists: { size: '2x8', spacing: '16 in' },
      beams: { front: { set: 'flush', size: '2x8', posts: 5 } },
    },
    ground: { projection: '2 in' },
    guard: { where: 'where needed' },
  })
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value
}

/** Whether some ground within reach of a place outside of the deck lies too deep. */
function needs({ width, depth, height, right, away }: Case, x: number, y: number): boolean {
  for (let dx = -REACH; dx <= REACH; dx += 2)
    for (let dy = -REACH; dy <= REACH; dy += 2) {
      if (Math.hypot(dx, dy) > REACH) continue
      const [px, py] = [x + dx, y + dy]
      const under = px > 0 && px < width && py > 0 && py < depth
      if (under || py < 0) continue
      if (height + (px * right) / width + (py * away) / depth > LIMIT + 1e-9) return true
    }
  return false
}

/** Places along the three open edges, an inch apart, with how far from the edge's near end. */
function placesOf({ width, depth }: Case) {
  const steps = (length: number) => Array.from({ length: length + 1 }, (_, i) => i)
  return [
    ...steps(depth).map((at) => ({ side: 'left', at, x: 0, y: at })),
    ...steps(depth).map((at) => ({ side: 'right', at, x: width, y: at })),
    ...steps(width).map((at) => ({ side: 'front', at, x: at, y: depth })),
  ]
}

describe('a guard where it is needed', () => {
  it.each(CASES)('stands along every part that is high and ends soon after: %o', (one) => {
    const made = guarded(one)
    const stretches = made.guard?.stretches ?? []
    const covered = (side: string, at: number) =>
      stretches.some(
        ({ edge, from, to }) => edge.side === side && at >= from / 32 - 0.01 && at <= to / 32 + 0.01,
      )
    const places = placesOf(one)
    const high = places.filter(({ x, y }) => needs(one, x, y))
    for (const { side, at } of high) expect(covered(side, at), `${side} at ${at}`).toBe(true)
    // a guard goes on for a foot, to the next post beside a joist, or over a rest of 3 ft; round a corner, for 36 in more
    for (const { side, at } of places.filter((place) => covered(place.side, place.at))) {
      const near = high.some((place) => place.side === side && Math.abs(place.at - at) <= REACH + 12 + 36)
      expect(near, `${side} at ${at} though nothing there is high`).toBe(true)
    }
    const check = made.checks.find(({ id }) => id === 'guard')
    expect(check?.status).toBe('passes')
  })

  it('begins where the ground 36 in further on is 30 in below, by hand', () => {
    // 24 in high at the left end, an inch lower each foot: 30 in are passed at 72 in, so the front needs a guard from
    // 36 in on; the right side is 48 in high all along, the left one 24 in
    const [first] = CASES
    if (first === undefined) throw new Error('no case')
    const { guard } = guarded(first)
    const parts = guard?.edges.map(({ edge, parts: own }) => [edge.side, own])
    expect(parts).toContainEqual(['front', [{ from: inches(36), to: inches(288) }]])
    expect(parts).toContainEqual(['right', [{ from: 0, to: inches(144) }]])
    expect(parts).toContainEqual(['left', []])
    const front = guard?.stretches.find(({ edge }) => edge.side === 'front')
    // its first post stands beside the joist before 36 in: that at 32 in, or at it
    const post = (front?.posts[0]?.at ?? 0) / 32
    expect(post).toBeLessThanOrEqual(36 + 1.75)
    expect(post).toBeGreaterThan(16)
    expect(guard?.stretches.map(({ edge }) => edge.side).sort()).toEqual(['front', 'right'])
  })

  it('has none where nothing is high, and says so', () => {
    const flat = guarded({ width: 192, depth: 120, height: 29, right: 0, away: 0 })
    expect(flat.guard?.stretches).toEqual([])
    expect(flat.checks.find(({ id }) => id === 'guard')?.message).toContain('No guard is needed')
  })
})

describe('a guard beside a platform that the deck looks down on', () => {
  // 66 in high, 50 in at its right, 36 in before both: 11 of the platform's 12 ft lie along the deck, the last beside the
  // lowest platform; behind the house's corner the ground lies 50 in down, within 36 in of it
  const made = design({
    size: { height: '66 in' },
    shape: {
      outline: "0, 0; 18', 0; 18', 11'; 0, 11'",
      levels: "50 in: 18', 0; 28', 0; 28', 12'; 18', 12' | 36 in: 6', 11'; 18', 11'; 18', 21'; 6', 21'",
    },
    guard: { where: 'where needed' },
  })

  it('is not asked for along the deck’s own side, where nobody can fall', () => {
    if (!made.ok) throw new Error(JSON.stringify(made.error))
    expect(made.value.guard?.edges.find(({ edge }) => edge.number === 204)).toMatchObject({ needed: false })
    expect(made.value.checks.find(({ id }) => id === 'guard')).toMatchObject({ status: 'passes' })
  })
})
