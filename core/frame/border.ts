import {
  type BandEnd,
  bandAlong,
  convexOverlap,
  edgeAt,
  lengthOf,
  meeting,
  type PlanePoint,
  type Polygon,
} from '../geometry/index.ts'
import type { Fault, Job } from '../job/index.ts'
import type { Layout, Level } from '../layout/index.ts'
import { ticks } from '../units/index.ts'
import { deckedOutlines } from './decked-outline.ts'
import type { Course } from './decking.ts'
import { type Dimensions, productOf } from './dimensions.ts'
import { fromAbove, placedAlongEdge } from './footprint.ts'
import type { PlacedJoist } from './joists.ts'
import { borderCourses, borderReach, type Laying } from './laying.ts'
import { linesEvery } from './runs.ts'
import type { Member } from './types.ts'

/** A board of a border as it is cut: its outer face from start to end, then its inner face back. */
interface Band {
  readonly course: number
  /** of the outline's edge */
  readonly number: number
  readonly corners: readonly [PlanePoint, PlanePoint, PlanePoint, PlanePoint]
}

type Frame = Pick<Laying, 'border' | 'board' | 'gap'>

/** Edges too short for the mitres of a border that runs along them, and such as leave a wall at so sharp an angle that its boards reach others. */
export function borderFaults(job: Job, { levels }: Pick<Layout, 'levels'>, laying: Frame): readonly Fault[] {
  const bands = levels.map((level) => bandsOf(job, level, levels, laying))
  const short = bands.flat().find(({ corners: [a, b, c, d] }) => {
    const way = { x: b.x - a.x, y: b.y - a.y }
    const inner = (c.x - d.x) * way.x + (c.y - d.y) * way.y
    return inner < 2 * laying.board * Math.hypot(way.x, way.y)
  })
  const path = 'decking.border'
  if (short !== undefined)
    return [
      {
        path,
        message: `edge ${short.number} is too short for the mitres of a border board along it`,
        fix: 'make the edge longer, take fewer courses, or leave the border out',
      },
    ]
  const [over] = bands.flatMap((own) =>
    own.flatMap((band, i) =>
      own
        .slice(i + 1)
        .filter((other) => convexOverlap(band.corners, other.corners, CLIPPED))
        .map((other) => [band.number, other.number].sort((a, b) => a - b)),
    ),
  )
  if (over === undefined) return []
  return [
    {
      path,
      message: `boards of the border along edges ${over[0]} and ${over[1]} would lie over each other`,
      fix: 'turn the edge further from the wall, take fewer courses, or leave the border out',
    },
  ]
}

/** Mitres meet within so many ticks. */
const CLIPPED = 1

/** Boards of a border along a level's open edges, the outer course first, mitred where two of them meet. */
export function frameBorder(
  job: Job,
  d: Dimensions,
  level: Level,
  levels: readonly Level[],
  laying: Frame,
  joists: readonly PlacedJoist[],
  first: number,
): readonly Course[] {
  return bandsOf(job, level, levels, laying).map(({ corners, course, number }, i): Course => {
    const along = placedAlongEdge(corners, { z0: d.joistTop, z1: d.deckTop })
    const [a, b, c, e] = along.corners
    const under = joists.filter(({ member }) => convexOverlap(fromAbove(member), corners, 2))
    const lengthwise = under.filter(({ member }) => isAlong(member, [a, b]))
    const name = first + i
    const member: Member = {
      id: `border-${name}`,
      mark: `PF${name}`,
      role: 'decking',
      product: productOf(job, job.decking.size),
      ripTo: null,
      ...along.placed,
      lay: {
        part: 'border',
        zone: `level-${level.number}`,
        row: course,
        degrees: 0,
        alongJoists: lengthwise.length > 0,
      },
      bearings: under.map((joist) => joist.member.id),
      cause: {
        fields: ['decking.border', 'decking.overhang', 'decking.gap', 'size.width', 'size.depth'],
        ids: under.map((joist) => joist.member.id),
        rule: `Course ${course} of the border along edge ${number}: to the long points of its mitres (common practice, no source)`,
      },
    }
    const way = wayOf([a, b])
    const from = Math.min(...[a, b, c, e].map(({ x, y }) => x * way.x + y * way.y))
    const lines =
      lengthwise.length > 0
        ? linesEvery(
            job.frame.joists.spacing,
            member.length,
            (at) => underAt(lengthwise, way, from + at) ?? member,
          )
        : under
            .map(({ member: joist }) => ({
              id: joist.id,
              label: joist.mark,
              at: ticks(Math.round(crossingOf(joist, [a, b], [e, c]) - from)),
              end: joist.role === 'end joist',
            }))
            .sort((p, q) => p.at - q.at)
    return { member, from, lap: ticks(0), lines }
  })
}

