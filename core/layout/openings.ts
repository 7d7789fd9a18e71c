import { convexOverlap, movedLeft, type Polygon, without } from '../geometry/index.ts'
import { type Fault, type Job, rectangleList } from '../job/index.ts'
import { inches, printLength, ticks } from '../units/index.ts'
import type { Opening, SupportLine, Zone } from './types.ts'

/** What boards around an opening need beside them, to an edge or another opening: common practice, no source. */
const LEAST_BESIDE = inches(12)

/** A smaller hole is cut into the decking between two joists: common practice, no source. */
const LEAST_OPENING = inches(6)

/** Openings as stated, by number. */
export function openingsOf(job: Job): readonly Opening[] {
  return rectangleList(job.shape.openings).map(({ x, y, width, depth }, i) => ({
    number: i + 1,
    x0: x,
    y0: y,
    x1: ticks(x + width),
    y1: ticks(y + depth),
  }))
}

/** Openings that no zone has room for, that lie over a beam or too near each other. */
export function openingFaults(
  openings: readonly Opening[],
  zones: readonly Pick<Zone, 'outline' | 'supports'>[],
): readonly Fault[] {
  const at = (message: string, fix: string): Fault => ({ path: 'shape.openings', message, fix })
  const beside = printLength(LEAST_BESIDE)
  return openings.flatMap((opening, i): readonly Fault[] => {
    const name = `opening ${opening.number}`
    if (Math.min(opening.x1 - opening.x0, opening.y1 - opening.y0) < LEAST_OPENING)
      return [
        at(`${name} is less than ${printLength(LEAST_OPENING)} across`, 'make it larger, or leave it out'),
      ]
    if (zoneOf(opening, zones) === null)
      return [
        at(
          `${name} lies less than ${beside} from an edge, from where two parts meet, or outside of the deck`,
          `leave ${beside} beside it, or make it a part of the outline`,
        ),
      ]
    const near = openings.slice(0, i).find((other) => apart(opening, other) < LEAST_BESIDE)
    if (near !== undefined)
      return [at(`${name} lies less than ${beside} from opening ${near.number}`, 'make one of the two')]
    const beam = zones.flatMap(({ supports }) => supports).find((line) => liesUnder(line, opening))
    if (beam !== undefined)
      return [
        at(
          `${name} lies ${beam.flush ? `less than ${printLength(BESIDE_FLUSH)} from` : 'over'} the ${beam.key.replace('-', ' ')} beam`,
          'move it, or set the beam back otherwise',
        ),
      ]
    return []
  })
}

/** The zone in which an opening lies with room beside it. */
export function zoneOf<Z extends Pick<Zone, 'outline'>>(opening: Opening, zones: readonly Z[]): Z | null {
  const room = cornersOf(opening, LEAST_BESIDE)
  return zones.find(({ outline }) => without([room], [outline]).length === 0) ?? null
}

/** Corners of an opening with some room around it, in an order of positive area. */
function cornersOf({ x0, y0, x1, y1 }: Opening, room: number): Polygon {
  return [
    { x: x0 - room, y: y0 - room },
    { x: x1 + room, y: y0 - room },
    { x: x1 + room, y: y1 + room },
    { x: x0 - room, y: y1 + room },
  ]
}

function apart(a: Opening, b: Opening): number {
  return Math.max(a.x0 - b.x1, b.x0 - a.x1, a.y0 - b.y1, b.y0 - a.y1)
}

/** Whether a beam would stand in an opening or under the headers beside it; a flush one in their place or the joists'. */
function liesUnder({ kind, line, flush }: SupportLine, opening: Opening): boolean {
  if (kind !== 'beam') return false
  const near = movedLeft(line, -HALF_BEAM)
  const far = movedLeft(line, HALF_BEAM)
  return convexOverlap(
    [near.from, near.to, far.to, far.from],
    cornersOf(opening, flush ? BESIDE_FLUSH : HALF_BEAM),
    1,
  )
}

/** A doubled header and the joists between it and the beam: common practice, no source. */
const BESIDE_FLUSH = inches(9)

/** Half of the thickest beam, three plies. */
const HALF_BEAM = inches(2.25)
