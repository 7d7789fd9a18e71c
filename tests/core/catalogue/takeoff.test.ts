import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import type { Design } from '../../../core/estimate-types.ts'
import type { Member } from '../../../core/frame/index.ts'
import { CATALOGUE, type CatalogueDeck } from '../../fixtures/catalogue.ts'

// A takeoff of every deck reckoned from its corners in inches and what its job states, by this file's own small sums:
// lines across the outline for joists, rows for courses, cylinders for concrete, clear lengths for balusters.

type Place = readonly [number, number]
interface Stated {
  readonly site?: { readonly attachment?: string; readonly frostDepth?: string }
  readonly ground?: { readonly base?: string }
  readonly shape?: {
    readonly outline?: string
    readonly joists?: string
    readonly walls?: string
    readonly zones?: string
    readonly openings?: string
    readonly middleBeams?: string
    readonly seams?: string
    readonly levelBeams?: string
  }
  readonly frame?: {
    readonly joists?: { readonly spacing?: string }
    readonly rim?: { readonly plies?: number }
    readonly rimPlies?: number
    readonly beams?: { readonly [beam: string]: { readonly plies?: number; readonly posts?: number } }
  }
  readonly decking?: { readonly angle?: number; readonly border?: number; readonly breakers?: string }
}

const statedOf = ({ job }: CatalogueDeck): Stated => job as Stated
const inches = (text: string): number => Number.parseFloat(text)
const outlinesOf = ({ corners, further = [] }: CatalogueDeck): readonly (readonly Place[])[] => [
  corners,
  ...further,
]
const isPlain = ({ zones, openings, seams, levelBeams }: NonNullable<Stated['shape']>): boolean =>
  [zones, openings, seams, levelBeams].every((text) => text === undefined)

function designOf({ job, file }: CatalogueDeck): Design {
  const made = design(job)
  if (!made.ok) throw new Error(`${file}: ${JSON.stringify(made.error)}`)
  return made.value
}

function area(corners: readonly Place[]): number {
  return Math.abs(
    corners.reduce((sum, [x, y], i) => {
      const [nx, ny] = corners[(i + 1) % corners.length] as Place
      return sum + ((nx - x) * (y + ny)) / 2
    }, 0),
  )
}

function around(corners: readonly Place[]): number {
  return corners.reduce((sum, [x, y], i) => {
    const [nx, ny] = corners[(i + 1) % corners.length] as Place
    return sum + Math.hypot(nx - x, ny - y)
  }, 0)
}

/** Lengths that a line x = at cuts out of an outline. */
function chords(corners: readonly Place[], at: number): readonly number[] {
  const crossed = corners.flatMap(([ax, ay], i) => {
    const [bx, by] = corners[(i + 1) % corners.length] as Place
    return ax > at !== bx > at ? [ay + ((by - ay) * (at - ax)) / (bx - ax)] : []
  })
  const sorted = crossed.sort((a, b) => a - b)
  return sorted.flatMap((from, k) => (k % 2 === 0 ? [(sorted[k + 1] ?? from) - from] : []))
}

/** The outline as its joists see it: they run along y. */
function acrossJoists(deck: CatalogueDeck, corners: readonly Place[]): readonly Place[] {
  return statedOf(deck).shape?.joists === 'along' ? corners.map(([x, y]) => [y, x]) : corners
}

const lengthOf = (members: readonly Member[]): number =>
  members.reduce((sum, { length }) => sum + length / 32, 0)

const NORMAL_BASE = 20
/** tube, base, and what stands out of the ground, inches: what the program takes where the job states nothing else */
const [TUBE, BASE_THICKNESS, PROJECTION] = [12, 8, 4]

