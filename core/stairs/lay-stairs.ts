import { IRC_LIMITS } from '../data/index.ts'
import { type Cause, distinctMarks } from '../frame/index.ts'
import type { Fault, Job } from '../job/index.ts'
import { groundAt, type Layout } from '../layout/index.ts'
import { ceilTicks, fail, inches, ok, printLength, type Result, type Ticks, ticks } from '../units/index.ts'
import { deckEdges } from './deck-edges.ts'
import { flightMembers, lumberOf } from './flight-members.ts'
import { placeFlights } from './place-flights.ts'
import { placeStairs } from './place-stairs.ts'
import { framePlatform } from './platform.ts'
import { type Solved, solveRisers } from './solve-flight.ts'
import { footingsAt, padAt } from './stair-foot.ts'
import { stringerPattern } from './stringer-pattern.ts'
import { treadMake } from './tread-make.ts'
import type { StairConnector, StairPlan, StringerPattern } from './types.ts'

/** The stairs that a job asks for, null where it asks for none; or the named faults that keep them from being built. */
export function layStairs(job: Job, layout: Layout): Result<StairPlan | null, readonly Fault[]> {
  const { stairs } = job
  if (stairs.kind === 'none') return ok(null)
  const placed = placeStairs(job, deckEdges(layout))
  if (!placed.ok) return fail([placed.fault])
  const straight = stairs.kind === 'straight' || stairs.kind === 'full width'
  const solved = solveRisers(
    placed.edge.top,
    (spot) => groundAt(job, spot.x, spot.y),
    (risers) => placeFlights(job, placed, risers, 0).foot,
    straight ? 2 : 4,
  )
  const fault = riseFault(solved, straight)
  if (solved === null || fault !== null) return fail(fault === null ? [] : [fault])

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
      width: flight.width,
      treadThickness: make.thickness,
      mostApart: make.mostApart,
    }),
  )
  const platform = landing === null ? null : framePlatform(job, landing, placed.width)
  const low = platform?.members.find(({ role, length }) => role === 'landing post' && length <= 0)
  if (low !== undefined) {
    return fail([
      {
        path: 'stairs.kind',
        message: 'the landing lies so low that no post fits under its beams',
        fix: 'choose straight stairs, or a higher deck',
      },
    ])
  }
  const last = flights.at(-1)
  const lastPattern = patterns.at(-1)
  if (last === undefined || lastPattern === undefined) throw new Error('stairs have a flight')
  return ok({
    edge: placed.edge,
    place: placed.place,
    width: placed.width,
    totalRise,
    landingLevel,
    risers,
    rise,
    run: ticks(flights.reduce((sum, flight) => sum + flight.run, 0)),
    flights,
    patterns,
    platform: platform?.platform ?? null,
    tread: {
      product: lumberOf(job, make.size),
      boards: make.boards,
      depth: make.depth,
      nosing: make.nosing,
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
    pad: padAt(job, last),
    footings: [...footingsAt(job, last, lastPattern), ...(platform?.footings ?? [])],
    handrail: handrailOf(job, patterns, risers),
    cause: CAUSE,
  })
}

const CAUSE: Cause = {
  fields: ['stairs.kind', 'stairs.side', 'stairs.align', 'stairs.width', 'size.height', 'site.ground'],
  ids: [],
  rule: 'Risers = rise to the ground at the foot ÷ 7-3/4 in, rounded up (IRC 2021 R311.7.5.1), each as high as the others',
}

function riseFault(solved: Solved | null, straight: boolean): Fault | null {
  const path = 'stairs.kind'
  if (solved === null) {
    return {
      path,
      message: 'the ground falls away from the foot of the stairs faster than they come down',
      fix: 'choose another side, or leave the stairs to a designer',
    }
  }
  const { totalRise } = solved
  if (totalRise <= inches(IRC_LIMITS.riser.value)) {
    const stands = totalRise <= 0 ? 'is not above' : `is ${printLength(totalRise)}, one step, above`
    return {
      path,
      message: `the deck ${stands} the ground at the foot of the stairs: no stringer fits there`,
      fix: 'choose none, another side, or a higher deck',
    }
  }
  if (straight || totalRise > solved.risers * inches(4)) return null
  return {
    path,
    message: `a rise of ${printLength(totalRise)} leaves no two flights of two steps each`,
    fix: 'choose straight stairs',
  }
}

function connectorsOf(job: Job, patterns: readonly StringerPattern[]): readonly StairConnector[] {
  const count = patterns.reduce((sum, pattern) => sum + pattern.count, 0)
  const last = patterns.at(-1)?.count ?? 0
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

/** A handrail runs along every flight from the lowest nosing to the highest, level over nothing. */
function handrailOf(
  { stairs }: Job,
  patterns: readonly StringerPattern[],
  risers: number,
): StairPlan['handrail'] {
  const sides = { none: 0, 'one side': 1, 'both sides': 2 }[stairs.handrail]
  const each: Ticks = ceilTicks(patterns.reduce((sum, { marks, step }) => sum + (marks.length + 1) * step, 0))
  return { sides, each, needed: risers >= IRC_LIMITS.handrailRisers.value }
}
