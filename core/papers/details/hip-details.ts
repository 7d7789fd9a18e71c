import { sectionOf } from '../../data/index.ts'
import type { Estimate } from '../../estimate-types.ts'
import type { Hip, Member } from '../../frame/index.ts'
import { inches, printInches, printLength, ticks } from '../../units/index.ts'
import { hangersThere, joistsAtHipEnd } from '../build/at-hip-end.ts'
import { houseWalls } from '../drawings/house-walls.ts'
import { levelDimension, uprightDimension } from '../drawings/shapes.ts'
import { type Detail, detail } from './detail.ts'
import { membersWithin, shapeWithin, squareAbout, type Window } from './seen-from-above.ts'

const HALF = inches(20)
/** Numbers stand so far outside of what is drawn. */
const OUT = inches(6)

/** A hip at its two ends: at the corner of the house, and over the beams' corner with the rims beyond it. */
export function hipDetails(estimate: Estimate): readonly Detail[] {
  return estimate.frame.hips.flatMap((hip, i) => {
    const suffix = i === 0 ? '' : `-${i + 1}`
    return [atHouse(estimate, hip, suffix), atBeams(estimate, hip, suffix)].flatMap((one) => one ?? [])
  })
}

function atHouse(estimate: Estimate, hip: Hip, suffix: string): Detail {
  const { job, frame, checks } = estimate
  const window: Window = { about: hip.inside, half: HALF }
  const { x, y } = outwardOf(hip)
  const near = nearTo(frame.members, window)
  const plies = membersOf(frame.members, hip)
  const ledgers = near.filter(({ role }) => role === 'ledger')
  const joists = near.filter(({ role }) => role === 'joist')
  const check = checks.find(
    ({ title, subjects }) => title === 'Hip' && subjects.includes(hip.memberIds[0] ?? ''),
  )
  const walls = houseWalls(estimate).flatMap((p) =>
    p.kind === 'polygon' ? shapeWithin(p.id, p.points, window, { fill: 'ground', weight: 'fine' }) : [],
  )
  return detail(
    `detail-hip-house${suffix}`,
    `Hip ${marksOf(plies)} at the corner of the house, from above`,
    [
      ...walls,
      ...membersWithin(joists, window, { fill: 'wood', weight: 'fine' }),
      ...membersWithin(ledgers, window, { fill: 'wood' }),
      ...membersWithin(plies, window, { fill: 'wood', weight: 'heavy' }),
    ],
    [
      {
        at: [x * inches(10), y * inches(10)],
        to: [x * (HALF + OUT), y * (HALF + OUT)],
        text: `Hip: ${plies.map(({ mark, length }) => `${mark}, ${printLength(length)} to its long points`).join('; ')}; ${plies.length} plies ${job.frame.joists.size}, face to face, two rows of nails at 16 in, staggered. Their seam lies on the line from corner to corner, 45° to both ledgers; tops flush.`,
      },
      {
        at: [x * inches(1), -y * inches(0)],
        to: [x * (HALF + OUT), -y * inches(8)],
        text: `Ledgers ${marksOf(ledgers)} are mitred at the corner and meet there; the hip’s bevelled end lies against both their faces.`,
      },
      {
        at: [x * inches(2), y * inches(2)],
        to: [-x * inches(8), y * (HALF + OUT)],
        text: `One hanger for both plies, skewed by 45°, every hole filled: ask the designer before it is ordered.${hangersThere(joistsAtHipEnd(estimate, hip))} ${check?.remedy ?? ''}`.trim(),
      },
    ],
  )
}

function atBeams(estimate: Estimate, hip: Hip, suffix: string): Detail | null {
  const { job, frame } = estimate
  const post = frame.posts.find(({ id }) => id === hip.postId)
  if (post === undefined) return null
  const reach = Math.max(Math.abs(hip.outside.x - post.x), Math.abs(hip.outside.y - post.y))
  const window: Window = { about: post, half: reach + inches(10) }
  const { x, y } = outwardOf(hip)
  const near = nearTo(frame.members, window)
  const plies = membersOf(frame.members, hip)
  const rims = near.filter(({ role }) => role === 'rim')
  const beams = near.filter(({ role }) => role === 'beam ply')
  const joists = near.filter(({ role }) => role === 'joist')
  const [edgeX, edgeY] = [hip.outside.x - post.x, hip.outside.y - post.y]
  const id = `detail-hip-beams${suffix}`
  const past = window.half
  return detail(
    id,
    `Hip ${marksOf(plies)} over the beams’ corner and at the rims, from above`,
    [
      ...membersWithin(joists, window, { fill: 'wood', weight: 'fine' }),
      ...membersWithin(rims, window, { fill: 'wood' }),
      ...membersWithin(plies, window, { fill: 'wood', weight: 'heavy' }),
      ...membersWithin(beams, window, { stroke: 'hidden', weight: 'fine' }),
      ...shapeWithin(post.id, squareAbout(post, sectionOf(job.frame.postSize).depth), window, {
        stroke: 'hidden',
        weight: 'medium',
      }),
      levelDimension(id, Math.min(0, edgeX), Math.max(0, edgeX), y * past, y * inches(6)),
      uprightDimension(id, Math.min(0, edgeY), Math.max(0, edgeY), x * past, x * inches(6)),
    ],
    [
      {
        at: [0, 0],
        to: [-x * (past + OUT), y * inches(4)],
        text: `Post ${post.number}: the hip crosses its middle, on the mitre of the beams (dashed), with one uplift tie to them. From there it is ${printLength(hip.span)} to the corner of the house and ${printLength(hip.overhang)} to the corner of the rims.`,
      },
      {
        at: [edgeX * 0.75, edgeY * 0.75],
        to: [-x * (past + OUT), y * past],
        text: `Rims ${marksOf(rims)} meet in a mitre. The hip’s bevelled end stands in their corner; on either side an angle made for 45° holds its face to the rim’s back, no square one bent on the site; boards ${printInches(ticks(sectionOf(job.frame.joists.size).depth))} deep, flush at the top.`,
      },
      {
        at: [-x * inches(8), -y * inches(8)],
        to: [-x * past, -y * (past + OUT)],
        text: `Joists ${marksOf(joists.filter(({ bearings }) => bearings.some((one) => hip.memberIds.includes(one))))} hang from the hip’s faces here, each in a hanger skewed by 45°.`,
      },
    ],
  )
}

/** Which way the hip goes from the house, as signs of both axes. */
function outwardOf({ inside, outside }: Hip): { readonly x: 1 | -1; readonly y: 1 | -1 } {
  return { x: outside.x > inside.x ? 1 : -1, y: outside.y > inside.y ? 1 : -1 }
}

function membersOf(members: readonly Member[], { memberIds }: Hip): readonly Member[] {
  return members.filter(({ id }) => memberIds.includes(id))
}

/** Members that reach into the window. */
export function nearTo(members: readonly Member[], window: Window): readonly Member[] {
  return members.filter((member) => membersWithin([member], window).length > 0)
}

export function marksOf(members: readonly Pick<Member, 'mark'>[]): string {
  return [...new Set(members.map(({ mark }) => mark))].join(' and ')
}
