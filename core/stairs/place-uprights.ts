import { type LumberSize, sectionOf } from '../data/index.ts'
import { fromAbove, type Member } from '../frame/index.ts'
import { convexOverlap } from '../geometry/index.ts'
import { furtherStairs, type Job, jobOfStairs } from '../job/index.ts'
import { inches, ticks } from '../units/index.ts'
import { headerId, member } from './flight-members.ts'
import { headJoist, RIM } from './head-joist.ts'
import type { StairConnector, StairPlan } from './types.ts'

/** What a post of a landing does under its lower flight, under the deck's rim. */
const UPRIGHT: LumberSize = '2x6'

/** Bolts at each end of an upright, and in each post that a landing's header lies on: common practice, no source. */
const BOLTS = 2

/** An upright is moved by so much at a time, and at most so far from its stringer, past what stands there. */
const STEP = inches(0.5)
const MOST = inches(8)

/** Rims of up to three plies have the uprights behind them. */
const MOST_PLIES = 3

/**
 * Behind the rim and the header under it, at each stringer of the upper flights, an upright bolted to both: the header has
 * nothing else to hang on. Each stands in nothing: beside a joist, a post or a block that is there. Common practice, no
 * source.
 * @param built the frame's and the guard's members
 */
export function withUprights(
  whole: Job,
  plans: readonly StairPlan[],
  built: readonly Member[],
): readonly StairPlan[] {
  const placed: Member[] = []
  return plans.map((plan) => {
    const uprights = uprightsOf(whole, plan, [...built, ...placed])
    placed.push(...uprights)
    return {
      ...plan,
      headBoard: headBoard(plan, built),
      members: [...plan.members, ...uprights],
      connectors: [...plan.connectors, bolts(plan, uprights.length)],
    }
  })
}

/** The joist that runs along the edge where a first flight leaves, by its mark; the rim where joists end there. */
function headBoard({ flights: [flight] }: StairPlan, built: readonly Member[]): string {
  const joist = flight === undefined ? undefined : headJoist(built, flight)
  return joist === undefined ? RIM : `${joist.role} ${joist.mark}`
}

/** Bolts of one flight's header: at the deck those of the uprights behind it, under a landing those of its posts. */
export function headerBolts({ flights, members, behindHeader }: StairPlan, flight: number): number {
  const uprights = members.filter(({ role }) => role === 'stair upright').length
  const atDeck = flights[0]?.number === flight ? 2 * uprights : 0
  const atLanding = flights[1]?.number === flight ? behindHeader : 0
  return BOLTS * (atDeck + atLanding)
}

function bolts({ branch, behindHeader, flights }: StairPlan, uprights: number): StairConnector {
  return {
    kind: 'header bolt',
    count: BOLTS * (2 * uprights + behindHeader),
    cause: {
      fields: [furtherStairs(branch, 'stairs.width'), furtherStairs(branch, 'stairs.kind')],
      ids: flights.map(({ number }) => headerId(number)),
      rule: 'At each upright two through the board at the edge and two through the header; two in each landing post behind the lower flight’s header (common practice, no source)',
    },
  }
}

function uprightsOf(whole: Job, plan: StairPlan, standing: readonly Member[]): readonly Member[] {
  const [flight] = plan.flights
  const pattern = plan.patterns.find((one) => one.flight === flight?.number)
  const header = plan.members.find(({ id }) => flight !== undefined && id === headerId(flight.number))
  if (flight === undefined || pattern === undefined || header === undefined) return []
  const job = jobOfStairs(whole, plan.branch)
  const { thickness, depth } = sectionOf(UPRIGHT)
  const rim = sectionOf(job.frame.joists.size)
  const levels = [header.box.z0, header.box.z1 + rim.depth] as const
  const near = standing.filter(
    ({ role, box }) =>
      role !== 'decking' && role !== 'fascia' && box.z0 < levels[1] - 1 && box.z1 > levels[0] + 1,
  )
  const upright = (i: number, across: number, plies: number): Member =>
    member(job, flight, {
      id: `stair-upright-${flight.number}-${i + 1}`,
      mark: `SU${flight.number}-${i + 1}`,
      role: 'stair upright',
      size: UPRIGHT,
      length: ticks(Math.round(levels[1] - levels[0])),
      ripTo: null,
      from: [-plies * rim.thickness - thickness, across],
      to: [-plies * rim.thickness, across + depth],
      levels,
      cause: {
        fields: [furtherStairs(plan.branch, 'stairs.width'), 'frame.joists.size'],
        ids: [header.id],
        rule: 'One flat behind the board at the edge and the header at each stringer, bolted to both; beside a joist, a post or a block that stands there (common practice, no source)',
      },
    })
  const made: Member[] = []
  for (const i of endsFirst(pattern.count)) {
    const middle = i * pattern.spacing + sectionOf('2x12').thickness / 2
    const clear = waysPast(middle - depth / 2, flight.width - depth)
      .flatMap((across) => PLIES.map((plies) => upright(i, across, plies)))
      .find((one) => [...near, ...made].every((other) => !convexOverlap(fromAbove(one), fromAbove(other), 1)))
    if (clear !== undefined) made.push(clear)
  }
  return made.toSorted((a, b) => a.id.localeCompare(b.id, 'en', { numeric: true }))
}

const PLIES = Array.from({ length: MOST_PLIES }, (_, i) => i + 1)

/** Places across a flight for a stick, the nearest to the wished one first, none of them past the header's ends. */
function waysPast(wished: number, most: number): readonly number[] {
  const home = Math.max(0, Math.min(wished, most))
  const moves = [0]
  for (let by: number = STEP; by <= MOST; by += STEP) moves.push(by, -by)
  return moves.map((by) => home + by).filter((across) => across >= 0 && across <= most)
}

/** The two that cannot move outward, then those between. */
function endsFirst(count: number): readonly number[] {
  const all = Array.from({ length: count }, (_, i) => i)
  return [...all.filter((i) => i === 0 || i === count - 1), ...all.slice(1, -1)]
}
