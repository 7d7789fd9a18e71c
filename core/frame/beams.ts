import { sectionOf } from '../data/index.ts'
import type { Job } from '../job/index.ts'
import type { SupportLine } from '../layout/index.ts'
import { type Dimensions, productOf } from './dimensions.ts'
import type { Beam, Member, Post } from './types.ts'

/** Plies of one dropped beam, ply 1 nearest the house; they lie side by side about the centre line. */
export function framePlies(
  job: Job,
  d: Dimensions,
  line: SupportLine,
  beam: 'front' | 'rear',
  posts: readonly Post[],
): readonly Member[] {
  const spec = job.frame.beams[beam]
  const { thickness, depth } = sectionOf(spec.size)
  const back = line.y - (thickness * spec.plies) / 2
  return Array.from({ length: spec.plies }, (_, i) => ({
    id: `beam-${beam}-ply-${i + 1}`,
    mark: `${beamMark(beam)}-${i + 1}`,
    role: 'beam ply',
    product: productOf(job, spec.size),
    length: d.width,
    ripTo: null,
    box: {
      x0: 0,
      x1: d.width,
      y0: back + i * thickness,
      y1: back + (i + 1) * thickness,
      z0: d.joistBottom - depth,
      z1: d.joistBottom,
    },
    bearings: posts.map((post) => post.id),
    cause: {
      fields: [
        'size.width',
        `frame.beams.${beam}.size`,
        `frame.beams.${beam}.plies`,
        `frame.beams.${beam}.setback`,
      ],
      ids: [`beam-${beam}`],
      rule: 'Each ply is as long as the deck is wide; the ends overhang the end posts by their inset (common practice, no source)',
    },
  }))
}

export function beamOf(
  job: Job,
  line: SupportLine,
  beam: 'front' | 'rear',
  plies: readonly Member[],
  posts: readonly Post[],
): Beam {
  const spec = job.frame.beams[beam]
  return {
    id: `beam-${beam}`,
    beam,
    mark: beamMark(beam),
    size: spec.size,
    plies: spec.plies,
    plyIds: plies.map((ply) => ply.id),
    postIds: posts.map((post) => post.id),
    y: line.y,
    from: line.from,
    to: line.to,
  }
}

function beamMark(beam: 'front' | 'rear'): string {
  return beam === 'front' ? 'B1' : 'B2'
}
