import { IRC_LIMITS, STAIR_LIMITS } from '../data/index.ts'
import type { Job } from '../job/index.ts'
import type { StairPlan } from '../stairs/index.ts'
import { ceilTicks, inches, printInches, printLength, ticks } from '../units/index.ts'
import { judge } from './judge.ts'
import { type PlainRule, plainRules } from './plain-rules.ts'
import { type StepPlaces, stepPlaces } from './step-places.ts'
import type { Check } from './types.ts'

/** Risers, treads, nosings, openings and landings of the stairs against IRC 2021 R311.7. */
export function checkStairSteps(job: Job, stairs: StairPlan): Check {
  const places = stepPlaces(stairs)
  const rules = stepRules(job, stairs, places)
  const { deciding, beside, broken, unread } = plainRules(rules)
  const told = `${stairs.risers} risers of ${printLength(ceilTicks(stairs.rise))}, treads of ${printLength(job.stairs.run)}`
  return judge(job, {
    id: 'stair-steps',
    title: 'Steps of the stairs',
    subjects: stairs.members.filter(({ role }) => role === 'tread').map(({ id }) => id),
    fields: ['stairs.kind', 'stairs.run', 'stairs.risers', 'size.height', 'site.ground'],
    prescriptive: deciding,
    calculated: null,
    beside,
    good: () =>
      `${stairs.risers} risers of ${printLength(ceilTicks(stairs.rise))} (${IRC_LIMITS.riser.source.clause}), treads of ${printLength(job.stairs.run)} (${IRC_LIMITS.tread.source.clause}), from ${printLength(stairs.totalRise)} down to ${stairs.floor === null ? 'the ground' : `level ${stairs.floor.level}`} at the foot.`,
    bad: `${told}: ${broken.map(({ what, limit, holds }) => `${what} is not ${holds} ${limit.value} in`).join('; ')}.`,
    uncovered: 'No rule covers the steps',
    remedy: [...new Set(broken.map((rule) => remedyFor(rule, stairs)))].join(' '),
    caution: [unread, unlikeNosings(job, stairs, places), landingCaution(job, stairs)]
      .filter((text) => text !== '')
      .join(' '),
  })
}

function stepRules(job: Job, stairs: StairPlan, places: readonly StepPlaces[]): readonly PlainRule[] {
  const { run } = job.stairs
  const { tread, flights, patterns, rise, pad, platform, floor } = stairs
  const tallest = Math.max(...flights.map(({ topLevel, bottomLevel }) => topLevel - bottomLevel))
  const noNosing = isDeep(job)
  const goings = places.flatMap((one) => one.goings)
  const nosings = places.flatMap((one) => one.nosings)
  const ball = stairs.totalRise > inches(IRC_LIMITS.guardDrop.value)
  return [
    { limit: IRC_LIMITS.riser, what: 'a riser', measure: rise, holds: 'at most' },
    {
      limit: IRC_LIMITS.tread,
      what: 'the run of a tread',
      measure: Math.min(run, ...goings),
      holds: 'at least',
    },
    {
      limit: STAIR_LIMITS.treadVariation,
      what: 'the difference between treads of a flight, from nosing to nosing',
      measure: Math.max(...places.map((one) => apart(one.goings))),
      holds: 'at most',
    },
    {
      limit: STAIR_LIMITS.riserVariation,
      what: 'the difference between risers, cut to the marks',
      measure: Math.max(...patterns.map((pattern) => variation(pattern))),
      holds: 'at most',
    },
    ...(noNosing
      ? []
      : [
          {
            limit: STAIR_LIMITS.nosingLeast,
            what: 'the nosing',
            measure: Math.min(...nosings),
            holds: 'at least' as const,
          },
          {
            limit: STAIR_LIMITS.nosingVariation,
            what: 'the difference between nosings',
            measure: apart(nosings),
            holds: 'at most' as const,
          },
        ]),
    {
      limit: STAIR_LIMITS.nosingMost,
      what: 'the nosing',
      measure: noNosing ? tread.nosing : Math.max(...nosings),
      holds: 'at most',
    },
    ...(ball
      ? [
          {
            limit: STAIR_LIMITS.openRiser,
            what: 'the opening between two treads',
            measure: tread.opening,
            holds: 'at most' as const,
          },
        ]
      : []),
    { limit: STAIR_LIMITS.flightRise, what: 'the rise of a flight', measure: tallest, holds: 'at most' },
    ...(pad === null
      ? []
      : [
          {
            limit: STAIR_LIMITS.landingDepth,
            what: 'the pad before the lowest riser',
            measure: pad.landing,
            holds: 'at least' as const,
          },
        ]),
    ...(floor === null
      ? []
      : [
          {
            limit: STAIR_LIMITS.landingDepth,
            what: `level ${floor.level} before the lowest riser`,
            measure: floor.landing,
            holds: 'at least' as const,
          },
        ]),
    ...(platform === null
      ? []
      : [
          {
            limit: STAIR_LIMITS.landingDepth,
            what: 'the landing between the flights, from the face of the riser at it',
            measure: platform.depth - tread.riserBoard,
            holds: 'at least' as const,
          },
        ]),
  ]
}

