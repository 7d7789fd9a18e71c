import { IRC_LIMITS } from '../data/index.ts'
import { type GuardedEdge, type GuardPlan, houseSideWords } from '../guard/index.ts'
import { groundAt } from '../layout/index.ts'
import type { StairPlan } from '../stairs/index.ts'
import { inches, ticks } from '../units/index.ts'
import type { CheckContext } from './context.ts'
import { byLimit, length } from './finding.ts'
import { judge } from './judge.ts'
import { dropFromLanding } from './landing-guard.ts'
import type { Check } from './types.ts'
import { both, feetInches } from './words.ts'

/** Whether a guard is needed: a drop of more than 30 in within 36 in of an open edge. IRC 2021 R312.1.1. */
export function checkGuard(
  context: CheckContext,
  guard: GuardPlan | null = null,
  stairs: readonly StairPlan[] = [],
): Check {
  const { job, layout } = context
  // of several levels the highest counts over the whole of the ground: more than one stands over it, never less
  const top = ticks(Math.max(...layout.levels.map(({ deckTop }) => deckTop)))
  const drop = ticks(Math.ceil(top - lowestGround(context)))
  // told to the next 1/8 in; what decides is exact
  const told = feetInches(ticks(Math.ceil(drop / 4) * 4))
  const limit = inches(IRC_LIMITS.guardDrop.value)
  // ground that falls away may lie deeper under a landing than under the deck
  const highest = Math.max(
    0,
    ...stairs.map(({ platform }) => (platform === null ? 0 : dropFromLanding(job, platform))),
  )
  const found = byLimit(IRC_LIMITS.guardDrop, length(drop), length(limit), [
    `${layout.levels.length > 1 ? 'Highest walking surface' : 'Walking surface'} ${feetInches(top)} above the datum`,
    `Greatest drop to the ground within ${IRC_LIMITS.guardReach.value} in of the edge: ${told}`,
  ])
  const base = {
    id: 'guard',
    title: 'Guard',
    subjects: [],
    fields: ['size.height', 'site.ground', 'guard.where', 'scope.guard'],
    calculated: null,
    bad: '',
    remedy: '',
  }
  if (drop <= limit && highest <= limit) {
    return judge(job, {
      ...base,
      prescriptive: { ...found, ratio: null },
      good: () => `No guard is needed: the greatest drop is ${told}.`,
      uncovered: '',
      caution: '',
    })
  }
  if (guard !== null) {
    const edges = guard.stretches.map(({ edge }) => edge.id)
    const bare = guard.edges.filter(
      ({ needed, edge }) => needed && !edges.includes(edge.id) && roomBeside(edge, stairs) >= LEAST_ROOM,
    )
    const own = bare.filter(({ landing }) => landing === null).map(({ edge }) => `edge ${edge.number}`)
    const missing = [
      ...(own.length > 0 ? [`along ${both(own)} too`] : []),
      ...(bare.some(({ landing }) => landing !== null) ? ['on the open sides of the stairs’ landing'] : []),
    ]
    return judge(job, {
      ...base,
      prescriptive: missing.length === 0 ? { ...found, ratio: null } : null,
      good: () =>
        `A guard is needed, for the drop is ${told}; it is counted along ${guard.stretches.length} stretches${guard.stretches.some(({ landing }) => landing !== null) ? ', those of the stairs’ landing with them' : ''}${guard.stairs.length > 0 ? ', and beside the stairs' : ''}.`,
      uncovered: `A guard is needed ${missing.join(' and ')}`,
      whenUncovered:
        'Have a guard along every edge and side of a landing from which the ground lies more than 30 in below.',
      caution: [
        stairs.length === 0
          ? ''
          : 'Where stairs leave, the guard is open: nothing else may be taken away before the rail is up.',
        besideTheHouse(guard, stairs),
      ]
        .filter((text) => text !== '')
        .join(' '),
    })
  }
  const height = `${IRC_LIMITS.guardHeight.value} in high at least, no opening that passes a 4 in ball`
  return judge(job, {
    ...base,
    prescriptive: job.scope.guard.included ? { ...found, ratio: null } : null,
    good: () => `A guard is needed, for the drop is ${told}; the job includes one.`,
    uncovered: `A guard is needed, for the drop is ${told}; the job does not include one`,
    whenUncovered: 'Include the guard in the job, or have someone else build it before the deck is used.',
    caution: [
      `The guard: ${height}. How its posts are fixed (R507.10) is not checked here.`,
      ...(job.frame.joists.size === '2x6'
        ? ['AWC DCA 6 fixes no guard to 2x6 joists: use 2x8 or deeper.']
        : []),
    ].join(' '),
  })
}

/** Sides of stairs that have no guard, for the house stands along them; where a wall is only taken to go on, that too. */
function besideTheHouse({ house }: GuardPlan, stairs: readonly StairPlan[]): string {
  if (house.length === 0) return ''
  const railed = stairs.some(
    ({ number, handrail }) => handrail.sides > 0 && house.some((one) => one.stairs === number),
  )
  const open = house.some(({ closes }) => closes === 'wall going on')
  return [
    `Along the house no guard stands beside ${houseSideWords(house)}: the wall closes that side${railed ? ', and a handrail there is fixed to the wall' : ''}.`,
    open
      ? 'The wall is taken to go on past the end of the deck as far as the stairs: where it ends sooner, that side needs a guard.'
      : '',
  ]
    .filter((text) => text !== '')
    .join(' ')
}

/** An edge that stairs leave so little of is closed by their posts and the deck's. */
const LEAST_ROOM = inches(16)

/** What stairs leave of an edge. */
function roomBeside(edge: GuardedEdge['edge'], stairs: readonly StairPlan[]): number {
  return stairs.reduce((room, one) => (one.edge.id === edge.id ? room - one.width : room), edge.length)
}

/** Lowest ground under the open edges and 36 in beyond them, sampled every foot along them and at the corners. */
function lowestGround({ job, layout }: CheckContext): number {
  const reach = inches(IRC_LIMITS.guardReach.value)
  const points = layout.levels.flatMap(({ outline }) => outline)
  const xs = points.map((point) => point.x)
  const ys = points.map((point) => point.y)
  const [left, right] = [Math.min(...xs) - reach, Math.max(...xs) + reach]
  const front = Math.max(...ys) + reach
  const back = Math.min(...ys) - (job.site.attachment === 'freestanding' ? reach : 0)
  const step = inches(12)
  let lowest = Number.POSITIVE_INFINITY
  for (let x = left; x <= right + step; x += step) {
    for (let y = back; y <= front + step; y += step) {
      lowest = Math.min(lowest, groundAt(job, Math.min(x, right), Math.min(y, front)))
    }
  }
  return lowest
}
