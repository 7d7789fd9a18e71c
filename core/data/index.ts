export { cite } from './cite.ts'
export type { CodeLimit } from './code-limit.ts'
export type { CodeTable, SafeSide, TableAxis, TableBlock, TableEntry } from './code-table.ts'
export { BAG_YIELD_THOUSANDTHS, bagYieldSource } from './concrete/bags.ts'
export {
  DCA_BEAM_SPANS,
  DCA_BRACING,
  DCA_FOOTING_ROUNDS,
  DCA_FOOTING_THICKNESSES,
  DCA_HANGERS,
  DCA_JOIST_OVERHANGS,
  DCA_LIMITS,
  DCA_POST_HEIGHTS,
} from './dca-6/index.ts'
export {
  boltHoleSource,
  GALVANISED_FEWER,
  guardBolts,
  guardBoltsSource,
  hangerNails,
  hangerNailsSource,
  ledgerHoles,
  ledgerHolesSource,
  type NailName,
  nailing,
  nailingSources,
  nailsPerPound,
  nailsPerPoundSource,
} from './fasteners/index.ts'
export {
  BEAM_SPANS,
  DECKING_SPANS,
  FOOTING_ROUNDS,
  FOOTING_SQUARES,
  FOOTING_THICKNESSES,
  IRC_LIMITS,
  JOIST_CANTILEVERS,
  JOIST_SPAN_FACTORS,
  JOIST_SPANS,
  LEDGER_EDGES,
  LEDGER_SPACING,
  POST_HEIGHTS,
  SOIL_BEARING,
  STAIR_LIMITS,
} from './irc-2021/index.ts'
export { STAIR_INFILL } from './labour/guard-work.ts'
export { lumberGrades, lumberSpecies, lumberTreatments } from './lumber-classes.ts'
export {
  type DesignValues,
  DIMENSION_LUMBER,
  INCISING,
  LOAD_DURATION,
  REPETITIVE,
  SIZE_FACTOR,
  type TabledSpecies,
  TIMBERS,
  WET_SERVICE,
} from './nds-2018/index.ts'
export {
  boardFeetThousandths,
  densitySource,
  dressedSizes,
  dressedSizesSource,
  lumberSizes,
  poundsPerFoot,
  sectionOf,
  woodDensity,
} from './ps20/index.ts'
export { SPECIES_GROUP } from './species-groups.ts'
export type * from './types.ts'
