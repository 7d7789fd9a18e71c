import type { Frame } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import type { Layout } from '../layout/index.ts'
import { soilPressure } from '../rules/index.ts'
import type { StairPlan } from '../stairs/index.ts'
import { type Psf, type Ticks, toInches } from '../units/index.ts'
import { contextOf } from './context.ts'
import { byReaction, concreteWeight, loadedFootings, toWholeInch, widthOf } from './footing-load.ts'
import { bearingOf } from './soil.ts'
import { borneByDeck } from './stair-head-load.ts'

/** What stands on a footing, and what it presses on the soil with. */
export interface FootingLoad {
  readonly footingId: string
  /** sq ft of deck that it carries */
  readonly area: number
  /** lb: the area times live or snow load and dead load, as the code's table reckons */
  readonly load: number
  /** lb: the beam's greatest reaction with the live load placed worst, and what stairs bring; null where it was not reckoned */
  readonly worst: number | null
  /** lb of that which flights that hang on the deck bring, all of each on every post that it may come to */
  readonly ofStairs: number
  /** psf under the footing at that reaction, without the concrete's weight */
  readonly worstPressure: number | null
  /** how wide the footing would have to be for it, to the next inch; null where it is wide enough */
  readonly worstNeeds: Ticks | null
  /** lb of concrete */
  readonly ownWeight: number
  /** psf under the footing, without and with the concrete's weight */
  readonly pressure: number
  readonly pressureWithOwnWeight: number
  /** psf that the soil is reckoned to carry */
  readonly bearing: Psf
}

/**
 * Loads and pressures of every footing, in the order of the posts.
 * @param stairs whose upper flights hang on the deck
 */
export function footingLoads(
  job: Job,
  layout: Layout,
  frame: Frame,
  stairs: readonly StairPlan[] = [],
): readonly FootingLoad[] {
  const context = contextOf(job, layout, frame)
  const soil = bearingOf(job)
  const hung = stairs.flatMap((one) => borneByDeck(context, one) ?? [])
  return loadedFootings(context).map((one) => {
    const { footing, area, reaction } = one
    const load = area * (context.load + job.site.deadLoad)
    const ownWeight = concreteWeight(footing)
    const width = toInches(widthOf(footing))
    const ofStairs = hung
      .filter(({ postIds }) => postIds.includes(footing.postId))
      .reduce((sum, { brought }) => sum + brought, 0)
    const worst = reaction === null ? null : Math.max(0, reaction) + ofStairs
    const needs = byReaction({ ...one, reaction: worst }, soil)?.demand.value ?? 0
    return {
      footingId: footing.id,
      area,
      load,
      worst,
      ofStairs,
      worstPressure: worst === null ? null : soilPressure(worst, width),
      worstNeeds: needs > widthOf(footing) ? toWholeInch(needs) : null,
      ownWeight,
      pressure: soilPressure(load, width),
      pressureWithOwnWeight: soilPressure(load + ownWeight, width),
      bearing: soil.psf,
    }
  })
}
