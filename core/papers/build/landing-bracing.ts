import { sectionOf } from '../../data/index.ts'
import type { Member } from '../../frame/index.ts'
import type { StairPlan } from '../../stairs/index.ts'
import { inches, printLength, type Ticks, ticks } from '../../units/index.ts'

/** As knee braces of a deck: common practice, no source. */
const SIZE = '2x6'
/** Post left below a brace, so that it clears the base; a shorter rise is held by its frame. */
const BELOW = inches(6)
const LEAST_RISE = inches(18)

/** Diagonals that hold a landing's posts upright, and from which to which each runs. */
export interface LandingBracing {
  readonly size: typeof SIZE
  readonly lines: readonly { readonly from: string; readonly to: string; readonly length: Ticks }[]
}

/**
 * A landing on posts sways, and no table has its bracing: one diagonal on either side, away from the deck, and one across
 * between the posts towards the deck, where no stringer stands in its way. Nothing reckons what they carry, and they are
 * not among the members: who builds is told them with their stock. None for a landing so low that its frame holds it.
 */
export function landingBracing({ members, platform }: StairPlan): LandingBracing | null {
  if (platform === null) return null
  const posts = members.filter(({ role }) => role === 'landing post')
  const rowOf = (isNear: boolean): readonly Member[] =>
    posts.filter((_post, i) => i < posts.length / 2 === isNear)
  const [near, far] = [rowOf(true), rowOf(false)]
  const [nearFirst, nearLast, farFirst, farLast] = [near[0], near.at(-1), far[0], far.at(-1)]
  if (nearFirst === undefined || nearLast === undefined || farFirst === undefined || farLast === undefined)
    return null
  const runs = [
    [farFirst, nearFirst],
    [farLast, nearLast],
    ...near.slice(1).map((post, i) => [near[i] ?? post, post] as const),
  ] as const
  const lines = runs.map(([from, to]) => ({ from: from.mark, to: to.mark, length: lengthOf(from, to) }))
  const rise = Math.min(...posts.map(({ length }) => length)) - BELOW
  return rise < LEAST_RISE ? null : { size: SIZE, lines }
}

/** From the foot's outer face to under the frame at the other's, its own depth added for the ends; up to the inch. */
function lengthOf(from: Member, to: Member): Ticks {
  const across = Math.max(
    Math.max(from.box.x1, to.box.x1) - Math.min(from.box.x0, to.box.x0),
    Math.max(from.box.y1, to.box.y1) - Math.min(from.box.y0, to.box.y0),
  )
  const up = Math.max(from.length, to.length) - BELOW
  const inch = inches(1)
  return ticks(Math.ceil((Math.hypot(across, up) + sectionOf(SIZE).depth) / inch) * inch)
}

/** What to set, where, and of what, for the steps. */
export function landingBracingWords(plan: StairPlan): string | null {
  const bracing = landingBracing(plan)
  if (bracing === null) return null
  const { size, lines } = bracing
  return `Brace the landing’s posts before anything hangs on it: ${lines.length} diagonals of ${size}, flat on the posts’ outer faces, from 6 in over the foot of one to right under the frame at the other: ${lines
    .map(({ from, to, length }) => `${from} to ${to}, ${printLength(length)} of board`)
    .join(
      '; ',
    )}; one 1/2 in bolt with washers at each end. Common practice, no source: no table has them and nothing here reckons them, so ask the inspector. They are neither in the order nor in the price.`
}

/** What the order leaves out of it, for those who buy. */
export function landingBracingStock(plans: readonly StairPlan[]): string | null {
  const all = plans.flatMap((plan) => landingBracing(plan) ?? [])
  const lines = all.flatMap((bracing) => bracing.lines)
  const [first] = all
  if (first === undefined) return null
  return `Not on this list: the braces of the landing’s posts, ${lines.length} pieces of ${first.size}, ${lines.map(({ length }) => printLength(length)).join(', ')}, with ${2 * lines.length} bolts of 1/2 in and their washers. Nothing reckons them: ask before they are bought.`
}
