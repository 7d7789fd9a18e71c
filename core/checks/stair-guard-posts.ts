import { guardBoltsSource, IRC_LIMITS } from '../data/index.ts'
import { boltedPosts, type GuardPlan } from '../guard/index.ts'
import type { Job } from '../job/index.ts'
import { guardPostPull } from '../rules/index.ts'
import type { StairPlan } from '../stairs/index.ts'
import { printInches, type Ticks, ticks, toInches } from '../units/index.ts'
import { byCalculation } from './calculated.ts'
import { judge } from './judge.ts'
import type { Check, Finding } from './types.ts'

/**
 * Posts beside stairs, bolted to the outer faces of stringers: no table has them. By statics each turns about its lower
 * bolt; where the hold-down at the upper one bears less than that pulls, or there is no room for two, they lie outside
 * prescriptive scope. None where no guard stands beside stairs.
 */
export function checkStairGuardPosts(
  job: Job,
  guard: GuardPlan | null,
  stairs: readonly StairPlan[],
): readonly Check[] {
  if (guard === null || guard.stairPosts === 0) return []
  const posts = guard.stairs.flatMap((side) => boltedPosts({ stairs }, side))
  const pulls = posts.flatMap(({ mark, bolts, nosings }) => {
    if (bolts === null) return []
    const [lower, upper] = bolts
    const over = ticks(Math.ceil(nosings - upper))
    const arm = ticks(upper - lower)
    const pull = guardPostPull(
      IRC_LIMITS.guardLoad.value,
      toInches(job.guard.height),
      toInches(over),
      toInches(arm),
    )
    return [{ mark, over, arm, pull }]
  })
  const worst = pulls.toSorted((a, b) => b.pull - a.pull)[0]
  const roomless = posts.filter(({ bolts }) => bolts === null).map(({ mark }) => mark)
  const capacity = job.guard.holdDown
  const reckoned = worst === undefined ? null : pullFinding(job, worst, capacity)
  const held = job.guard.fixing === 'hold-downs' && roomless.length === 0
  const bears = held && reckoned !== null && (reckoned.ratio ?? 0) <= 1
  const told = [
    ...(roomless.length === 0 ? [] : [`the stringer has no wood for two bolts at ${roomless.join(', ')}`]),
    ...(worst === undefined
      ? []
      : [
          `by statics a push of ${IRC_LIMITS.guardLoad.value} lb at the top pulls ${Math.ceil(worst.pull)} lb at the upper bolt of ${worst.mark}, ${printInches(worst.arm)} over the lower one, where ${job.guard.fixing === 'hold-downs' ? `a hold-down bears ${capacity} lb` : 'no hold-down is'}`,
        ]),
  ]
  return [
    judge(job, {
      id: 'guard-stair-posts',
      title: 'Guard posts beside the stairs',
      subjects: posts.map(({ id }) => id),
      fields: ['guard.where', 'guard.fixing', 'guard.holdDown'],
      prescriptive: null,
      calculated: bears ? reckoned : null,
      beside: bears || reckoned === null ? [] : [reckoned],
      good: () => '',
      bad: '',
      uncovered: bears
        ? 'Posts bolted to stringers are in no table'
        : `Posts bolted to stringers are in no table; ${told.join('; ')}`,
      remedy: '',
      whenUncovered:
        'Outside prescriptive scope: state a hold-down that is listed for more, or have a licensed designer say how the posts beside the stairs are held.',
      caution: '',
    }),
  ]
}

function pullFinding(
  job: Job,
  { mark, over, arm, pull }: { mark: string; over: Ticks; arm: Ticks; pull: number },
  capacity: number,
): Finding {
  const load = IRC_LIMITS.guardLoad.value
  return byCalculation(
    [
      {
        name: `Pull at the upper bolt of ${mark}`,
        clause: 'statics',
        demand: { value: pull, unit: 'lb' },
        capacity: { value: capacity, unit: 'lb' },
        steps: [
          `P (h + t) ÷ arm + P = ${load} lb × (${printInches(job.guard.height)} + ${printInches(over)}) ÷ ${printInches(arm)} + ${load} lb = ${pull.toFixed(0)} lb, about the lower bolt`,
        ],
      },
    ],
    guardBoltsSource,
    [`${load} lb at the top of the guard (IRC 2021 Table R301.5)`],
  )
}
