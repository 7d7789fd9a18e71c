import { IRC_LIMITS, STAIR_LIMITS, sectionOf } from '../data/index.ts'
import type { Job } from '../job/index.ts'
import type { StairPlan } from '../stairs/index.ts'
import { ceilTicks, inches, printLength, ticks } from '../units/index.ts'
import { judge } from './judge.ts'
import { type PlainRule, plainRules } from './plain-rules.ts'
import type { Check } from './types.ts'

/** Greatest difference between two goings of a flight, and between two nosings, in: IRC 2021 R311.7.5.2 and .3, from memory. */
const MOST_APART = 0.375

/** Risers, treads, nosings, openings and landings of the stairs against IRC 2021 R311.7. */
export function checkStairSteps(job: Job, stairs: StairPlan): Check {
  const rules = stepRules(job, stairs)
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
    remedy: broken.map(remedyFor).join(' '),
    caution: [unread, topGoings(job, stairs), beforeCuts(job, stairs), landingCaution(job, stairs)]
      .filter((text) => text !== '')
      .join(' '),
  })
}

function stepRules(job: Job, stairs: StairPlan): readonly PlainRule[] {
  const { run } = job.stairs
  const { tread, flights, patterns, rise, pad, platform, floor } = stairs
  const tallest = Math.max(...flights.map(({ topLevel, bottomLevel }) => topLevel - bottomLevel))
  const noNosing = run >= inches(STAIR_LIMITS.noNosingFrom.value)
  const ball = stairs.totalRise > inches(IRC_LIMITS.guardDrop.value)
  return [
    { limit: IRC_LIMITS.riser, what: 'a riser', measure: rise, holds: 'at most' },
    { limit: IRC_LIMITS.tread, what: 'the run of a tread', measure: run, holds: 'at least' },
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
            measure: tread.nosing,
            holds: 'at least' as const,
          },
        ]),
    { limit: STAIR_LIMITS.nosingMost, what: 'the nosing', measure: tread.nosing, holds: 'at most' },
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
            what: 'the landing between the flights',
            measure: platform.depth,
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

function remedyFor({ limit, what }: PlainRule): string {
  switch (limit.id) {
    case STAIR_LIMITS.openRiser.id:
      return 'Close the risers by a board.'
    case STAIR_LIMITS.flightRise.id:
      return 'Put a landing between two flights.'
    case STAIR_LIMITS.landingDepth.id:
      return `Make ${what} 36 in deep or more.`
    case STAIR_LIMITS.nosingLeast.id:
      return 'Shorten the run, or make it 11 in or more.'
    case STAIR_LIMITS.nosingMost.id:
      return 'Lengthen the run until the boards reach past it by 1-1/4 in or less.'
    default:
      return 'Change the run of the treads.'
  }
}

/** Where boards above do not reach over as far as a tread's nosing does, the going there is another. IRC 2021 R311.7.5.2. */
function topGoings({ decking, stairs: { run } }: Job, { tread, platform }: StairPlan): string {
  const most = inches(MOST_APART)
  const places = [
    { what: 'The deck’s boards reach', over: decking.overhang },
    ...(platform === null ? [] : [{ what: 'The landing’s boards reach', over: ticks(0) }]),
  ]
  return places
    .filter(({ over }) => Math.abs(tread.nosing - over) > most)
    .map(
      ({ what, over }) =>
        `${what} ${printLength(over)} over the face under them: the going down from there is ${printLength(ticks(run + tread.nosing - over))}, the others ${printLength(run)}; they may differ by ${MOST_APART} in (R311.7.5.2, from memory). Let them reach over by ${printLength(tread.nosing)}, as each tread does.`,
    )
    .join(' ')
}

/** A riser's board stands before the plumb cut of a cut stringer and takes its thickness off the nosing over it. */
function beforeCuts({ stairs }: Job, { tread, members }: StairPlan): string {
  const board = members.find(({ role }) => role === 'riser')
  if (board === undefined || stairs.stringers !== 'cut') return ''
  const { thickness } = sectionOf(board.product.size)
  const left = tread.nosing - thickness
  return `Riser boards ${printLength(thickness)} thick stand before the plumb cuts, and the nosing of ${printLength(tread.nosing)} is over the cut: past the board’s face ${left < 0 ? `the tread ends ${printLength(ticks(-left))} short` : `${printLength(ticks(left))} of it is left`}. Lay out the stringers with a board in hand, and where the code asks for a nosing over closed risers set the treads out past the boards before anything is cut.`
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
