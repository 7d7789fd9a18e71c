import type { LpEngine } from '../cutting/index.ts'
import { type EstimateOptions, estimate } from '../estimate.ts'
import type { Design, Estimate } from '../estimate-types.ts'
import type { Fault, Found } from '../job/index.ts'
import { bookAsBought, type Line, type OffcutsOnHand, type PriceBook } from '../pricing/index.ts'
import { fail, ok, type Result } from '../units/index.ts'
import { type ConcreteOrder, concreteOrder } from './concrete-order.ts'
import { type DiggingWay, diggingWays } from './digging-ways.ts'
import { type FootingRow, footingSchedule } from './footing-schedule.ts'
import { type FoundOption, foundOff } from './found-off.ts'
import { type LayoutCheck, layoutChecks } from './layout-checks.ts'
import { type CornerSetOut, layoutCorners } from './layout-corners.ts'
import { type Crossing, type LayoutString, layoutStrings } from './layout-strings.ts'
import { type MeasuredPosts, measuredPosts } from './measured-posts.ts'
import { soilCautions } from './soil-cautions.ts'
import { type TubePlan, tubePlan } from './tube-plan.ts'

/** Everything about the ground of one deck. */
export interface GroundReport {
  readonly footings: readonly FootingRow[]
  readonly strings: readonly LayoutString[]
  readonly crossings: readonly Crossing[]
  /** of an outline that is no rectangle; none of one that is */
  readonly corners: readonly CornerSetOut[]
  readonly checks: readonly LayoutCheck[]
  readonly volumes: Design['takeoff']['volumes']
  readonly concrete: ConcreteOrder
  /** null where the price book does not sell the tube */
  readonly tubes: TubePlan | null
  readonly digging: readonly DiggingWay[]
  /** lines of the price that the ground makes: concrete, forms, hire, and the hours of its tasks */
  readonly lines: readonly Line[]
  readonly cautions: readonly string[]
  /** null where no post was measured */
  readonly measured: MeasuredPosts | null
  /** null where nothing was found off */
  readonly found: { readonly at: Found; readonly options: readonly FoundOption[] } | null
}

export interface GroundAsked {
  /** a hole that was found off its place */
  readonly found?: Found | undefined
  readonly rack?: readonly OffcutsOnHand[]
  /** plans already made, by the content of their cutting job */
  readonly known?: NonNullable<EstimateOptions['known']>
}

/** The report as it crosses a door. */
export type GroundResult =
  | { readonly ok: true; readonly ground: GroundReport }
  | { readonly ok: false; readonly faults: readonly Fault[] }

/** The ground of a stated job by a price book, or what is wrong with the job. */
export function groundReport(
  statement: unknown,
  book: PriceBook,
  engine: LpEngine,
  { found, rack = [], known = new Map() }: GroundAsked = {},
): Result<{ readonly estimate: Estimate; readonly ground: GroundReport }, readonly Fault[]> {
  const result = estimate(statement, book, engine, { rack, known })
  if (!result.ok) return fail(result.faults)
  const made = result.estimate
  const bought = bookAsBought(book, made.split?.from ?? null)
  const tubes = tubePlan(made, bought, engine)
  return ok({
    estimate: made,
    ground: {
      footings: footingSchedule(made),
      ...layoutStrings(made),
      corners: layoutCorners(made),
      checks: layoutChecks(made),
      volumes: made.takeoff.volumes,
      concrete: concreteOrder(made, bought),
      tubes: tubes?.ok ? tubes.value : null,
      digging: diggingWays(made, bought),
      lines: groundLines(made),
      cautions: soilCautions(made.job),
      measured: measuredPosts(made, bought, engine),
      found:
        found === undefined
          ? null
          : { at: found, options: foundOff(made, bought, engine, found, { rack, known }) },
    },
  })
}

/** Each line of the price that concrete, forms, hire and the work in the ground make, once. */
function groundLines({ takeoff, pricing }: Pick<Estimate, 'takeoff' | 'pricing'>): readonly Line[] {
  const tasks = new Set(takeoff.tasks.filter(({ stage }) => stage === 'ground').map(({ id }) => id))
  const hire = new Set(takeoff.goods.filter(({ group }) => group === 'hire').map(({ id }) => id))
  return (pricing?.lines ?? []).filter(
    ({ group, cause }) => group === 'concrete' || cause.ids.some((id) => tasks.has(id) || hire.has(id)),
  )
}
