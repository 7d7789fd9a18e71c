import { IRC_LIMITS, sectionOf } from '../data/index.ts'
import { type Cause, distinctMarks, type Member } from '../frame/index.ts'
import { type Fault, type Job, jobOfStairs, type StatedStairs } from '../job/index.ts'
import type { Layout } from '../layout/index.ts'
import { ceilTicks, fail, inches, ok, printLength, type Result, type Ticks, ticks } from '../units/index.ts'
import { deckEdges } from './deck-edges.ts'
import { deckReach } from './deck-reach.ts'
import { flightMembers, lumberOf, STRIP_HEIGHT } from './flight-members.ts'
import { RIM } from './head-joist.ts'
import { placeFlights } from './place-flights.ts'
import { placeStairs } from './place-stairs.ts'
import { framePlatform } from './platform.ts'
import { type Solved, solveRisers } from './solve-flight.ts'
import { floorAt, levelBelow, surfaceBelow } from './stair-floor.ts'
import { footingsAt, padAt } from './stair-foot.ts'
import { stringerPattern } from './stringer-pattern.ts'
import { treadMake } from './tread-make.ts'
import type { StairConnector, StairPlan, StringerPattern } from './types.ts'

/**
 * One of the stairs that a job asks for, or the named fault that keeps it from being built.
 * @param decking boards of the deck, which reach over the edge that the stairs leave from
 * @param firstFlight number of its upper flight, counted through all stairs of the deck
 */
export function layFlights(
  whole: Job,
  layout: Layout,
  decking: readonly Member[],
  stated: StatedStairs,
  firstFlight: number,
): Result<StairPlan, Fault> {
  const { number, branch } = stated
  const job = jobOfStairs(whole, branch)
  const { stairs } = job
  const edges = deckEdges(layout)
  const found = placeStairs(job, edges)
  if (!found.ok) return fail(found.fault)
  const { nosing, riserBoard } = treadMake(job, 0)
  const placed = {
    ...found,
    firstFlight,
    reaches: { treads: riserBoard + nosing, deck: deckReach(job, decking, found), landing: nosing },
  }
  const straight = stairs.kind === 'straight' || stairs.kind === 'full width'
  const solved = solveRisers(
    placed.edge.top,
    (spot) => surfaceBelow(job, layout, placed.edge, spot),
    (risers) => placeFlights(job, placed, risers, 0).foot,
    straight ? 2 : 4,
  )
  if (solved === null) {
    return fail({
      path: 'stairs.kind',
      message: 'the ground falls away from the foot of the stairs faster than they come down',
      fix: 'choose another side, or leave the stairs to a designer',
    })
  }
  const { foot } = placeFlights(job, placed, solved.risers, 0)
  const low = lowFault(solved, straight, levelBelow(layout, placed.edge, foot)?.number ?? null)
  if (low !== null) return fail(low)

  const { risers, rise, totalRise, landingLevel } = solved
  const make = treadMake(job, rise)
  const { flights, landing } = placeFlights(job, placed, risers, rise)
  const patterns = flights.map((flight) =>
    stringerPattern({
      flight: flight.number,
      kind: stairs.stringers,
      risers: flight.risers,
      rise,
      run: stairs.run,
      span: flight.run,
      width: flight.width,
      treadThickness: make.thickness,
      mostApart: make.mostApart,
      strip: flight === flights[0] && landing !== null ? stripRoom(job) : null,
    }),
  )
  const platform =
    landing === null
      ? null
      : framePlatform(
          job,
          landing,
          placed.width,
          { lower: flights[1], over: nosing },
          number === 1 ? { id: 'landing', mark: 'L' } : { id: `landing-${number}`, mark: `L${number}` },
        )
  const buried = platform?.members.find(({ role, length }) => role === 'landing post' && length <= 0)
  if (buried !== undefined) {
    return fail({
      path: 'stairs.kind',
      message: 'the landing lies so low that no post fits under its beams',
      fix: 'choose straight stairs, or a higher deck',
    })
  }
  const last = flights.at(-1)
  const lastPattern = patterns.at(-1)
  if (last === undefined || lastPattern === undefined) throw new Error('stairs have a flight')
  const floor = floorAt(layout, placed.edge, last, riserBoard)
  if (floor === 'partly') {
    return fail({
      path: 'stairs.align',
      message: 'the foot of the stairs stands partly on a lower level and partly beside it',
      fix: 'move the stairs along their edge, or make the level longer',
    })
  }
  return ok({
    number,
    branch,
    edge: placed.edge,
    place: placed.place,
    width: placed.width,
    totalRise,
    landingLevel,
    floor,
    risers,
    rise,
    run: ticks(flights.reduce((sum, flight) => sum + flight.treads * stairs.run, 0)),
    flights,
    patterns,
    platform: platform?.platform ?? null,
    tread: {
      product: lumberOf(job, make.size),
      boards: make.boards,
      depth: make.depth,
      nosing: make.nosing,
      riserBoard: make.riserBoard,
      opening: make.opening,
    },
    members: distinctMarks([
      ...flights.flatMap((flight, i) => {
        const pattern = patterns[i]
        return pattern === undefined ? [] : flightMembers(job, flight, pattern, make)
      }),
      ...(platform?.members ?? []),
    ]),
    connectors: [...connectorsOf(job, patterns), ...(platform?.connectors ?? [])],
    headBoard: RIM,
    behindHeader: platform?.behindHeader ?? 0,
    pad: floor === null ? padAt(job, last, riserBoard) : null,
    footings: [
      ...(floor === null
        ? footingsAt(job, last, lastPattern, number === 1 ? 'stair-footing' : `stair-footing-${number}`)
        : []),
      ...(platform?.footings ?? []),
    ],
    handrail: handrailOf(job, patterns, risers),
    cause: CAUSE,
  })
}

