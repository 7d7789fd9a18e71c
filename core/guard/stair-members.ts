import { type LumberSize, sectionOf } from '../data/index.ts'
import type { Cause, EndCuts, Member } from '../frame/index.ts'
import { type FieldPath, furtherStairs, type Job } from '../job/index.ts'
import { onFlight, type PlacedFlight, type StairPlan, type StringerPattern } from '../stairs/index.ts'
import { ceilTicks, feet, ticks } from '../units/index.ts'
import { capThickness, RAIL } from './guard-members.ts'
import { guardStick } from './guard-stick.ts'
import { levelAt } from './stair-guards.ts'
import type { StairGuard } from './types.ts'

/** A cap comes in pieces no longer than this, each ending over a post: common practice, no source. */
const LONGEST_CAP = feet(16)

/** Between the stringers, under the treads: 5-1/2 in stand in the throat that AWC DCA 6 leaves. Common practice, no source. */
const BLOCK: LumberSize = '2x6'

/** Past the noise of floating point, ticks. */
const NOISE = 1e-6

/** A side with the flight that it goes along. */
interface Side {
  readonly guard: StairGuard
  readonly flight: PlacedFlight
  readonly pattern: StringerPattern
  /** from the line of the nosings down to that of the inner corners of the notches, where treads and riser boards end */
  readonly underNosings: number
  readonly cause: Cause
}

/** Posts on the stringers with a block behind each, rails and cap along the slope, of every side of every flight. */
export function stairGuardMembers(
  job: Job,
  guards: readonly StairGuard[],
  stairs: readonly StairPlan[],
): readonly Member[] {
  return guards.flatMap((guard) => {
    const plan = stairs.find(({ flights }) => flights.some(({ number }) => number === guard.flight))
    const flight = plan?.flights.find(({ number }) => number === guard.flight)
    const pattern = plan?.patterns.find((one) => one.flight === guard.flight)
    if (plan === undefined || flight === undefined || pattern === undefined) return []
    const asks: FieldPath = furtherStairs(plan.branch, 'stairs.kind')
    const cause: Cause = {
      fields: ['guard.where', asks],
      ids: [`stringer-${guard.flight}-1`],
      rule: 'Beside stairs that rise more than 30 in (IRC 2021 R312.1.1)',
    }
    const { product, riserBoard, nosing } = plan.tread
    const underNosings =
      sectionOf(product.size).thickness + pattern.rise + (riserBoard + nosing) * guard.slope
    const side: Side = { guard, flight, pattern, underNosings, cause }
    return [...posts(job, side), ...blocks(job, side), ...rails(job, side), ...caps(job, side)]
  })
}

function posts(job: Job, { guard, flight, cause }: Side): readonly Member[] {
  const { postSize } = job.guard
  const half = sectionOf(postSize).thickness / 2
  return guard.posts.map(({ id, at, z0, z1 }, i) => ({
    ...guardStick(job, {
      id,
      mark: `SG${guard.number}-${i + 1}`,
      role: 'guard post',
      size: postSize,
      length: ceilTicks(z1 - z0 - NOISE),
      corners: cornersOn(flight, [at - half, at + half], [guard.across - half, guard.across + half]),
      levels: [z0, z1],
      cause: {
        ...cause,
        rule: `${cause.rule}; bolted to the stringer, from 18 in under the nosings or the ground there to the rail, its upper end cut to the slope (common practice, no source)`,
      },
    }),
    ends: [0, guard.degrees] as const,
  }))
}

/** One block between the stringers behind each post, so that the one it is bolted to does not twist. */
function blocks(job: Job, { guard, flight, pattern, underNosings, cause }: Side): readonly Member[] {
  const stringer = sectionOf('2x12').thickness
  const { thickness, depth } = sectionOf(BLOCK)
  const clear = ticks(Math.floor(pattern.spacing - stringer + NOISE))
  const near = guard.across < 0 ? stringer : flight.width - stringer - clear
  return guard.posts.map(({ at }, i) => {
    const under = levelAt(guard, at) - underNosings - depth
    const low = Math.max(under, flight.bottomLevel)
    return guardStick(job, {
      id: `stair-guard-blocking-${guard.number}-${i + 1}`,
      mark: `SB${guard.number}-${i + 1}`,
      role: 'guard blocking',
      size: BLOCK,
      length: clear,
      // on the lower side of the bolts: at the head of a flight a landing's post may stand behind them
      corners: cornersOn(flight, [at, at + thickness], [near, near + clear]),
      levels: [low, low + depth],
      cause: {
        ...cause,
        rule: 'Between the stringers behind each post beside the stairs (common practice, no source)',
      },
    })
  })
}

