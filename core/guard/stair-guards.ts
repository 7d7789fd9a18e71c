import { IRC_LIMITS, STAIR_LIMITS, sectionOf } from '../data/index.ts'
import type { Job } from '../job/index.ts'
import type { Level } from '../layout/index.ts'
import {
  onFlight,
  type PlacedFlight,
  type Spot,
  type StairPlan,
  type StringerPattern,
} from '../stairs/index.ts'
import { ceilTicks, inches, ticks } from '../units/index.ts'
import { fillBay } from './bays.ts'
import { besideHouse } from './beside-house.ts'
import { capThickness } from './guard-members.ts'
import type { GuardStretch, HouseBeside, StairGuard, StairPost } from './types.ts'

const DROP = inches(IRC_LIMITS.guardDrop.value)

/** A post beside stairs reaches this far down past the nosings, along the stringer: common practice, no source. */
const BELOW_NOSING = inches(18)

/** The lower rail's lower edge stands so far over the nosings, or less where the ball asks for it: common practice, no source. */
const OVER_NOSING = inches(1)

/** A post of the deck this far out of the line of the stairs' guard does not end it. */
const IN_LINE = inches(1)

interface StairGuards {
  readonly guards: readonly StairGuard[]
  /** sides that the house closes */
  readonly house: readonly HouseBeside[]
}

/**
 * Guards on both sides of every flight from which the landing at the foot lies more than 30 in below: posts on the outer
 * faces of the stringers, as far apart along the slope as those of the deck. The head of the upper flight ends at a post
 * of the deck's guard where one stands there, and a flight that turns off a landing at the last one of the flight above;
 * every other end has a post of its own. IRC 2021 R312.1.1. A side along the house has none: its wall closes it.
 */
export function guardStairs(
  job: Job,
  stairs: readonly StairPlan[],
  stretches: readonly GuardStretch[],
  levels: readonly Level[],
): StairGuards {
  const made: StairGuard[] = []
  const house: HouseBeside[] = []
  for (const plan of stairs) {
    // posts at the foot of the flight above, which a flight that turns may begin at
    let above: readonly Foot[] = []
    for (const flight of plan.flights) {
      const pattern = plan.patterns.find((one) => one.flight === flight.number)
      const isHigh = flight.topLevel - plan.landingLevel > DROP
      if (pattern === undefined || (job.guard.where !== 'all open edges' && !isHigh)) continue
      const half = sectionOf(job.guard.postSize).thickness / 2
      const sides = [-half, flight.width + half].flatMap((across): readonly Foot[] => {
        const closes = closedBy(levels, plan, flight, across, 2 * half)
        if (closes !== null) {
          house.push({ stairs: plan.number, flight: flight.number, closes })
          return []
        }
        const from = headOf(job, plan, flight, across, stretches, above)
        const one = besideFlight(job, flight, pattern, { across, from, number: made.length + 1 })
        if (from.shares !== null) reachDown(made, from.shares, flight.topLevel - BELOW_NOSING)
        made.push(one)
        return [{ spot: onFlight(flight, one.to - half, across), number: one.number }]
      })
      above = sides
    }
  }
  return { guards: made, house }
}

/** The wall of the house along a side of a flight, if one stands there. */
function closedBy(
  levels: readonly Level[],
  plan: StairPlan,
  flight: PlacedFlight,
  across: number,
  post: number,
) {
  const [edge, way] = across < 0 ? [0, -1] : [flight.width, 1]
  const out = { x: way * flight.across.x, y: way * flight.across.y }
  return besideHouse(
    levels,
    plan,
    { from: onFlight(flight, 0, edge), to: onFlight(flight, flight.run, edge) },
    out,
    post,
  )
}

/** Where a side begins, and whether at a post that stands there already: of the deck, or of the side of a number. */
interface Head {
  readonly from: number
  readonly isPost: boolean
  readonly shares: number | null
}

/** The last post of a side of the flight above. */
interface Foot {
  readonly spot: Spot
  readonly number: number
}

