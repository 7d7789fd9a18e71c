import { convexOverlap, heightAt, type Segment } from '../geometry/index.ts'
import type { Job } from '../job/index.ts'
import type { SupportLine, ZoneView } from '../layout/index.ts'
import { inches, type Ticks, ticks } from '../units/index.ts'
import { crossesAtHip } from './crosses-at-hip.ts'
import { type Dimensions, productOf } from './dimensions.ts'
import { fromAbove, placedBoard } from './footprint.ts'
import { extentOf } from './joist-places.ts'
import { type PlacedJoist, shapeFields } from './joists.ts'
import type { Beam, Member } from './types.ts'

/** A bay with less clear width than this gets no block: common practice, no source. */
export const LEAST_CLEAR = inches(3)

/** A joist jointed over the beam goes on past its middle, itself or by the one that meets it. */
const OVER_JOINT = inches(1.5)

/** Bays of a beam that get no block, and why, beside the blocks. */
export interface Blocking {
  readonly blocks: readonly Member[]
  readonly leftOut: readonly { readonly bay: number; readonly clear: Ticks }[]
}

/**
 * Solid blocks between the joists over one beam, each as long as its bay is clear.
 * @param boards rims and ledgers of the same part
 */
export function frameBlocking(
  job: Job,
  d: Dimensions,
  view: ZoneView,
  line: SupportLine,
  beam: Beam,
  joists: readonly PlacedJoist[],
  boards: readonly Member[],
): Blocking {
  // hangers hold the joists upright at a flush beam
  if (job.frame.blocking === 'none' || line.flush) return { blocks: [], leftOut: [] }
  const seen = { from: view.turned(line.line.from), to: view.turned(line.line.to) }
  const borne = joists.filter(
    (joist) => joist.supports.some(({ id }) => id === line.id) || crossesAtHip(joist, beam),
  )
  const over = [
    ...beside(job, borne[0], (centre) => joists.findLast(({ place }) => place.centre < centre)),
    ...borne,
    ...beside(job, borne.at(-1), (centre) => joists.find(({ place }) => place.centre > centre)),
  ]
  const blocks: Member[] = []
  const leftOut: { bay: number; clear: Ticks }[] = []
  let bay = 0
  for (const [i, right] of over.entries()) {
    const left = over[i - 1]
    if (left === undefined) continue
    const x0 = left.place.centre + d.joist.thickness / 2
    const clear = ticks(right.place.centre - d.joist.thickness / 2 - x0)
    // two trimmers, or joists that lap or butt over the beam, leave no bay between them
    if (clear <= 0) continue
    bay += 1
    const middle = atMitre(line, seen, x0 + clear / 2)
      ? null
      : blockMiddle(d, seen, [left, right], x0 + clear / 2)
    if (middle === null) continue
    if (clear < LEAST_CLEAR) {
      leftOut.push({ bay, clear })
      continue
    }
    const [y0, y1] = [middle - d.joist.thickness / 2, middle + d.joist.thickness / 2]
    const placed = placedBoard(
      view,
      [
        { x: x0, y: y0 },
        { x: x0 + clear, y: y0 },
        { x: x0 + clear, y: y1 },
        { x: x0, y: y1 },
      ],
      { z0: d.joistBottom, z1: d.joistTop },
    )
    // in a corner that points into the bay between its joists a board holds them
    if (boards.some((board) => convexOverlap(fromAbove(board), fromAbove(placed), 1))) continue
    blocks.push({
      id: `blocking-${line.key}-${bay}`,
      mark: `${markOf(line.key)}${bay}`,
      role: 'blocking',
      product: productOf(job, d.joist.size),
      ripTo: null,
      ...placed,
      bearings: [left.member.id, right.member.id],
      cause: {
        fields: ['frame.blocking', 'frame.joists.spacing', 'size.width', ...shapeFields(job)],
        ids: [line.id, left.member.id, right.member.id],
        rule: 'Length = the bay’s clear width; it holds the joists upright over the beam (IRC 2021 R507.6.2)',
      },
    })
  }
  return { blocks, leftOut }
}

/** The joist on one side of those that a beam carries, where one stands within a bay of it: the beam ends at its face. */
function beside(
  job: Job,
  borne: PlacedJoist | undefined,
  next: (centre: number) => PlacedJoist | undefined,
): readonly PlacedJoist[] {
  if (borne === undefined) return []
  const { centre } = borne.place
  const found = next(centre)
  const near = found !== undefined && Math.abs(found.place.centre - centre) <= job.frame.joists.spacing
  return near ? [found] : []
}

/** K1 over the front beam, KR1 over the rear one, KM1 over a middle one, KB1 over front-b. */
function markOf(key: string): string {
  const [side, letter = ''] = key.split('-')
  return `${side === 'front' ? 'K' : side === 'rear' ? 'KR' : 'KM'}${letter.toUpperCase()}`
}

/** Whether a bay's middle is where a beam begins at the end of another, over which the block lies. */
function atMitre({ cuts }: SupportLine, { from }: Segment, x: number): boolean {
  return x === from.x && (cuts[0]?.meets ?? null) !== null
}

/**
 * Where a bay's block lies over its beam; null where the beam does not reach, or where a rim or a ledger lies there,
 * which holds the joists upright itself and leaves a block no room.
 */
function blockMiddle(
  d: Dimensions,
  line: Segment,
  joists: readonly [PlacedJoist, PlacedJoist],
  x: number,
): number | null {
  // no block hangs beside the beam
  if (x < Math.min(line.from.x, line.to.x) || x > Math.max(line.from.x, line.to.x)) return null
  const middle = heightAt(line, x)
  const half = d.joist.thickness / 2
  const clear = joists.every(({ place }) => {
    const [low, high] = clearOf(place)
    return middle - half >= low && middle + half <= high
  })
  return clear ? middle : null
}

/**
 * Where both long edges of a joist are there; the lap beside a ledger's end is not. A block over a beam stands against
 * both of two joists that butt there.
 */
export function clearOf(place: PlacedJoist['place']): readonly [number, number] {
  const { left, right } = place.part
  const { low, high } = extentOf(place.part)
  const [first, last] = place.joints
  const start = first !== null ? first.at - OVER_JOINT : place.laps[0] ? low : Math.max(left.low, right.low)
  const end = last !== null ? last.at + OVER_JOINT : place.laps[1] ? high : Math.min(left.high, right.high)
  return [start, end]
}
