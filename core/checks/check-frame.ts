import type { Frame } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import type { Layout } from '../layout/index.ts'
import { checkBeamBearings } from './beam-bearing.ts'
import { checkBeamOverhangs } from './beam-overhang.ts'
import { checkBeamSpans } from './beam-span.ts'
import { contextOf } from './context.ts'
import { checkDeadLoad } from './dead-load.ts'
import { checkDecay } from './decay.ts'
import { checkDeckingSpan } from './decking-span.ts'
import { checkFootingDepth } from './footing-depth.ts'
import { checkFootingSizes } from './footing-size.ts'
import { checkFootingThicknesses } from './footing-thickness.ts'
import { checkGuard } from './guard.ts'
import { checkHangerLoad } from './hanger-load.ts'
import { checkJoistBearing } from './joist-bearing.ts'
import { checkJoistCantilevers } from './joist-cantilever.ts'
import { checkJoistSpan } from './joist-span.ts'
import { checkLateralLoad } from './lateral-load.ts'
import { checkLedgerBand } from './ledger-band.ts'
import { checkLedgerEdges } from './ledger-edges.ts'
import { checkLedgerFasteners } from './ledger-fasteners.ts'
import { checkLedgerSize } from './ledger-size.ts'
import { checkPostHeights } from './post-height.ts'
import type { Check } from './types.ts'
import { checkUplift } from './uplift.ts'

/** Every rule applied to a frame, in the order that loads travel: decking, joists, ledger, beams, posts, footings. */
export function checkFrame(job: Job, layout: Layout, frame: Frame): readonly Check[] {
  const context = contextOf(job, layout, frame)
  return [
    checkDeadLoad(context),
    checkDecay(context),
    checkDeckingSpan(context),
    checkJoistSpan(context),
    ...checkJoistCantilevers(context),
    checkJoistBearing(context),
    ...checkHangerLoad(context),
    ...checkLedgerBand(context),
    ...checkLedgerFasteners(context),
    ...checkLedgerEdges(context),
    ...checkLedgerSize(context),
    checkLateralLoad(context),
    ...checkBeamSpans(context),
    ...checkBeamOverhangs(context),
    ...checkBeamBearings(context),
    ...checkPostHeights(context),
    ...checkUplift(context),
    ...checkFootingSizes(context),
    ...checkFootingThicknesses(context),
    checkFootingDepth(context),
    checkGuard(context),
  ]
}