/** Marks lie on whole ticks: two risers cut to them differ by what rounding moved their marks, up and down the slope. */
function variation({ marks, step, rise }: StairPlan['patterns'][number]): number {
  const heights = marks.slice(1).map(({ at }, i) => ((at - (marks[i]?.at ?? 0)) * rise) / step)
  return heights.length === 0 ? 0 : Math.max(rise, ...heights) - Math.min(rise, ...heights)
}

function remedyFor({ limit, what }: PlainRule, { tread, flights: [upper] }: StairPlan): string {
  const least = inches(STAIR_LIMITS.nosingLeast.value)
  const most = inches(STAIR_LIMITS.nosingMost.value)
  const reached = `Let the decking overhang by ${printLength(tread.nosing)}, as each tread does.`
  switch (limit.id) {
    case STAIR_LIMITS.openRiser.id:
      return 'Close the risers by a board.'
    case STAIR_LIMITS.flightRise.id:
      return 'Put a landing between two flights.'
    case STAIR_LIMITS.landingDepth.id:
      return `Make ${what} 36 in deep or more.`
    case STAIR_LIMITS.nosingVariation.id:
      return reached
    case STAIR_LIMITS.nosingLeast.id:
      return tread.nosing >= least ? reached : 'Shorten the run, or make it 11 in or more.'
    case STAIR_LIMITS.nosingMost.id:
      return tread.nosing <= most && upper !== undefined && upper.over > most
        ? reached
        : 'Lengthen the run until the boards reach past it by 1-1/4 in or less.'
    default:
      return 'Change the run of the treads.'
  }
}

/** From this depth of tread the code asks for no nosing. */
function isDeep({ stairs }: Job): boolean {
  return stairs.run >= inches(STAIR_LIMITS.noNosingFrom.value)
}

function apart(measures: readonly number[]): number {
  return measures.length === 0 ? 0 : Math.max(...measures) - Math.min(...measures)
}

/** Deep treads need no nosing; the one that the boards above make may be another all the same, and leaves a gap behind a tread. */
function unlikeNosings(job: Job, { tread }: StairPlan, places: readonly StepPlaces[]): string {
  const above = places[0]?.nosings[0] ?? 0
  if (!isDeep(job) || Math.abs(above - tread.nosing) <= inches(STAIR_LIMITS.nosingVariation.value)) return ''
  const gap = above - tread.nosing
  return `The deck’s boards reach ${printInches(ticks(Math.round(above)))} over the face under them, each tread ${printInches(tread.nosing)}${gap > 0 ? `, and the uppermost tread stands ${printInches(ticks(Math.round(gap)))} off the rim` : ''}: every step is ${printInches(job.stairs.run)} deep, but nosings may differ by ${STAIR_LIMITS.nosingVariation.value} in where they are asked for (R311.7.5.3, from memory). Let the decking overhang by ${printInches(tread.nosing)}, or end it so at the stairs.`
}

function landingCaution({ stairs, site }: Job, { floor }: StairPlan): string {
  if (floor !== null) return ''
  if (stairs.foot !== 'pad') {
    return 'A landing 36 in deep at the foot is not counted here: see that it is there.'
  }
  return site.frostDepth > 0
    ? 'A pad lifts with frost and the deck does not: some places ask for footings under the stringers.'
    : ''
}
