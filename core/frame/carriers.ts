import type { Job } from '../job/index.ts'
import { type Ticks, ticks } from '../units/index.ts'
import { jointPlace } from './joint-place.ts'
import { isSlanting, slantingCarriers } from './slanting-carriers.ts'
import type { Box, Frame, Member } from './types.ts'

/** What is marked on a carrier: the edge of a member from the carrier's own end, and the side on which it stands. */
export interface CarrierMark {
  readonly memberId: string
  readonly mark: string
  /** from the end that the tape is hooked on, to the member's nearer edge */
  readonly at: Ticks
  readonly wide: Ticks
}

/** A bare line across a carrier: a post's centre, a joint. */
export interface CarrierLine {
  readonly id: string
  readonly label: string
  readonly at: Ticks
}

export type CarrierEnd = 'left' | 'right' | 'rear' | 'front'

/** A ledger, rim or beam, as it lies on the saw horses to be marked. */
export interface Carrier {
  readonly id: string
  readonly mark: string
  readonly label: string
  readonly length: Ticks
  /** the end that the tape is hooked on; of a board that runs away from the house its rear or front one */
  readonly from: CarrierEnd
  readonly marks: readonly CarrierMark[]
  readonly lines: readonly CarrierLine[]
  /** what else takes its face, and is marked on another board: a hip's end, joists that hang from the hip there */
  readonly taken: readonly Pick<CarrierMark, 'at' | 'wide'>[]
  /** it stands at an angle: figures run along its own middle line */
  readonly slanting?: true
  /** half of a hip: hooked at the long point of its end, figures on the face that the joists meet, its length to both long points */
  readonly outerFace?: true
  /** of it: where the hooked end is; left and right are those of one who faces the marked face */
  readonly hookedAt?: 'house' | 'rims'
}

/** A cutting plan, as far as carriers ask: where it joints what. */
export interface JointedPlan {
  readonly plan: { readonly joints: readonly { readonly memberId: string; readonly at: number }[] }
}

/** How far apart two faces may be drawn and still touch: an eighth of an inch. */
const TOUCH = 4

/**
 * Every carrier with the marks of the joists that meet it, measured from one end, in the order of marking; those at an
 * angle last.
 * @param only ledgers, where nothing else is asked for
 */
