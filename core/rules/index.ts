export {
  type AdjustedValues,
  adjust,
  adjustedValues,
  calculationConfidence,
  isIncised,
  repetitiveFactor,
  type Service,
} from './adjusted-values.ts'
export {
  type BeamEnvelope,
  continuousEnvelope,
  jointedEnvelope,
  type LineLoad,
  type StretchDemand,
  type SupportDemand,
  worseEnvelope,
} from './beam-envelope.ts'
export { deflectionExtremes, greatestShear, momentExtremes } from './beam-forces.ts'
export { beamStability, bendingSlenderness, criticalBending, heldUpright } from './beam-stability.ts'
export { tabledBeamSpan } from './beam-table.ts'
export { bearingAreaFactor, bearingStress } from './bearing.ts'
export { bendingSpan, bendingStress } from './bending.ts'
export {
  columnStability,
  criticalBuckling,
  slendernessFor,
} from './column-stability.ts'
export {
  analyseBeam,
  analyseBeams,
  type BeamLoad,
  type BeamModel,
  type BeamResult,
} from './continuous-beam.ts'
export {
  guideBeamSpan,
  guideFootingDiameter,
  guideFootingThickness,
  guideOverhang,
  guidePostHeight,
} from './deck-guide-tables.ts'
export { cantileverByTip, deflectionSpan, tipDeflection } from './deflection.ts'
export { governingLoad, spanTableLoad } from './design-load.ts'
export { type DowelMember, dowelBearing, singleShearYield, type YieldMode } from './dowel-yield.ts'
export { eccentricCapacity } from './eccentric-column.ts'
export { effectiveJoistSpan, joistSpanFactor } from './effective-joist-span.ts'
export { figure } from './figure.ts'
export { CONCRETE_WEIGHT, footingDiameter, footingSide, footingThickness, soilPressure } from './footing.ts'
export { tabledFootingDiameter, tabledFootingThickness } from './footing-tables.ts'
export { guardPostMoment, guardPostPull } from './guard-post.ts'
export { tabledCantilever, tabledJoistSpan } from './joist-tables.ts'
export { kneeBraceForce } from './knee-brace.ts'
export { calculatedLedgerSpacing, impliedFastenerLoad } from './ledger-capacity.ts'
export { type LedgerFastener, type LedgerSheathing, ledgerSpacing } from './ledger-spacing.ts'
export { loadDuration } from './load-duration.ts'
export { liveLoadPatterns } from './load-patterns.ts'
export { nailLateral } from './nail-yield.ts'
export { type Notch, notchFaults } from './notches.ts'
export { tabledPostHeight } from './post-table.ts'
export { areaOf, momentOfInertia, type Rectangle, rectangleOf, sectionModulus } from './section.ts'
export { shearSpan, shearStress } from './shear.ts'
export { sizeFactors } from './size-factor.ts'
export { type Flight, layOutFlight, stringerLine } from './stairs.ts'
export { isRow, lookUpRow, type TableLookup, type TableQuery } from './table-lookup.ts'
export { squareFeet, tributaryLengths } from './tributary.ts'
export { wetDimension } from './wet-service.ts'
export { lagWithdrawal, nailWithdrawal } from './withdrawal.ts'
