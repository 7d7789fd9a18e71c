import { distinctMarks, type Frame } from '../frame/index.ts'
import type { Fault, Job } from '../job/index.ts'
import type { Layout } from '../layout/index.ts'
import { deckEdges, type StairPlan } from '../stairs/index.ts'
import { fail, feet, inches, ok, printLength, type Result, type Ticks, ticks } from '../units/index.ts'
import { edgeDrops } from './edge-drops.ts'
import { capThickness, guardMembers } from './guard-members.ts'
import { guardStairs } from './stair-guards.ts'
import { layStretches } from './stretches.ts'
import type { GuardBay, GuardPlan } from './types.ts'

/** Balusters begin this far above the deck: no 4 in ball passes under the lower rail. Common practice, no source. */
const BELOW_RAIL = inches(3.5)

/** Lengths in which balusters are sold: common practice, no source. */
export const BALUSTER_STOCK = [32, 36, 42, 48, 60] as const

/** Lengths in which panels are sold, feet: common practice, no source. */
export const PANEL_STOCK = [6, 8] as const

/** The guard that a job asks for, null where it asks for none; or the named fault that keeps it from being built. */
export function layGuard(
  job: Job,
  layout: Layout,
  frame: Frame,
  stairs: readonly StairPlan[],
): Result<GuardPlan | null, readonly Fault[]> {
  const { guard } = job
  if (guard.where === 'none') return ok(null)
  const edges = deckEdges(layout)
  const open = edgeDrops(job, edges, layout.levels)
  const chosen = open.filter(({ needed }) => needed || guard.where === 'all open edges')
  const guarded = new Set(chosen.map(({ edge }) => edge.id))
  const stretches = layStretches(job, frame, edges, guarded, stairs, layout.levels)
  const beside = guardStairs(job, stairs)
  const level = stretches.flatMap(({ bays }) => bays)
  const sloped = beside.flatMap(({ bays, length }) =>
    bays.map((bay) => ({ ...bay, clear: ticks(Math.ceil(length / bays.length)) })),
  )
  const longest = Math.max(0, ...[...level, ...sloped].map(({ clear }) => clear))
  if (guard.infill === 'panels' && longest > feet(8)) {
    return fail([
      {
        path: 'guard.postSpacing',
        message: `panels come in 6 ft and 8 ft, and a bay is ${printLength(ticks(longest))} wide between its posts`,
        fix: 'set the posts 8 ft apart or closer, or fill the bays with balusters',
      },
    ])
  }
  return ok({
    edges: open,
    stretches,
    stairs: beside,
    members: distinctMarks(guardMembers(job, stretches, beside, stairs, frame)),
    baluster: balusterOf(job, [...level, ...beside.flatMap(({ bays }) => bays)]),
    panels: guard.infill === 'panels' ? [...panelsOf(level, false), ...panelsOf(sloped, true)] : [],
    deckPosts: stretches.reduce((sum, { posts }) => sum + posts.length, 0),
    stairPosts: beside.reduce((sum, { posts }) => sum + posts, 0),
    gates: guard.gate ? stairs.filter(({ edge }) => guarded.has(edge.id)).length : 0,
    levelLength: stretches.reduce((sum, { from, to }) => sum + to - from, 0),
    slopedLength: beside.reduce((sum, { length }) => sum + length, 0),
  })
}

function balusterOf(job: Job, bays: readonly GuardBay[]): GuardPlan['baluster'] {
  if (job.guard.infill === 'panels') return null
  const length = ticks(job.guard.height - capThickness(job) - BELOW_RAIL)
  const stock = BALUSTER_STOCK.find((one) => inches(one) >= length) ?? 60
  return { length, stock: inches(stock), count: bays.reduce((sum, bay) => sum + bay.balusters, 0) }
}

/** Panels by the shortest length that fills each bay. */
function panelsOf(bays: readonly { readonly clear: Ticks }[], sloped: boolean): GuardPlan['panels'] {
  return PANEL_STOCK.flatMap((long, i) => {
    const shorter = feet(PANEL_STOCK[i - 1] ?? 0)
    const count = bays.filter(({ clear }) => clear > shorter && clear <= feet(long)).length
    return count === 0 ? [] : [{ stock: feet(long), sloped, count }]
  })
}
