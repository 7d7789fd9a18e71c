import {
  bandAlong,
  edgeAt,
  firstCrossing,
  insetBy,
  type PlanePoint,
  type Polygon,
  twiceArea,
} from '../geometry/index.ts'
import type { Fault, Job } from '../job/index.ts'
import { inches } from '../units/index.ts'
import type { ZoneEdge } from './types.ts'
import { boardEnds, type ZoneView } from './zone-view.ts'

/** Clear room that every part of a zone needs between the boards along its edges: common practice, no source. */
const LEAST_ROOM = inches(3)

/** Parts of a zone so narrow that the boards along their edges leave no joist room, each at the field that makes it. */
export function roomFaults(job: Job, views: readonly ZoneView[]): readonly Fault[] {
  const tight = views.find((view) => !hasRoom(view))
  if (tight === undefined) return []
  const number = (narrowEdge(tight) ?? lostBoard(tight))?.number ?? null
  const where = number === null ? '' : ` at edge ${number}`
  return [
    {
      path: job.shape.zones.trim() === '' ? 'shape.outline' : 'shape.zones',
      message: `a part of the deck${where} is too narrow: the boards along its edges leave no room for joists`,
      fix: 'make it wider, or leave it out',
    },
  ]
}

/** A zone in the middle of the deck would leave a ring around it, which no zone is. */
export function ringFaults(outline: Polygon, zones: readonly Polygon[]): readonly Fault[] {
  const filled = zones.reduce((sum, zone) => sum + twiceArea(zone), 0)
  if (Math.abs(twiceArea(outline) - filled) <= twiceArea(outline) / 100) return []
  return [
    {
      path: 'shape.zones',
      message: 'a part framed another way lies in the middle of the deck, or leaves a sliver beside it',
      fix: 'let it reach an edge of the deck, or leave a foot beside it',
    },
  ]
}

function hasRoom(view: ZoneView): boolean {
  return (
    narrowEdge(view) === null && lostBoard(view) === null && firstCrossing(insetOf(view).polygon) === null
  )
}

function insetOf({ polygon, edges }: ZoneView) {
  return insetBy(
    polygon,
    edges.map(({ width }) => width + LEAST_ROOM / 2),
  )
}

/** The first edge that is turned about, or gone, once the boards are taken off. */
function narrowEdge(view: ZoneView): ZoneEdge | null {
  const inset = insetOf(view)
  for (const [i, own] of inset.edgeOf.entries()) {
    if (own === null) continue
    const before = edgeAt(view.polygon, own)
    const after = edgeAt(inset.polygon, i)
    const along =
      (before.to.x - before.from.x) * (after.to.x - after.from.x) +
      (before.to.y - before.from.y) * (after.to.y - after.from.y)
    if (along <= 0) return view.edges[own]?.edge ?? null
  }
  return null
}

/** The first edge whose own board has no length between those of its neighbours. */
function lostBoard(view: ZoneView): ZoneEdge | null {
  const found = view.edges.findIndex(({ board, width }, i) => {
    if (board === 'none' || width === 0) return false
    const { from, to } = edgeAt(view.polygon, i)
    const [a, b, c, d] = bandAlong(view.polygon, i, [0, width], boardEnds(view, i))
    const ahead = (p: PlanePoint, q: PlanePoint) =>
      (q.x - p.x) * (to.x - from.x) + (q.y - p.y) * (to.y - from.y)
    return ahead(a, b) <= 0 || ahead(d, c) <= 0
  })
  return view.edges[found]?.edge ?? null
}
