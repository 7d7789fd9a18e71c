import type { Frame } from '../frame/index.ts'
import type { GuardPlan } from '../guard/index.ts'
import type { Job } from '../job/index.ts'
import type { Layout } from '../layout/index.ts'
import type { StairPlan } from '../stairs/index.ts'
import { checkBeamBearings } from './beam-bearing.ts'
import { checkBeamOverhangs } from './beam-overhang.ts'
import { checkBeamSpans } from './beam-span.ts'
import { checkBeamSplices } from './beam-splice.ts'
import { checkConcentratedLoad } from './concentrated-load.ts'
import { type CheckContext, contextOf, type JoistContext, joistContexts } from './context.ts'
import { checkDeadLoad } from './dead-load.ts'
import { checkDecay } from './decay.ts'
import { checkDeckingSpan } from './decking-span.ts'
import { checkFootingDepth } from './footing-depth.ts'
import { checkFootingSizes } from './footing-size.ts'
import { checkFootingThicknesses } from './footing-thickness.ts'
import { checkFrostUplift } from './frost-uplift.ts'
import { checkGuard } from './guard.ts'
import { checkGuardBuilt } from './guard-build.ts'
import { checkGuardHoldDowns } from './guard-hold-downs.ts'
import { checkGuardRailEnds } from './guard-rail-ends.ts'
import { checkHangerLoad } from './hanger-load.ts'
import { checkHips, hipCheck } from './hip.ts'
import { checkJoistBearing } from './joist-bearing.ts'
import { checkJoistCantilevers } from './joist-cantilever.ts'
import { checkJoistJoints } from './joist-joints.ts'
import { checkJoistRestraint } from './joist-restraint.ts'
import { checkJoistSpan } from './joist-span.ts'
import { checkLandingRoom } from './landing-room.ts'
import { checkLateralLoad } from './lateral-load.ts'
import { checkLedgerBand } from './ledger-band.ts'
import { checkLedgerEdges } from './ledger-edges.ts'
import { checkLedgerFasteners } from './ledger-fasteners.ts'
import { checkLedgerSize } from './ledger-size.ts'
import { checkLevels } from './levels.ts'
import { loadPath } from './load-path.ts'
import { checkLoads } from './loads.ts'
import { measure } from './measures.ts'
import { checkOpenings } from './openings.ts'
import { checkPostEnds } from './post-ends.ts'
import { checkPostHeights } from './post-height.ts'
import { checkSlantingRims } from './slanting-rim.ts'
import { checkStairGuardPosts } from './stair-guard-posts.ts'
import { checkStairs } from './stairs.ts'
import type { Check } from './types.ts'
import { checkUplift } from './uplift.ts'

/** What stands on the frame and is checked with it: no stairs, and null, where the job asks for none. */
export interface Additions {
  readonly stairs: readonly StairPlan[]
  readonly guard: GuardPlan | null
}

const NONE: Additions = { stairs: [], guard: null }

/** Every rule applied to a frame and what stands on it, in the order that loads travel: decking, joists, ledger, beams, posts, footings. */
export function checkFrame(
  job: Job,
  layout: Layout,
  frame: Frame,
  additions: Additions = NONE,
): readonly Check[] {
  return checksWith(checkWood(job, layout, frame), additions)
}

/** Checks of a frame that hang on nothing that stands on it. */
export interface WoodChecks {
  readonly context: CheckContext
  /** in the order that loads travel, down to where levels are walked between, and on from there */
  readonly checks: readonly [readonly Check[], readonly Check[]]
}

/** The checks of a frame with those of what stands on it. */
export function checksWith(
  { context, checks: [before, after] }: WoodChecks,
  { stairs, guard }: Additions,
): readonly Check[] {
  return [
    ...before,
    ...checkLevels(context, stairs),
    ...after,
    checkGuard(context, guard, stairs),
    ...checkGuardBuilt(context.job, guard, stairs),
    ...checkGuardHoldDowns(context.job, guard),
    ...checkGuardRailEnds(context.job, guard),
    ...checkStairGuardPosts(context.job, guard, stairs),
    ...checkLandingRoom(context.job, guard, stairs),
    ...stairs.flatMap((one) => checkStairs(context, one, guard)),
  ]
}

/** Every rule applied to a frame alone. */
export function checkWood(job: Job, layout: Layout, frame: Frame): WoodChecks {
  const context = contextOf(job, layout, frame)
  const joists = joistContexts(context)
  const perGroup = (check: (one: JoistContext) => readonly Check[]) => joists.flatMap(check)
  const before = [
    checkLoads(context),
    checkDeadLoad(context),
    checkDecay(context),
    checkDeckingSpan(context),
    ...perGroup((one) => [checkJoistSpan(one)]),
    ...perGroup(checkJoistCantilevers),
    ...perGroup((one) => [checkJoistBearing(one)]),
    checkJoistRestraint(context),
    ...checkJoistJoints(context),
    ...perGroup(checkConcentratedLoad),
    ...perGroup(checkHangerLoad),
    ...checkSlantingRims(context),
    ...checkHips(context),
    ...checkOpenings(context),
  ]
  const after = [
    ...checkLedgerBand(context),
    ...perGroup(checkLedgerFasteners),
    ...checkLedgerEdges(context),
    ...checkLedgerSize(context),
    checkLateralLoad(context),
    ...checkBeamSpans(context),
    ...checkBeamOverhangs(context),
    ...checkBeamBearings(context),
    ...checkBeamSplices(context),
    ...checkPostHeights(context),
    ...checkPostEnds(context),
    ...checkUplift(context),
    ...checkFootingSizes(context),
    ...checkFootingThicknesses(context),
    checkFootingDepth(context),
    checkFrostUplift(context),
  ]
  return { context, checks: [before, after] }
}

/**
 * Names of checks of members that no table covers, whatever their size: hips, and spans of beams that slant or carry
 * joists from both sides, as middle ones do, and flush ones between two parts. Whether joists of another part reach over
 * a dropped beam hangs on its plies.
 */
export function checksBesideTables(job: Job, layout: Layout, frame: Frame): ReadonlySet<string> {
  const { beams } = measure(job, layout, frame)
  const never = beams.filter(
    ({ slanting, bothSides, beam }) =>
      slanting || (bothSides && (beam.flush || beam.key.startsWith('middle'))),
  )
  return new Set([...never.map(({ beam }) => `beam-span-${beam.key}`), ...frame.hips.map(hipCheck)])
}

/** The beams' spans alone, of a frame whose beams are taken to be of other depths under the same joists. */
export function checkSpansOfBeams(
  { layout, path: { joists } }: CheckContext,
  job: Job,
  frame: Frame,
): readonly Check[] {
  const measures = measure(job, layout, frame)
  return checkBeamSpans({ ...measures, path: loadPath(measures, joists) })
}