/** What the boards of a level's border cover. */
export function borderShapes(
  job: Job,
  level: Level,
  levels: readonly Level[],
  laying: Frame,
): readonly Polygon[] {
  return bandsOf(job, level, levels, laying).map(({ corners }) => corners)
}

/** Boards along a level's open edges, but for where a higher level stands: the field ends against its rim. */
function bandsOf(
  job: Job,
  level: Level,
  levels: readonly Level[],
  { border, board, gap }: Frame,
): readonly Band[] {
  return deckedOutlines(job, level, levels).flatMap(({ polygon, edges }) => {
    const edgeOf = (i: number) => edges[(i + polygon.length) % polygon.length] ?? null
    const openAt = (i: number) => (edgeOf(i)?.kind === 'open' ? edgeOf(i) : null)
    return borderCourses({ border }).flatMap((course) =>
      polygon.flatMap((_, i): readonly Band[] => {
        const edge = openAt(i)
        if (edge === null) return []
        const end = (other: number): BandEnd => {
          if (openAt(other) !== null) return { kind: 'mitred' }
          // beside a higher level that the board does not come up to, the field goes on past its end
          const isShort =
            edgeOf(other) === null && lengthOf(edgeAt(polygon, other)) < borderReach({ border, board, gap })
          return isShort ? { kind: 'butts', width: gap } : { kind: 'covers' }
        }
        const outer = (course - 1) * (board + gap)
        const corners = bandAlong(polygon, i, [outer, outer + board], [end(i - 1), end(i + 1)])
        return [{ course, number: edge.number, corners }]
      }),
    )
  })
}

/** A joist's middle line on the plan. */
function middleOf({ box, line }: Member): { readonly from: PlanePoint; readonly to: PlanePoint } {
  if (line !== undefined) return { from: line[0], to: line[1] }
  const [x, y] = [(box.x0 + box.x1) / 2, (box.y0 + box.y1) / 2]
  return box.x1 - box.x0 > box.y1 - box.y0
    ? { from: { x: box.x0, y }, to: { x: box.x1, y } }
    : { from: { x, y: box.y0 }, to: { x, y: box.y1 } }
}

function isAlong(joist: Member, [a, b]: readonly [PlanePoint, PlanePoint]): boolean {
  const { from, to } = middleOf(joist)
  const cross = (to.x - from.x) * (b.y - a.y) - (to.y - from.y) * (b.x - a.x)
  return Math.abs(cross) < 1e-6 * Math.hypot(to.x - from.x, to.y - from.y) * Math.hypot(b.x - a.x, b.y - a.y)
}

/** The joist that lies along a board at a place on its way. */
function underAt(along: readonly PlacedJoist[], way: PlanePoint, place: number): Member | undefined {
  return along.find(({ member }) => {
    const { from, to } = middleOf(member)
    const ends = [from, to].map(({ x, y }) => x * way.x + y * way.y)
    return place >= Math.min(...ends) && place <= Math.max(...ends)
  })?.member
}

function wayOf([a, b]: readonly [PlanePoint, PlanePoint]): PlanePoint {
  const length = Math.hypot(b.x - a.x, b.y - a.y)
  return { x: (b.x - a.x) / length, y: (b.y - a.y) / length }
}

/** How far along the board its middle line meets a joist's. */
function crossingOf(
  joist: Member,
  [a, b]: readonly [PlanePoint, PlanePoint],
  [d, c]: readonly [PlanePoint, PlanePoint],
): number {
  const way = wayOf([a, b])
  const start = { x: (a.x + d.x) / 2, y: (a.y + d.y) / 2 }
  const end = { x: (b.x + c.x) / 2, y: (b.y + c.y) / 2 }
  const { from, to } = middleOf(joist)
  const point = meeting({ from: start, to: end }, { from, to }) ?? start
  return point.x * way.x + point.y * way.y
}
