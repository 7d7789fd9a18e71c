import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { inside } from './inside.ts'

// Guards of decks without stairs, reckoned from where their posts stand: clear lengths between neighbours on each edge of
// the outline, and in each the fewest balusters of 1-1/2 in that leave no gap above 4 in (IRC 2021 R312.1.3).

type Place = readonly [number, number]
const POST = 3.5
const BALUSTER = 1.5
const GAP = 4

const guarded = CATALOGUE.filter(({ job }) => {
  const { guard, stairs } = job as { guard?: unknown; stairs?: unknown }
  return guard !== undefined && stairs === undefined
})

function fewest(clear: number): number {
  let count = 0
  while ((clear - count * BALUSTER) / (count + 1) > GAP) count++
  return count
}

describe.each(guarded)('the guard of $file', (deck) => {
  const made = design(deck.job)
  if (!made.ok) throw new Error(deck.file)
  const { guard, takeoff } = made.value
  const posts = (guard?.members ?? [])
    .filter(({ role }) => role === 'guard post')
    .map(({ box }): Place => [(box.x0 + box.x1) / 64, (box.y0 + box.y1) / 64])
  // edges at the house, by number; the first where nothing else is stated
  const { shape } = deck.job as { shape?: { walls?: string } }
  const walls = new Set((shape?.walls ?? '1').split(',').map(Number))
  const outlines = [deck.corners, ...(deck.further ?? [])]
  /** clear lengths between neighbours along each edge; none under a higher level, nor where a step of 4 ft leads down */
  const clear = outlines.flatMap((corners) =>
    corners.flatMap(([ax, ay], i) => {
      if (corners === deck.corners && walls.has(i + 1)) return []
      const [bx, by] = corners[(i + 1) % corners.length] as Place
      const long = Math.hypot(bx - ax, by - ay)
      const along = posts.flatMap(([x, y]) => {
        const at = ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / long
        const off = Math.abs((x - ax) * (by - ay) - (y - ay) * (bx - ax)) / long
        return off < 4 && at > -1 && at < long + 1 && inside(corners, [x, y]) ? [at] : []
      })
      const sorted = along.sort((a, b) => a - b)
      return sorted.slice(1).flatMap((at, k) => {
        const middle = (at + (sorted[k] ?? at)) / 2
        const [x, y] = [ax + ((bx - ax) * middle) / long, ay + ((by - ay) * middle) / long]
        const beside = outlines.findIndex(
          (other) => other !== corners && (inside(other, [x, y + 6]) || inside(other, [x, y - 6])),
        )
        const length = at - (sorted[k] ?? at) - POST
        const higherBeside = beside === 0
        // a post beside it may stand as much as 1-1/4 in nearer or farther, clear of a joist
        const stepDown = beside > 0 && Math.abs(length - 48) <= 1.25
        return higherBeside || stepDown ? [] : [length]
      })
    }),
  )
  const count = (sku: RegExp) =>
    takeoff.goods.reduce((sum, good) => sum + (sku.test(good.sku) ? good.thousandths / 1000 : 0), 0)

  it('has no two posts further apart than 6 ft on centre', () => {
    expect(posts.length).toBeGreaterThan(4)
    expect(Math.max(...clear)).toBeLessThanOrEqual(72 - POST)
  })

  it('has a hold-down for each post, and two bolts', () => {
    expect(count(/^guard-hold-down$/)).toBe(posts.length)
    expect(count(/^carriage-bolt/)).toBe(2 * posts.length)
  })

  it('has the fewest balusters that let no 4 in ball through', () => {
    expect(count(/^baluster-/)).toBe(clear.reduce((sum, length) => sum + fewest(length), 0))
  })
})
