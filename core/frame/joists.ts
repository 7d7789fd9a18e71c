import { edgeAt, heightAt, type PlanePoint } from '../geometry/index.ts'
import { type FieldPath, isRectangle, type Job } from '../job/index.ts'
import { beamThickness, type SupportLine, type ViewEdge, type ZoneView } from '../layout/index.ts'
import { type Dimensions, productOf } from './dimensions.ts'
import { type Placed, placedBoard } from './footprint.ts'
import { extentOf, type JoistPlace } from './joist-places.ts'
import type { Cause, JoistSupport, Member } from './types.ts'

/** A joist with its place in the view and what carries it. */
export interface PlacedJoist {
  readonly member: Member
  readonly place: JoistPlace
  readonly supports: readonly JoistSupport[]
  /** where its load begins and ends along the joist */
  readonly from: number
  readonly to: number
}

export interface Zoned {
  readonly view: ZoneView
  readonly supports: readonly SupportLine[]
}

/** Numbers joists and end joists through the whole deck. */
export class JoistNames {
  #inner = 0
  #trimmers = 0
  #left = false
  #right = false
  #further = 2

  inner() {
    this.#inner += 1
    return { id: `joist-${this.#inner}`, mark: `J${this.#inner}`, role: 'joist' as const }
  }

  trimmer() {
    this.#trimmers += 1
    return { id: `trimmer-${this.#trimmers}`, mark: `T${this.#trimmers}`, role: 'joist' as const }
  }

  /** The deck's first end joist and the last one of the same zone say their side, the others are numbered. */
  end(first: boolean, last: boolean) {
    const role = 'end joist' as const
    if (first && !this.#left) {
      this.#left = true
      return { id: 'end-joist-left', mark: 'E1', role }
    }
    if (last && !this.#right) {
      this.#right = true
      return { id: 'end-joist-right', mark: 'E2', role }
    }
    this.#further += 1
    return { id: `end-joist-${this.#further}`, mark: `E${this.#further}`, role }
  }
}

/** Joists and end joists of a zone, from left to right. */
export function frameJoists(
  job: Job,
  d: Dimensions,
  zone: Zoned,
  places: readonly JoistPlace[],
  boards: ReadonlyMap<number, string>,
  names: JoistNames,
): readonly PlacedJoist[] {
  const ends = places.filter(({ end }) => end)
  return places.map((place) => {
    const supports = supportsOf(job, zone, place, boards)
    return {
      place,
      supports,
      ...loaded(zone.view, place),
      member: {
        ...nameOf(place, names, ends),
        product: productOf(job, d.joist.size),
        ripTo: null,
        ...boardOf(zone.view, place, d),
        bearings: supports.map(({ id }) => id),
        cause: place.end ? endCause(job, place, boards) : innerCause(job, place, boards),
      },
    }
  })
}

function nameOf(place: JoistPlace, names: JoistNames, ends: readonly JoistPlace[]) {
  if (place.trimmer) return names.trimmer()
  return place.end ? names.end(place === ends[0], place === ends.at(-1)) : names.inner()
}

function boardOf(view: ZoneView, { centre, part }: JoistPlace, d: Dimensions): Placed {
  const half = d.joist.thickness / 2
  const { left, right } = part
  const corner = (x: number, y: number): PlanePoint => ({ x, y })
  const levels = { z0: d.joistBottom, z1: d.joistTop }
  return placedBoard(
    view,
    [
      corner(centre - half, left.low),
      corner(centre - half, left.high),
      corner(centre + half, right.high),
      corner(centre + half, right.low),
    ],
    levels,
  )
}

/** Ledgers at its ends and every beam that it crosses, from where it starts. */
function supportsOf(
  job: Job,
  { view, supports }: Zoned,
  place: JoistPlace,
  boards: ReadonlyMap<number, string>,
): readonly JoistSupport[] {
  const { low, high } = extentOf(place.part)
  const found = supports.flatMap((line): readonly JoistSupport[] => {
    const seen = { from: view.turned(line.line.from), to: view.turned(line.line.to) }
    if (seen.from.x === seen.to.x) return []
    const at = heightAt(seen, place.centre)
    const slope = (seen.to.y - seen.from.y) / (seen.to.x - seen.from.x)
    const skew = Math.round((Math.atan(Math.abs(slope)) * 18_000) / Math.PI)
    if (line.kind === 'ledger') {
      const meets = [place.startsAt, place.endsAt].some((edge) => edge?.index === line.edge)
      return meets ? [{ id: line.id, kind: 'ledger', at, half: 0, skew }] : []
    }
    const within =
      place.centre >= Math.min(seen.from.x, seen.to.x) &&
      place.centre <= Math.max(seen.from.x, seen.to.x) &&
      at >= low - 1 &&
      at <= high + 1
    if (!within || line.beam === null) return []
    const half = (beamThickness(job.frame.beams[line.beam]) / 2) * Math.hypot(1, slope)
    return [{ id: line.id, kind: 'beam', at, half, skew }]
  })
  return [...found, ...headersOf(view, place, boards)]
    .sort((a, b) => a.at - b.at)
    .filter((one, i, sorted) => i === 0 || one.kind !== 'beam' || one.at - (sorted[i - 1]?.at ?? 0) > 1)
}