/** Two rails on edge in every bay, cut plumb against the posts; lengths to the long points. */
function rails(job: Job, side: Side): readonly Member[] {
  if (job.guard.infill === 'panels') return []
  const { guard, cause } = side
  const { depth } = sectionOf(RAIL)
  const cosine = cosineOf(guard)
  const upright = depth / cosine
  const top = job.guard.height - capThickness(job) / cosine
  return guard.bays.flatMap(({ from, to }, i) =>
    (['top', 'bottom'] as const).map((which) =>
      climbing(job, side, [from, to], {
        id: `stair-guard-rail-${guard.number}-${i + 1}-${which}`,
        mark: `SR${guard.number}-${i + 1}`,
        role: 'guard rail',
        size: RAIL,
        over: which === 'top' ? top : guard.lowerRail + upright,
        wide: sectionOf(RAIL).thickness,
        deep: depth,
        cause: {
          ...cause,
          rule: `${cause.rule}: between two posts along the slope, to the long points of its plumb cuts`,
        },
      }),
    ),
  )
}

/** Pieces of cap down the slope, each ending over a post. */
function caps(job: Job, side: Side): readonly Member[] {
  const { guard, cause } = side
  const { cap, height } = job.guard
  if (cap === 'none') return []
  const cosine = cosineOf(guard)
  const inner = guard.posts.map(({ at }) => at).filter((at) => at > guard.from + 1 && at < guard.to - 1)
  const stops = [...inner.slice(0, -1), guard.to]
  const pieces: (readonly [number, number])[] = []
  let start = guard.from
  for (const [i, stop] of stops.entries()) {
    const next = stops[i + 1]
    if (next === undefined || (next - start) / cosine > LONGEST_CAP) {
      pieces.push([start, stop])
      start = stop
    }
  }
  const { depth, thickness } = sectionOf(cap)
  return pieces.map((piece, i) =>
    climbing(job, side, piece, {
      id: `stair-guard-cap-${guard.number}-${i + 1}`,
      mark: `SC${guard.number}-${i + 1}`,
      role: 'guard cap',
      size: cap,
      over: height,
      wide: depth,
      deep: thickness,
      cause: { ...cause, rule: `${cause.rule}: along the slope, to the long points of its plumb cuts` },
    }),
  )
}

interface Climbing extends Pick<Member, 'id' | 'mark' | 'role' | 'cause'> {
  readonly size: LumberSize
  /** its upper edge over the nosings, upright */
  readonly over: number
  /** across the stairs, and square to the slope */
  readonly wide: number
  readonly deep: number
}

/** A board along the slope between two places of its flight: an edge is run ÷ cosine long, its plumb cut leans by the slope. */
function climbing(
  job: Job,
  { guard, flight }: Side,
  [from, to]: readonly [number, number],
  { id, mark, role, size, over, wide, deep, cause }: Climbing,
): Member {
  const cosine = cosineOf(guard)
  const upright = deep / cosine
  const [high, low] = [levelAt(guard, from) + over, levelAt(guard, to) + over]
  const half = wide / 2
  const ends: EndCuts = [guard.degrees, guard.degrees]
  return {
    ...guardStick(job, {
      id,
      mark,
      role,
      size,
      length: ceilTicks((to - from) / cosine + deep * guard.slope - NOISE),
      corners: cornersOn(flight, [from, to], [guard.across - half, guard.across + half]),
      levels: [low - upright, high],
      cause,
    }),
    ends,
    slope: {
      from: { ...onFlight(flight, from, guard.across), z: high },
      to: { ...onFlight(flight, to, guard.across), z: low },
      upright,
    },
  }
}

/** Of the slope: how long its run is for each tick along it. */
export function cosineOf({ slope }: Pick<StairGuard, 'slope'>): number {
  return 1 / Math.hypot(1, slope)
}

function cornersOn(
  flight: PlacedFlight,
  [from, to]: readonly [number, number],
  [near, far]: readonly [number, number],
) {
  return [
    onFlight(flight, from, near),
    onFlight(flight, from, far),
    onFlight(flight, to, far),
    onFlight(flight, to, near),
  ]
}
