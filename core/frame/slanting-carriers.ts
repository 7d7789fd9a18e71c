import { sectionOf } from '../data/index.ts'
import { inches, type Ticks, ticks } from '../units/index.ts'
import type { Carrier, CarrierLine, CarrierMark } from './carriers.ts'
import { leadOf } from './joint-place.ts'
import type { Frame, Member, PlanPoint } from './types.ts'

/** A joist is cut off by what it meets at an angle, or goes over it: so far from the middle line it may end. */
const REACH = inches(4)

/** Not on one of the job's axes. */
export function isSlanting({ line }: Pick<Member, 'line'>): boolean {
  return line !== undefined && line[0].x !== line[1].x && line[0].y !== line[1].y
}

/** What stands at an angle and carries joists: its own line, and what is fastened together in it. */
interface Slanting {
  readonly id: string
  readonly mark: string
  readonly label: string
  readonly line: readonly [PlanPoint, PlanPoint]
  readonly plies: readonly Member[]
  /** ids of the joists that meet it, where others come as near: a hip's other ply has its own; null for all */
  readonly hung: ReadonlySet<string> | null
  /** places of posts along it from its left end, with their numbers */
  readonly posts: readonly CarrierLine[]
}

/** Ledgers, rims, hips and beams at an angle, with the joists that meet them measured along their own middle lines. */
export function slantingCarriers(
  frame: Frame,
  joints: readonly { readonly memberId: string; readonly at: number }[],
  from: Carrier['from'],
  only: 'all' | 'ledgers',
): readonly Carrier[] {
  const joists = frame.members.filter(({ role }) => role === 'joist' || role === 'end joist')
  return slantingOf(frame, only).flatMap(({ id, mark, label, line, plies, posts, hung }) => {
    const [half] = plies
    const reach =
      hung === null || half === undefined
        ? null
        : outerFace(
            half,
            line,
            joists.filter(({ id: own }) => hung.has(own)),
          )
    const between = Math.hypot(line[1].x - line[0].x, line[1].y - line[0].y)
    const length = reach?.length ?? between
    const place = (low: number, high: number): Ticks =>
      ticks(Math.max(0, Math.round(from === 'left' ? low : length - high)))
    const marks = joists
      .flatMap((joist): readonly CarrierMark[] => {
        // one that hangs at a hip's end may meet its face just past the end of the middle line
        const across = crossing(joist, line, hung?.has(joist.id) === true ? REACH / between : 0)
        if (across === null || hung?.has(joist.id) === false) return []
        const { low, high } = reach === null ? across : partsOn(joist, reach.line)
        const [near, far] = [low * between, high * between].map((part) => part + (reach?.lead ?? 0))
        const wide = ticks(Math.round((high - low) * between))
        const at = place(near ?? 0, far ?? 0)
        const onBoard = reach === null ? wide : ticks(Math.min(wide, Math.round(length) - at))
        return [{ memberId: joist.id, mark: joist.mark, at, wide: onBoard }]
      })
      .sort((a, b) => a.at - b.at)
    if (marks.length === 0) return []
    const butts = joints.flatMap(({ memberId, at }): readonly CarrierLine[] => {
      const ply = plies.find((one) => one.id === memberId)
      if (ply === undefined) return []
      const along = at - leadOf(ply, line)
      return [{ id: memberId, label: `joint of ${ply.mark}`, at: place(along, along) }]
    })
    const lines = [...posts.map((post) => ({ ...post, at: place(post.at, post.at) })), ...butts]
    return [
      {
        id,
        mark,
        label,
        length: ticks(Math.round(length)),
        from,
        marks,
        lines: lines.toSorted((a, b) => a.at - b.at),
        taken: [],
        slanting: true,
        ...(reach === null
          ? {}
          : { outerFace: true as const, hookedAt: hookedAt(frame, id, line[from === 'left' ? 0 : 1]) }),
      },
    ]
  })
}

function slantingOf({ members, beams, posts }: Frame, only: 'all' | 'ledgers'): readonly Slanting[] {
  const edges = members.flatMap((member): readonly Slanting[] => {
    const { id, mark, role, line } = member
    if ((role !== 'ledger' && role !== 'rim' && role !== 'hip') || line === undefined || !isSlanting(member))
      return []
    const hung =
      role === 'hip'
        ? new Set(members.filter(({ bearings }) => bearings.includes(id)).map((one) => one.id))
        : null
    // a hip's half is marked on its outer face: its left end is the one at the left of those who face that
    const seen =
      hung === null
        ? line
        : asFaced(
            line,
            members.filter((one) => hung.has(one.id)),
          )
    return [{ id, mark, label: `${role} ${mark}`, line: seen, plies: [member], posts: [], hung }]
  })
  if (only === 'ledgers') return edges.filter(({ plies }) => plies[0]?.role === 'ledger')
  const carried = beams
    .filter((beam) => isSlanting(beam))
    .map(({ id, mark, line, plyIds, postIds, postsAt }): Slanting => {
      const numbers = postIds.map((postId) => posts.find((post) => post.id === postId)?.number ?? 0)
      return {
        id,
        mark,
        label: `beam ${mark}`,
        line,
        plies: members.filter((member) => plyIds.includes(member.id)),
        hung: null,
        posts: postsAt.map((at, i) => ({ id: postIds[i] ?? '', label: `post ${numbers[i] ?? ''}`, at })),
      }
    })
  return [...edges, ...carried]
}

