import type { Job } from '../job/index.ts'
import { ceilTicks, feet, inches, ticks } from '../units/index.ts'
import { BALUSTER } from './bays.ts'
import { capThickness, UNDER_LOWER_RAIL } from './guard-members.ts'
import { cosineOf } from './stair-members.ts'
import type { Balusters, GuardBay, GuardPlan, GuardStretch, StairGuard } from './types.ts'

/** Lengths in which balusters are sold: common practice, no source. */
export const BALUSTER_STOCK = [32, 36, 42, 48, 60] as const

export const LONGEST_BALUSTER = 60

/** Lengths in which panels are sold, feet: common practice, no source. */
export const PANEL_STOCK = [6, 8] as const

/** Balusters on the level, and beside stairs by how long they are there: the flights may be of several slopes. */
export function balustersOf(
  job: Job,
  stretches: readonly GuardStretch[],
  stairs: readonly StairGuard[],
): readonly Balusters[] {
  if (job.guard.infill === 'panels') return []
  const level = ticks(job.guard.height - capThickness(job) - UNDER_LOWER_RAIL)
  const bySlope = Map.groupBy(stairs, (one) => slopedLength(job, one))
  return [
    balusters(
      false,
      level,
      stretches.flatMap(({ bays }) => bays),
    ),
    ...[...bySlope].map(([length, own]) =>
      balusters(
        true,
        length,
        own.flatMap(({ bays }) => bays),
      ),
    ),
  ].filter(({ count }) => count > 0)
}

/** From the lower rail's lower edge to the cap, upright, and what the slope adds to its long point. */
function slopedLength(job: Job, guard: StairGuard) {
  const cap = capThickness(job) / cosineOf(guard)
  return ceilTicks(job.guard.height - cap - guard.lowerRail + BALUSTER * guard.slope - 1e-6)
}

function balusters(sloped: boolean, length: Balusters['length'], bays: readonly GuardBay[]): Balusters {
  const stock = BALUSTER_STOCK.find((one) => inches(one) >= length) ?? LONGEST_BALUSTER
  return { sloped, length, stock: inches(stock), count: bays.reduce((sum, bay) => sum + bay.balusters, 0) }
}

/** What a bay takes of a panel: its clear width, and beside stairs that along the slope. */
export function panelWidth({ clear }: GuardBay, guard: Pick<StairGuard, 'slope'> | null): number {
  return guard === null ? clear : Math.ceil(clear / cosineOf(guard))
}

/** Panels by the shortest length that fills each bay. */
export function panelsOf(widths: readonly number[], sloped: boolean): GuardPlan['panels'] {
  return PANEL_STOCK.flatMap((long, i) => {
    const shorter = feet(PANEL_STOCK[i - 1] ?? 0)
    const count = widths.filter((width) => width > shorter && width <= feet(long)).length
    return count === 0 ? [] : [{ stock: feet(long), sloped, count }]
  })
}
