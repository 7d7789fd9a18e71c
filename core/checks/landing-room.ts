import { IRC_LIMITS, STAIR_LIMITS, sectionOf } from '../data/index.ts'
import type { GuardPlan } from '../guard/index.ts'
import { furtherStairs, type Job, titleOfStairs } from '../job/index.ts'
import type { Spot, StairPlan } from '../stairs/index.ts'
import { inches, printInches, printLength, type Ticks, ticks } from '../units/index.ts'
import { byLimit, length } from './finding.ts'
import { judge } from './judge.ts'
import type { Check } from './types.ts'

const LEAST_DEPTH = inches(STAIR_LIMITS.landingDepth.value)
const LEAST_WIDTH = inches(IRC_LIMITS.stairWidth.value)

/**
 * Guard posts of a landing stand inside its edges, and so take of its depth and of the width of the flights that come and
 * leave. Whether less than the 36 in of the clauses is too little between posts they do not say: it is told, and the official
 * decides. None where no post stands on a landing.
 */
export function checkLandingRoom(
  job: Job,
  guard: GuardPlan | null,
  stairs: readonly StairPlan[],
): readonly Check[] {
  if (guard === null) return []
  return stairs.flatMap((plan) => {
    const room = roomOf(job, guard, plan)
    return room === null ? [] : [roomCheck(job, plan, room)]
  })
}

/** What the posts of a landing leave clear. */
interface Room {
  readonly depth: Ticks
  /** whether posts stand there, across the way of the upper flight */
  readonly posted: boolean
  /** of the landing, with which 36 in would be left clear between the posts */
  readonly wanted: Ticks
  /** of the lower flight, how much its head has between posts beside it, and the ids and marks of those */
  readonly lower: {
    readonly width: Ticks
    readonly clear: Ticks
    readonly ids: readonly string[]
    readonly marks: readonly string[]
  }
}

function roomOf(job: Job, guard: GuardPlan, { platform, flights, tread, number }: StairPlan): Room | null {
  const lower = flights.at(-1)
  const own = guard.stretches.filter(({ landing, posts }) => landing === number && posts.length > 0)
  if (platform === null || lower === undefined || own.length === 0) return null
  const post = sectionOf(job.guard.postSize).thickness
  const isAlong = (a: Spot, b: Spot) => Math.abs(a.x * b.x + a.y * b.y) > 0.5
  const taken = (stretches: typeof own) =>
    ticks(Math.ceil(stretches.reduce((sum, { behind }) => sum + behind + post, 0)))
  const across = own.filter(({ edge: { out } }) => out.x * platform.down.x + out.y * platform.down.y > 0.5)
  const depth = ticks(platform.depth - tread.riserBoard - taken(across))
  const beside = own.filter(({ edge }) => isAlong(edge.out, lower.across))
  const ids = beside.flatMap(({ posts }) => posts.map(({ id }) => id))
  return {
    depth,
    posted: across.length > 0,
    wanted: ticks(platform.depth + Math.max(0, LEAST_DEPTH - depth)),
    lower: {
      width: lower.width,
      clear: ticks(lower.width - taken(beside)),
      ids,
      marks: guard.members.filter(({ id }) => ids.includes(id)).map(({ mark }) => mark),
    },
  }
}

function roomCheck(
  job: Job,
  { branch, number, platform }: StairPlan,
  { depth, posted, wanted, lower }: Room,
): Check {
  const { clause } = STAIR_LIMITS.landingDepth.source
  const shallow = depth < LEAST_DEPTH
  const narrow = lower.clear < LEAST_WIDTH
  const told = [
    `Of the landing, ${printLength(platform?.depth ?? ticks(0))} deep, ${printInches(depth)} are clear from the riser at it to ${posted ? 'the guard posts inside its edge' : 'its edge'}${shallow ? `, where ${clause} asks for 36 in` : ''}`,
    ...(lower.marks.length === 0
      ? []
      : [
          `${lower.marks.join(', ')} ${lower.marks.length === 1 ? 'stands' : 'stand'} inside the lower flight’s width of ${printLength(lower.width)} at its head and ${lower.marks.length === 1 ? 'leaves' : 'leave'} ${printLength(lower.clear)} there`,
        ]),
  ]
  const clear = byLimit(STAIR_LIMITS.landingDepth, length(LEAST_DEPTH), length(depth), [
    `Clear depth of the landing between riser and guard posts: ${printInches(depth)}`,
  ])
  return judge(job, {
    id: number === 1 ? 'landing-room' : `landing-room-of-${number}`,
    title: titleOfStairs(branch, 'Room between the guard posts of the landing'),
    subjects: shallow || narrow ? lower.ids : [],
    fields: [
      furtherStairs(branch, 'stairs.landingDepth'),
      furtherStairs(branch, 'stairs.width'),
      'guard.where',
    ],
    prescriptive:
      shallow || narrow
        ? null
        : byLimit(IRC_LIMITS.stairWidth, length(LEAST_WIDTH), length(lower.clear), [
            `Clear width at the head of the lower flight: ${printLength(lower.clear)}`,
          ]),
    calculated: null,
    beside: [clear],
    good: () => `${told.join('; ')}.`,
    bad: '',
    uncovered: told.join('; '),
    remedy: '',
    whenUncovered: `Ask the building official before the landing is bought whether posts inside its edges count against ${clause} and ${IRC_LIMITS.stairWidth.source.clause}.${shallow ? ` A landing ${printLength(wanted)} deep would leave 36 in clear.` : ''}`,
    caution: '',
  })
}