const CAUSE: Cause = {
  fields: ['stairs.kind', 'stairs.side', 'stairs.align', 'stairs.width', 'size.height', 'site.ground'],
  ids: [],
  rule: 'Risers = rise to the ground at the foot ÷ 7-3/4 in, rounded up (IRC 2021 R311.7.5.1), each as high as the others',
}

/** What keeps so low a rise from having stairs, on the ground or on a lower level of the deck. */
function lowFault(solved: Solved, straight: boolean, level: number | null): Fault | null {
  const path = 'stairs.kind'
  const { totalRise } = solved
  if (totalRise <= inches(IRC_LIMITS.riser.value)) {
    const stands = totalRise <= 0 ? 'is not above' : `is ${printLength(totalRise)}, one step, above`
    const what = level === null ? 'the ground' : `level ${level}`
    return {
      path,
      message: `the deck ${stands} ${what} at the foot of the stairs: no stringer fits there`,
      fix: level === null ? 'choose none, another side, or a higher deck' : 'choose none, or another edge',
    }
  }
  if (straight || totalRise > solved.risers * inches(4)) return null
  return {
    path,
    message: `a rise of ${printLength(totalRise)} leaves no two flights of two steps each`,
    fix: 'choose straight stairs',
  }
}

/** How far under a landing's boards a strip may lie that its beam still backs in full height. */
function stripRoom({ decking, frame }: Job): Ticks {
  return ticks(sectionOf(decking.size).thickness + sectionOf(frame.joists.size).depth - STRIP_HEIGHT)
}

function connectorsOf(job: Job, patterns: readonly StringerPattern[]): readonly StairConnector[] {
  const count = patterns.reduce((sum, pattern) => sum + pattern.count, 0)
  const last = patterns.at(-1)?.count ?? 0
  const onStrip = patterns.reduce((sum, { count: own, below }) => sum + (below > 0 ? own : 0), 0)
  const ids = patterns.map((pattern) => `stringer-${pattern.flight}-1`)
  const cause = (fields: readonly string[], rule: string): Cause => ({ fields, ids, rule })
  const brackets = patterns.reduce((sum, { count: own, marks }) => sum + 2 * (own - 1) * marks.length, 0)
  return [
    {
      kind: 'stringer hanger',
      count,
      cause: cause(
        ['stairs.width'],
        'One sloped hanger at the head of each stringer (common practice, no source)',
      ),
    },
    {
      kind: 'stringer foot angle',
      count: last,
      cause: cause(
        ['stairs.foot'],
        'One angle with its anchor at the foot of each stringer on the ground (common practice, no source)',
      ),
    },
    ...(onStrip === 0
      ? []
      : [
          {
            kind: 'stringer landing angle' as const,
            count: onStrip,
            cause: cause(
              ['stairs.kind'],
              'One angle at the foot of each stringer that stands on a strip, nailed to it and to the landing’s beam (common practice, no source)',
            ),
          },
        ]),
    ...(job.stairs.stringers === 'closed'
      ? [
          {
            kind: 'tread bracket' as const,
            count: brackets,
            cause: cause(
              ['stairs.stringers'],
              'One bracket at either end of each tread (common practice, no source)',
            ),
          },
        ]
      : []),
  ]
}

/** A handrail runs along every flight from over the lowest riser to over the uppermost: as many steps as treads. IRC 2021 R311.7.8.4. */
function handrailOf(
  { stairs }: Job,
  patterns: readonly StringerPattern[],
  risers: number,
): StairPlan['handrail'] {
  const sides = { none: 0, 'one side': 1, 'both sides': 2 }[stairs.handrail]
  const flights = patterns.map(({ marks, step }) => ceilTicks(marks.length * step))
  const each = ticks(flights.reduce<number>((sum, long) => sum + long, 0))
  return { sides, each, flights, needed: risers >= IRC_LIMITS.handrailRisers.value }
}
