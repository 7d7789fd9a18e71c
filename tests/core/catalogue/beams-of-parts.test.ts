import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import { CATALOGUE, type CatalogueDeck } from '../../fixtures/catalogue.ts'
import { inside } from './inside.ts'

// Beams of decks framed in several parts, with joists along the house, or with one beam for two levels. Lines an inch
// apart are walked across each part the way its joists run, in steps of half an inch: where a line ends at no wall, a
// beam carries it; where lines of two parts end at each other, one beam carries both. All in inches, from the corners and
// what the jobs state.

type Place = readonly [number, number]
type Way = 'away' | 'along'

interface Stated {
  readonly site?: { readonly attachment?: string }
  readonly shape?: {
    readonly joists?: Way
    readonly walls?: string
    readonly zones?: string
    readonly seams?: string
    readonly levelBeams?: string
  }
  readonly frame?: {
    readonly beams?: { readonly [side: string]: { readonly plies?: number; readonly setback?: string } }
  }
}

const stated = ({ job }: CatalogueDeck): Stated => job as Stated

const parted = CATALOGUE.filter((deck) => {
  const { zones, levelBeams, joists } = stated(deck).shape ?? {}
  return zones !== undefined || levelBeams !== undefined || joists === 'along'
})

/** "20', 0, 10', 16': along" as left, near, right, far, and the way. */
function partsOf(text: string): readonly (readonly [readonly number[], Way])[] {
  const inches = (one: string) => Number.parseFloat(one) * (one.includes("'") ? 12 : 1)
  return text.split(';').map((part) => {
    const [numbers = '', way = ''] = part.split(':')
    const [x = 0, y = 0, wide = 0, deep = 0] = numbers.split(',').map(inches)
    return [[x, y, x + wide, y + deep], way.trim() as Way]
  })
}

/** Whether a place lies on one of some edges; lines are walked half an inch beside all corners. */
function isOn(corners: readonly Place[], edges: ReadonlySet<number>, [x, y]: Place): boolean {
  return corners.some(([ax, ay], i) => {
    if (!edges.has(i + 1)) return false
    const [bx, by] = corners[(i + 1) % corners.length] as Place
    const isBetween = (at: number, a: number, b: number) =>
      at > Math.min(a, b) - 0.3 && at < Math.max(a, b) + 0.3
    return isBetween(x, ax, bx) && isBetween(y, ay, by)
  })
}

interface Walked {
  /** inches of beam that lie along the house, under joists away from it; and those across */
  readonly away: number
  readonly along: number
}

/**
 * @param partAt the part in which a place of the outline lies, and the way that part's joists run
 * @param carried edges of the outline at which something else than a beam of its own carries joists
 */
function walked(
  corners: readonly Place[],
  partAt: (place: Place) => readonly [number, Way],
  carried: ReadonlySet<number>,
  hung: boolean,
): Walked {
  const sums = { away: 0, along: 0 }
  const reach = Math.max(...corners.flat()) + 4
  const both = new Set<string>()
  for (const way of ['away', 'along'] as const)
    for (let line = 0.5; line < reach; line += 1) {
      const placeAt = (at: number): Place => (way === 'away' ? [line, at] : [at, line])
      const partOf = (place: Place) => {
        if (!inside(corners, place)) return null
        const [part, own] = partAt(place)
        return own === way ? part : null
      }
      for (let at = -0.25; at < reach; at += 0.5) {
        const [here, there] = [placeAt(at), placeAt(at + 0.5)]
        const [before, after] = [partOf(here), partOf(there)]
        if (before === after) continue
        const isSeam = inside(corners, here) && inside(corners, there)
        // a hip carries what ends at it; a wall what ends there
        if (isSeam ? hung : isOn(corners, carried, placeAt(at + 0.25))) continue
        const name = `${way} ${line} ${at}`
        if (!both.has(name)) sums[way] += 1
        both.add(name)
      }
    }
  return sums
}

describe.each(parted)('the beams of $file', (deck) => {
  const { site, shape = {}, frame: { beams: specs = {} } = {} } = stated(deck)
  const made = design(deck.job)
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  const { frame, takeoff } = made.value
  const free = site?.attachment === 'freestanding'
  const walls = new Set(free ? [] : (shape.walls ?? '1').split(',').map(Number))
  const zones = shape.zones === undefined ? [] : partsOf(shape.zones)
  const hip = shape.seams === 'hip'

  /** Which part a place is in; a hip's parts meet on the line from the inside corner to the outside one. */
  function partAt([x, y]: Place): readonly [number, Way] {
    const found = zones.findIndex(([[left = 0, near = 0, right = 0, far = 0]]) => {
      const past = hip ? right - x : 0
      return x > left && x < right && y > near && y < far + past
    })
    return [found, zones[found]?.[1] ?? shape.joists ?? 'away']
  }

  const own = walked(deck.corners, partAt, walls, hip)
  // a lower level's joists hang from the side of the beam at the higher one's edge: its first edge
  const further = (deck.further ?? []).map((corners) =>
    walked(corners, () => [-1, 'away'], new Set(shape.levelBeams === 'shared' ? [1] : []), false),
  )
  // the two beams under a hip are mitred where they meet, each set back from the other’s edge
  const setbacks = Object.values(specs).map(({ setback }) => Number.parseFloat(setback ?? ''))
  const short = hip ? setbacks : [0, 0]
  const expected = {
    away: own.away + further.reduce((sum, one) => sum + one.away, 0) - (short[1] ?? 0),
    along: own.along + further.reduce((sum, one) => sum + one.along, 0) - (short[0] ?? 0),
  }

  it('are as long, along the house and across, as the lines that end on them are wide apart', () => {
    const reach = (axis: 'x' | 'y') =>
      frame.beams.reduce((sum, { line: [a, b] }) => sum + Math.abs(b[axis] - a[axis]) / 32, 0)
    expect(Math.abs(reach('x') - expected.away)).toBeLessThanOrEqual(1)
    expect(Math.abs(reach('y') - expected.along)).toBeLessThanOrEqual(1)
  })

  it('are in the takeoff with all their plies, but for what mitres add', () => {
    const plies = frame.members.filter(({ role }) => role === 'beam ply')
    const counted = [
      ...takeoff.pieces.filter(({ memberId }) => plies.some(({ id }) => id === memberId)),
      ...takeoff.runs.flatMap(({ memberIds, length }) =>
        memberIds.filter((id) => plies.some((ply) => ply.id === id)).map(() => ({ length })),
      ),
    ]
    expect(counted).toHaveLength(plies.length)
    const wood = counted.reduce((sum, { length }) => sum + length / 32, 0)
    const two = 2 * (expected.away + expected.along)
    // a mitre of 45 degrees adds half of its ply, 3/4 in, and the outer ply's more, to each of the two beams
    expect(Math.abs(wood - two)).toBeLessThanOrEqual(hip ? 6 : 2)
  })
})
