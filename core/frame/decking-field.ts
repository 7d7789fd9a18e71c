import { common, insetBy, type Polygon, twiceArea, without } from '../geometry/index.ts'
import type { Job } from '../job/index.ts'
import type { Level, ZoneView } from '../layout/index.ts'
import { borderShapes } from './border.ts'
import { deckedOutlines } from './decked-outline.ts'
import { borderReach, type Laying } from './laying.ts'

/** A zone as its joists see it, how it is decked, and the levels that its decking ends at. */
interface CoveredZone {
  readonly job: Job
  readonly view: ZoneView
  readonly laying: Laying
  /** on which it lies */
  readonly level: Level
  readonly levels: readonly Level[]
}

/** Shapes that touch along an edge share so many square ticks at most. */
const TOUCHING = 64

/**
 * What the field of a zone's decking covers, in its view: all of it but what a border takes, and a gap short of a higher
 * level, against whose rim it ends.
 */
export function fieldOf(zone: CoveredZone): readonly Polygon[] {
  const { job, view, level, levels } = zone
  const higher = levels
    .filter(({ deckTop }) => deckTop > level.deckTop)
    .map(({ outline }) => insetBy(outline, Array(outline.length).fill(-job.decking.gap)).polygon)
    .map((outline) => outline.map((corner) => view.turned({ x: corner.x, y: corner.y })))
  const field = besideBorder(zone)
  return higher.some((outline) => common(field, [outline]).length > 0) ? without(field, higher) : field
}

/** Where an edge with a border ends at a wall in an inside corner, its boards reach further in than those beside it. */
function besideBorder(zone: CoveredZone): readonly Polygon[] {
  const { job, view, laying, level, levels } = zone
  const field = insideBorder(zone)
  const reaching = borderShapes(job, level, levels, laying).flatMap((board): readonly Polygon[] => {
    const seen = (shape: Polygon) => shape.map(({ x, y }) => view.turned({ x, y }))
    const shared = common(field, [seen(board)]).reduce(
      (sum, shape) => sum + Math.abs(twiceArea(shape)) / 2,
      0,
    )
    // moved on the plan: a view along the house is its mirror image, in which outward would be inward
    return shared > TOUCHING ? [seen(insetBy(board, Array(board.length).fill(-laying.gap)).polygon)] : []
  })
  return reaching.length === 0 ? field : without(field, reaching)
}

function insideBorder({ job, view, laying, level, levels }: CoveredZone): readonly Polygon[] {
  const cover = coverOf(job, view)
  if (laying.border === 0) return [cover]
  const reach = borderReach(laying)
  const inner = deckedOutlines(job, level, levels).map(({ polygon, edges, isWhole }) =>
    isWhole
      ? insetBy(
          level.outline,
          level.edges.map(({ kind }) =>
            kind === 'wall' ? job.decking.wallGap : reach - job.decking.overhang,
          ),
        )
      : insetBy(
          polygon,
          edges.map((edge) => (edge?.kind === 'open' ? reach : 0)),
        ),
  )
  const seen = inner.map(({ polygon }) => polygon.map((point) => view.turned({ x: point.x, y: point.y })))
  return common([cover], seen)
}

/** What decking covers of a zone, in its view. */
function coverOf(job: Job, view: ZoneView): Polygon {
  const { overhang, wallGap, gap } = job.decking
  const widths = view.edges.map(({ edge }) =>
    edge.kind === 'wall' ? wallGap : edge.kind === 'open' ? -overhang : edge.seam === 'hip' ? gap / 2 : 0,
  )
  return insetBy(view.polygon, widths).polygon
}
