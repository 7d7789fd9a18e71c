import { sectionOf } from '../data/index.ts'
import { meeting, movedLeft, type PlanePoint, type Segment } from '../geometry/index.ts'
import type { FieldPath, Job } from '../job/index.ts'
import type { SupportLine, ZoneView } from '../layout/index.ts'
import { type Ticks, ticks } from '../units/index.ts'
import { beamTop, type Dimensions, productOf } from './dimensions.ts'
import { letters } from './distinct-marks.ts'
import { lengthUp, placedBoard } from './footprint.ts'
import { shapeFields } from './joists.ts'
import type { PostOnBeam } from './posts.ts'
import type { Beam, Member } from './types.ts'

/** Marks of beams in the order in which they are framed: the first front one is B1, the first rear one B2. */
export class BeamMarks {
  #further = 2

  next(key: string): string {
    if (key === 'front') return 'B1'
    if (key === 'rear') return 'B2'
    this.#further += 1
    return `B${this.#further}`
  }
}

/** Plies of one beam, ply a the rear one, or the left one where it runs away from the house; they lie side by side about the centre line. */
export function framePlies(
  job: Job,
  d: Dimensions,
  view: ZoneView,
  line: SupportLine,
  spec: 'front' | 'rear',
  mark: string,
  postIds: readonly string[],
): readonly Member[] {
  const { size, plies } = job.frame.beams[spec]
  const { thickness, depth } = sectionOf(size)
  const back = -(thickness * plies) / 2
  return Array.from({ length: plies }, (_, i) => ({
    id: `${line.id}-ply-${i + 1}`,
    mark: `${mark}${letters(i)}`,
    role: 'beam ply',
    product: productOf(job, size),
    ripTo: null,
    ...placedBoard(view, beamShape(line, back + i * thickness, back + (i + 1) * thickness, view.turned), {
      z0: beamTop(d, line) - depth,
      z1: beamTop(d, line),
    }),
    bearings: postIds,
    cause: {
      fields: [
        'size.width',
        `frame.beams.${spec}.size`,
        `frame.beams.${spec}.plies`,
        beamPlaceField(line),
        ...shapeFields(job),
      ],
      ids: [line.id],
      rule: 'Each ply is as long as the deck is wide; the ends overhang the end posts by their inset (common practice, no source)',
    },
  }))
}

/**
 * A beam or a ply of it between two distances from the centre line, the near face first; its ends square or on the line
 * of a cut.
 * @param turned as it is seen along the joists; the plan as it is where left out
 */
export function beamShape(
  { line, cuts }: SupportLine,
  near: number,
  far: number,
  turned: (point: PlanePoint) => PlanePoint = (point) => point,
): readonly [PlanePoint, PlanePoint, PlanePoint, PlanePoint] {
  const seen = ({ from, to }: Segment): Segment => ({ from: turned(from), to: turned(to) })
  const corner = (face: Segment, end: 0 | 1): PlanePoint => {
    const slant = cuts[end]
    const square = end === 0 ? face.from : face.to
    return slant === null ? square : (meeting(face, seen(slant.cut)) ?? square)
  }
  const nearFace = movedLeft(seen(line), near)
  const farFace = movedLeft(seen(line), far)
  return [corner(nearFace, 0), corner(nearFace, 1), corner(farFace, 1), corner(farFace, 0)]
}

/** The field that says where a beam lies. */
export function beamPlaceField({ beam, edge, flush, seam }: SupportLine): FieldPath {
  if (edge < 0) return 'shape.middleBeams'
  if (seam) return flush ? 'shape.seams' : 'shape.zones'
  return `frame.beams.${beam ?? 'front'}.${flush ? 'set' : 'setback'}`
}

export function beamOf(
  job: Job,
  line: SupportLine,
  spec: 'front' | 'rear',
  mark: string,
  plies: readonly Member[],
  posts: readonly PostOnBeam[],
): Beam {
  const { size, plies: count } = job.frame.beams[spec]
  return {
    id: line.id,
    beam: spec,
    key: line.key,
    lies: placeOf(job, line),
    mark,
    flush: line.flush,
    size,
    plies: count,
    plyIds: plies.map((ply) => ply.id),
    postIds: posts.map(({ post }) => post.id),
    postsAt: posts.map(({ at }) => at),
    y: line.y,
    from: line.from,
    to: line.to,
    line: [line.line.from, line.line.to],
    length: lineLength(line),
  }
}

/** Length of a beam's centre line. */
export function lineLength({ line }: SupportLine): Ticks {
  return ticks(lengthUp(Math.hypot(line.to.x - line.from.x, line.to.y - line.from.y)))
}

/** A beam that runs away from the house lies left or right, whichever field of the job it goes by. */
function placeOf({ size }: Job, { key, beam, line: { from, to } }: SupportLine): Beam['lies'] {
  if (from.x === to.x) return from.x < size.width / 2 ? 'left' : 'right'
  return key.startsWith('middle') ? 'middle' : (beam ?? 'front')
}