describe.each(CATALOGUE)('the takeoff of $file', (deck) => {
  const stated = statedOf(deck)
  const made = designOf(deck)
  const { frame, takeoff } = made
  const of = (...roles: readonly Member['role'][]) => frame.members.filter(({ role }) => roles.includes(role))

  it('has in every footing the concrete of two cylinders', () => {
    const base = stated.ground?.base === undefined ? NORMAL_BASE : inches(stated.ground.base)
    const depth = inches(stated.site?.frostDepth ?? '')
    const tube = Math.PI * (TUBE / 2) ** 2 * (depth + PROJECTION - BASE_THICKNESS)
    const cubicFeet = (tube + Math.PI * (base / 2) ** 2 * BASE_THICKNESS) / 12 ** 3
    const each = new Map(takeoff.volumes.concreteEach.map((one) => [one.footingId, one.cubicFeet]))
    expect(frame.footings.length).toBeGreaterThan(2)
    for (const { id } of frame.footings) expect(each.get(id)).toBeCloseTo(cubicFeet, 3)
    // one bag makes 0.6 cu ft; a tenth more is mixed
    expect(takeoff.volumes.bags).toBeGreaterThanOrEqual(Math.ceil(takeoff.volumes.concrete / 0.6))
    expect(takeoff.volumes.bags).toBeLessThanOrEqual(Math.ceil((takeoff.volumes.concrete * 1.15) / 0.6))
  })

  it('has its joists on lines at the stated spacing, as long as the outline is there', () => {
    const { shape = {}, decking = {} } = stated
    // borders and breakers ask for joists of their own beside the lines
    if (!isPlain(shape) || (decking.border ?? 0) > 0 || decking.breakers !== undefined) return
    const spacing = inches(stated.frame?.joists?.spacing ?? '')
    let lines = 0
    let [shortest, longest] = [0, 0]
    for (const own of outlinesOf(deck)) {
      const turned = acrossJoists(deck, own)
      const xs = turned.map(([x]) => x)
      const [left, right] = [Math.min(...xs), Math.max(...xs)]
      // the last line may lie so near the edge that the end joist is there already
      for (let x = left + spacing; x < right - 3; x += spacing) {
        // on the line of a corner an end joist stands for part of it: between the outline on both sides
        const sides = [x - 2, x + 2].map((at) => chords(turned, at))
        const sums = sides.map((own) => own.reduce((sum, chord) => sum + chord, 0))
        lines += Math.min(...sides.map((own) => own.length))
        shortest += Math.min(...sums)
        longest += Math.max(...sums)
      }
    }
    const joists = of('joist')
    const middle = (shape.middleBeams ?? '').split(';').filter((text) => text.trim() !== '').length
    // joists over a middle beam are two on a line
    expect(joists.length).toBeGreaterThanOrEqual(lines)
    expect(joists.length).toBeLessThanOrEqual(lines * (1 + middle) + outlinesOf(deck).length * 2)
    // at each end of a line a board is 1-1/2 or 3 in thick; over a beam two joists lap by 1 ft at most
    const whole = longest + (joists.length - lines) * 12
    expect(lengthOf(joists)).toBeLessThanOrEqual(whole + (middle === 0 ? 0 : lines * 12))
    const most = Math.max(
      ...outlinesOf(deck)
        .flat()
        .map(([, y]) => y),
    )
    const least = shortest - lines * 6 - (outlinesOf(deck).length - 1) * most
    expect(lengthOf(joists)).toBeGreaterThanOrEqual(least)
  })

  it('has as much joist as its area asks for: one line a spacing, and one more at the end of each part', () => {
    const spacing = inches(stated.frame?.joists?.spacing ?? '')
    const wood = lengthOf(of('joist', 'end joist', 'header', 'hip'))
    const whole = outlinesOf(deck).reduce((sum, own) => sum + area(own), 0)
    const edge = outlinesOf(deck).reduce((sum, own) => sum + around(own), 0)
    // joists lie between the boards at their ends, 3 in each, and beams' laps are short of the edges' half
    expect(wood * spacing).toBeGreaterThan(whole * 0.88 - edge)
    // trimmers beside an opening, and joists under a border or a breaker, are one more each
    const { border = 0, breakers } = stated.decking ?? {}
    const depth = Math.max(...deck.corners.map(([, y]) => y))
    const more = 4 * deck.openings.length + 4 * border + (breakers === undefined ? 0 : 4)
    expect(wood * spacing).toBeLessThan(whole * 1.08 + (edge / 2 + more * depth) * spacing)
  })

  it('has courses enough for its area and no course too many', () => {
    const { angle = 0, border = 0, breakers } = stated.decking ?? {}
    if (angle !== 0 || border !== 0 || breakers !== undefined) return
    const covers = 5.5 + 1 / 8
    const holes = deck.openings.reduce((sum, [x0, y0, x1, y1]) => sum + (x1 - x0) * (y1 - y0), 0)
    const whole = outlinesOf(deck).reduce((sum, own) => sum + area(own), 0) - holes
    const edge = outlinesOf(deck).reduce((sum, own) => sum + around(own), 0)
    const laid = lengthOf(of('decking')) * covers
    const widest = Math.max(...of('decking').map(({ length }) => length / 32))
    // an inch over every open edge, a quarter short of every wall; the last course of a part may be ripped
    const parts = outlinesOf(deck).length + (stated.shape?.zones ?? '').split(':').length - 1
    expect(laid).toBeGreaterThan(whole - edge / 4 - covers)
    expect(laid).toBeLessThan(whole + edge * 1.25 + (parts + deck.openings.length + 2) * covers * widest)
  })

  it('has beams of full width under a rectangle, and the posts that are stated for each', () => {
    const { shape = {}, frame: { beams = {} } = {}, site } = stated
    if (shape.outline !== undefined || shape.joists === 'along') return
    const width = Math.max(...deck.corners.map(([x]) => x))
    const middle = (shape.middleBeams ?? '').split(';').filter((text) => text.trim() !== '').length
    const count = 1 + middle + (site?.attachment === 'freestanding' ? 1 : 0)
    const plies = beams.front?.plies ?? 2
    expect(lengthOf(of('beam ply'))).toBeCloseTo(count * plies * width, 1)
    const posts = beams.front?.posts
    if (posts !== undefined) expect(frame.posts.length).toBeGreaterThanOrEqual(posts * count - count)
    expect(frame.footings).toHaveLength(frame.posts.length)
  })

  it('has a post’s worth of wood for each post', () => {
    const posts = of('post')
    expect(posts).toHaveLength(frame.posts.length)
    expect(takeoff.pieces.filter(({ memberId }) => posts.some(({ id }) => id === memberId))).toHaveLength(
      posts.length,
    )
  })
})