/**
 * The face of a hip's half that its joists meet, as a line beside its middle line, and the long points of its ends, which a
 * tape finds: how far before the line's start the first of them lies, and from there to the last.
 */
function outerFace(
  { plan, box, product }: Member,
  [a, b]: readonly [PlanPoint, PlanPoint],
  hung: readonly Member[],
): { readonly line: readonly [PlanPoint, PlanPoint]; readonly lead: number; readonly length: number } {
  const long = Math.hypot(b.x - a.x, b.y - a.y)
  const along = { x: (b.x - a.x) / long, y: (b.y - a.y) / long }
  const side = sideOf([a, b], hung)
  const out = (Math.sign(side) * sectionOf(product.size).thickness) / 2
  const moved = ({ x, y }: PlanPoint): PlanPoint => ({ x: x - out * along.y, y: y + out * along.x })
  const corners = plan ?? [
    { x: box.x0, y: box.y0 },
    { x: box.x1, y: box.y1 },
  ]
  const ends = corners.map(({ x, y }) => (x - a.x) * along.x + (y - a.y) * along.y)
  const first = Math.min(...ends)
  return { line: [moved(a), moved(b)], lead: -first, length: Math.max(...ends) - first }
}

/** On which side of a line most joists lie: above 0 at the right hand of those who go along it, seen from above. */
function sideOf([a, b]: readonly [PlanPoint, PlanPoint], hung: readonly Member[]): number {
  return hung.reduce((sum, { box }) => {
    const [x, y] = [(box.x0 + box.x1) / 2 - a.x, (box.y0 + box.y1) / 2 - a.y]
    return sum + Math.sign((b.x - a.x) * y - (b.y - a.y) * x)
  }, 0)
}

/** Whether an end of a hip's half is the one at the house or the one at the rims. */
function hookedAt({ hips }: Frame, id: string, end: PlanPoint): 'house' | 'rims' {
  const hip = hips.find(({ memberIds }) => memberIds.includes(id))
  if (hip === undefined) throw new Error(`${id} is half of a hip`)
  const far = ({ x, y }: PlanPoint): number => Math.hypot(x - end.x, y - end.y)
  return far(hip.inside) < far(hip.outside) ? 'house' : 'rims'
}

/** A line from left to right for those who stand among the joists and face it. */
function asFaced(
  line: readonly [PlanPoint, PlanPoint],
  hung: readonly Member[],
): readonly [PlanPoint, PlanPoint] {
  return sideOf(line, hung) < 0 ? [line[1], line[0]] : line
}

/** Where a joist's two edges cross a line, as parts of its length; null where the joist does not come to it. */
function crossing(
  joist: Member,
  [a, b]: readonly [PlanPoint, PlanPoint],
  past: number,
): { readonly low: number; readonly high: number } | null {
  const { box } = joist
  const away = isAway(joist)
  const [from, to] = away ? [box.y0, box.y1] : [box.x0, box.x1]
  const { low, high } = partsOn(joist, [a, b])
  const middle = (low + high) / 2
  if (middle < -past || middle > 1 + past) return null
  const at = away ? a.y + middle * (b.y - a.y) : a.x + middle * (b.x - a.x)
  return at >= from - REACH && at <= to + REACH ? { low, high } : null
}

/** The parts of a line's length at which the lines of a joist's edges cross it. */
function partsOn(
  joist: Member,
  [a, b]: readonly [PlanPoint, PlanPoint],
): { readonly low: number; readonly high: number } {
  const { box } = joist
  const part = (at: number): number => (isAway(joist) ? (at - a.x) / (b.x - a.x) : (at - a.y) / (b.y - a.y))
  const edges = isAway(joist) ? [part(box.x0), part(box.x1)] : [part(box.y0), part(box.y1)]
  return { low: Math.min(...edges), high: Math.max(...edges) }
}

function isAway({ box }: Member): boolean {
  return box.y1 - box.y0 >= box.x1 - box.x0
}