/** A header beside an opening, or a rim from which a joist hangs, where it starts or ends at a steep edge; a joist that hangs at one end may at both. */
function headersOf(
  view: ZoneView,
  place: JoistPlace,
  boards: ReadonlyMap<number, string>,
): readonly JoistSupport[] {
  const ends = [
    { edge: place.startsAt, at: Math.max(place.part.left.low, place.part.right.low) },
    { edge: place.endsAt, at: Math.min(place.part.left.high, place.part.right.high) },
  ]
  return ends.flatMap(({ edge, at }, end): readonly JoistSupport[] => {
    const header = place.headers[end === 0 ? 0 : 1]
    if (header !== null) return [{ id: `${header}-1`, kind: 'header', at, half: 0, skew: 0 }]
    const id = edge === null ? undefined : boards.get(edge.index)
    if (edge === null || !edge.steep || id === undefined) return []
    const { from, to } = edgeAt(view.polygon, view.edges.indexOf(edge))
    const lean = Math.atan2(Math.abs(to.y - from.y), Math.abs(to.x - from.x))
    return [{ id, kind: 'header', at, half: 0, skew: Math.round((lean * 18_000) / Math.PI) }]
  })
}

/** Joists carry load from a ledger's face to the outer face of a rim. */
function loaded(view: ZoneView, place: JoistPlace): { readonly from: number; readonly to: number } {
  const { low, high } = extentOf(place.part)
  const outer = (edge: ViewEdge | null, inner: number) => {
    if (edge === null) return inner
    const line = edgeAt(view.polygon, view.edges.indexOf(edge))
    const face = heightAt(line, place.centre)
    if (edge.steep) return inner
    return edge.board === 'ledger' ? face + (edge.role === 'head' ? edge.width : -edge.width) : face
  }
  return { from: outer(place.startsAt, low), to: outer(place.endsAt, high) }
}

function innerCause(job: Job, place: JoistPlace, boards: ReadonlyMap<number, string>): Cause {
  return {
    fields: [
      'size.depth',
      'size.width',
      'frame.joists.spacing',
      'frame.joists.layoutFrom',
      'frame.rimPlies',
      ...shapeFields(job),
    ],
    ids: boardsAt(place, boards, [false, false]),
    rule: `Length = depth − ${boardWords(place)}; one at every spacing from the end joist’s outer face (common practice, no source)`,
  }
}

function endCause(job: Job, place: JoistPlace, boards: ReadonlyMap<number, string>): Cause {
  const laps = place.laps[0] || place.laps[1]
  return {
    fields: ['size.depth', 'frame.rimPlies', 'site.attachment', ...shapeFields(job)],
    ids: boardsAt(place, boards, place.laps),
    rule: laps
      ? 'Length = depth − rim: it laps the ledger’s end (common practice, no source)'
      : `Length = depth − ${boardWords(place)} (common practice, no source)`,
  }
}

/** What is taken off a joist's length at its two ends. */
function boardWords({ startsAt, endsAt, headers }: JoistPlace): string {
  const boards: string[] = [startsAt, endsAt].flatMap((edge) =>
    edge === null || edge.board === 'none' ? [] : [edge.board],
  )
  boards.push(...headers.flatMap((header) => (header === null ? [] : ['header'])))
  const [first, second] = boards
  if (first === undefined) return 'nothing, for it ends at the zone beside'
  if (second === undefined) return first
  return first === second ? `two ${first}s` : boards.sort().join(' − ')
}

/** Ids of the boards at which it ends; those that it laps are not the cause of its length. */
function boardsAt(
  { startsAt, endsAt }: JoistPlace,
  boards: ReadonlyMap<number, string>,
  laps: readonly [boolean, boolean],
): readonly string[] {
  return [laps[0] ? null : startsAt, laps[1] ? null : endsAt].flatMap((edge) => {
    const id = edge === null ? undefined : boards.get(edge.index)
    return id === undefined ? [] : [id]
  })
}

/** Fields that shape a deck other than a rectangle. */
export function shapeFields(job: Job): readonly FieldPath[] {
  return isRectangle(job) ? [] : ['shape.outline', 'shape.zones']
}