export function carriers(
  { job, frame }: { readonly job: Job; readonly frame: Frame },
  plans: readonly JointedPlan[],
  only: 'all' | 'ledgers' = 'all',
): readonly Carrier[] {
  const joints = plans.flatMap(({ plan }) => plan.joints)
  const from = job.frame.joists.layoutFrom
  const standing = frame.members.filter(({ role }) => role === 'joist' || role === 'end joist')
  const isAsked = ({ role }: Member): boolean => role === 'ledger' || (only === 'all' && role === 'rim')
  const edges = frame.members
    .filter((member) => isAsked(member) && !isSlanting(member))
    .map((member) => ({
      id: member.id,
      mark: member.mark,
      label: labelOf(member),
      box: member.box,
      plies: [member],
    }))
  const beams = (only === 'all' ? frame.beams : []).flatMap((beam) => {
    const plies = frame.members.filter(({ id }) => beam.plyIds.includes(id))
    const [first] = plies
    if (first === undefined || isSlanting(first)) return []
    const box = plies.reduce((all, { box: one }) => union(all, one), first.box)
    return [
      {
        id: beam.id,
        mark: beam.mark,
        label: `${beam.lies} beam ${beam.mark}`,
        box,
        plies,
      },
    ]
  })
  const hips = frame.members.filter(({ role }) => role === 'hip')
  const hangsAtHip = (bearings: readonly string[], ledgerId: string): boolean =>
    !bearings.includes(ledgerId) && hips.some(({ id }) => bearings.includes(id))
  const straight = [...edges, ...beams].flatMap(({ id, mark, label, box, plies }) => {
    const axis = box.x1 - box.x0 >= box.y1 - box.y0 ? 'x' : 'y'
    const span = along(box, axis)
    const place = (low: number, high: number): Ticks =>
      ticks(Math.round(from === 'left' ? low - span.low : span.high - high))
    const met = standing.filter((joist) => crosses(joist.box, box, axis))
    const elsewhere = met.filter(({ bearings }) => plies[0]?.role === 'ledger' && hangsAtHip(bearings, id))
    const taken = [
      ...elsewhere.map((joist) => along(joist.box, axis)),
      ...(plies[0]?.role === 'ledger' ? hips.flatMap((hip) => endOn(hip, box, axis)) : []),
    ].map(({ low, high }) => ({ at: place(low, high), wide: ticks(Math.round(high - low)) }))
    const marks = met
      .filter((joist) => !elsewhere.includes(joist))
      .map((joist): CarrierMark => {
        const { low, high } = along(joist.box, axis)
        return {
          memberId: joist.id,
          mark: joist.mark,
          at: place(low, high),
          wide: ticks(Math.round(high - low)),
        }
      })
      .sort((a, b) => a.at - b.at)
    if (marks.length === 0) return []
    const posts = frame.posts
      .filter((post) => plies.some(({ bearings }) => bearings.includes(post.id)))
      .map((post): CarrierLine => {
        const centre = axis === 'x' ? post.x : post.y
        return { id: post.id, label: `post ${post.number}`, at: place(centre, centre) }
      })
    const butts = joints
      .filter(({ memberId }) => plies.some((ply) => ply.id === memberId))
      .map((joint): CarrierLine => {
        const ply = plies.find(({ id: own }) => own === joint.memberId) ?? plies[0]
        const centre = ply === undefined ? span.low : jointPlace(ply, joint.at)[axis]
        return {
          id: joint.memberId,
          label: `joint of ${ply?.mark ?? ''}`,
          at: place(centre, centre),
        }
      })
    const lines = [...posts, ...butts].sort((a, b) => a.at - b.at)
    const end: CarrierEnd = axis === 'x' ? from : from === 'left' ? 'rear' : 'front'
    return [
      { id, mark, label, length: ticks(Math.round(span.high - span.low)), from: end, marks, lines, taken },
    ]
  })
  return [...straight, ...slantingCarriers(frame, joints, from, only)]
}

function labelOf({ role, mark }: Member): string {
  return `${role} ${mark}`
}

function along(box: Box, axis: 'x' | 'y'): { readonly low: number; readonly high: number } {
  return axis === 'x' ? { low: box.x0, high: box.x1 } : { low: box.y0, high: box.y1 }
}

/** The part of a ledger's face against which a hip's bevelled end lies; none where it ends elsewhere. */
function endOn(
  { plan }: Member,
  ledger: Box,
  axis: 'x' | 'y',
): readonly { readonly low: number; readonly high: number }[] {
  const face = along(ledger, axis === 'x' ? 'y' : 'x')
  const reach = along(ledger, axis)
  const on = (plan ?? [])
    .filter((corner) => {
      const off = axis === 'x' ? corner.y : corner.x
      return off >= face.low - TOUCH && off <= face.high + TOUCH
    })
    .map((corner) => corner[axis])
    .filter((at) => at >= reach.low - TOUCH && at <= reach.high + TOUCH)
  return on.length < 2 ? [] : [{ low: Math.max(reach.low, Math.min(...on)), high: Math.max(...on) }]
}

/** A joist that runs the other way, and whose end or length lies on the carrier's line. */
function crosses(joist: Box, carrier: Box, axis: 'x' | 'y'): boolean {
  const other = axis === 'x' ? 'y' : 'x'
  const runs = along(joist, other)
  const stands = along(joist, axis)
  if (runs.high - runs.low < stands.high - stands.low) return false
  const line = along(carrier, other)
  const reach = along(carrier, axis)
  return (
    runs.low <= line.high + TOUCH &&
    runs.high >= line.low - TOUCH &&
    stands.low >= reach.low - TOUCH &&
    stands.high <= reach.high + TOUCH
  )
}

function union(a: Box, b: Box): Box {
  return {
    x0: Math.min(a.x0, b.x0),
    x1: Math.max(a.x1, b.x1),
    y0: Math.min(a.y0, b.y0),
    y1: Math.max(a.y1, b.y1),
    z0: Math.min(a.z0, b.z0),
    z1: Math.max(a.z1, b.z1),
  }
}