/** Lets the last post of a side reach down far enough for the flight that begins at it. */
function reachDown(made: StairGuard[], number: number, level: number): void {
  const one = made[number - 1]
  if (one === undefined) return
  const last = one.posts.length - 1
  made[number - 1] = {
    ...one,
    posts: one.posts.map((post, i) => (i === last ? { ...post, z0: Math.min(post.z0, level) } : post)),
  }
}

function headOf(
  job: Job,
  { edge, place, flights }: StairPlan,
  flight: PlacedFlight,
  across: number,
  stretches: readonly GuardStretch[],
  above: readonly Foot[],
): Head {
  if (flight === flights[0]) {
    const stretch = stretches.find(
      (one) =>
        one.landing === null &&
        one.edge.id === edge.id &&
        [one.posts[0], one.posts.at(-1)].some(
          (post) => post !== undefined && Math.abs(post.at - (place + across)) <= IN_LINE,
        ),
    )
    return stretch === undefined
      ? { from: 0, isPost: false, shares: null }
      : { from: -stretch.behind, isPost: true, shares: null }
  }
  const post = sectionOf(job.guard.postSize).thickness
  const own = onFlight(flight, post / 2, across)
  const shared = above.find(({ spot }) => Math.hypot(spot.x - own.x, spot.y - own.y) < post)
  return shared === undefined
    ? { from: 0, isPost: false, shares: null }
    : { from: post, isPost: true, shares: shared.number }
}

function besideFlight(
  job: Job,
  flight: PlacedFlight,
  { rise, run, step }: StringerPattern,
  { across, from: head, number }: { across: number; from: Head; number: number },
): StairGuard {
  const post = sectionOf(job.guard.postSize).thickness
  const slope = rise / run
  const cosine = run / step
  // the line of the nosings goes through that of the boards above too
  const headLevel = flight.topLevel + flight.over * slope
  const nosingAt = (down: number) => headLevel - down * slope
  const { from, to } = { from: head.from, to: flight.run as number }
  const first = head.isPost ? from - post / 2 : from + post / 2
  const last = Math.max(to - post / 2, first)
  const spaces = Math.max(1, Math.ceil((last - first) / cosine / job.guard.postSpacing - 1e-9))
  const centres = Array.from({ length: spaces + 1 }, (_, i) => first + (i * (last - first)) / spaces)
  const cap = capThickness(job) / cosine
  const posts = centres.slice(head.isPost ? 1 : 0).map(
    (at, i): StairPost => ({
      id: `stair-guard-post-${number}-${i + 1}`,
      at,
      z0: Math.max(nosingAt(at) - BELOW_NOSING, flight.bottomLevel),
      z1: nosingAt(at - post / 2) + job.guard.height - cap,
    }),
  )
  const { lowerRail, triangle } = underRail(rise, run, step)
  return {
    number,
    flight: flight.number,
    across,
    from,
    to,
    length: ceilTicks((to - from) / cosine),
    slope,
    degrees: Math.round((Math.atan2(rise, run) * 18_000) / Math.PI),
    headLevel,
    lowerRail,
    triangle,
    posts,
    bays: centres
      .slice(1)
      .map((at, i) => fillBay(job, { from: (centres[i] ?? at) + post / 2, to: at - post / 2 }, true)),
  }
}

/**
 * The lower rail over the nosings, and the ball that passes between a tread, its riser and the rail: the circle in a
 * right triangle of legs a and b and hypotenuse c is a + b − c across, and grows with the triangle as the rail is raised.
 * IRC 2021 R312.1.3 lets no 6 in ball pass.
 */
export function underRail(
  rise: number,
  run: number,
  step: number,
): Pick<StairGuard, 'lowerRail' | 'triangle'> {
  const circle = rise + run - step
  const height = (rise * run) / step
  const cosine = run / step
  const ball = inches(STAIR_LIMITS.stairTriangle.value)
  const most = (height * ((ball - 1) / circle - 1)) / cosine
  const lowerRail = ticks(Math.floor(Math.max(0, Math.min(OVER_NOSING, most))))
  return { lowerRail, triangle: (circle * (height + lowerRail * cosine)) / height }
}

/** Level of the line of the nosings so far down from the head, above the datum. */
export function levelAt({ headLevel, slope }: Pick<StairGuard, 'headLevel' | 'slope'>, down: number): number {
  return headLevel - down * slope
}
