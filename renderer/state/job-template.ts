import { type FieldPath, type JobStatement, setField, statedValue } from '../../core/job/index.ts'
import { UNANSWERED } from './new-job.ts'

/**
 * What goes from one job into the next: how its builder builds and prices. Not the place, whose frost, soil and snow are
 * local facts, nor the size, the frame, the customer, or what was said of single lines.
 */
const CARRIED: readonly FieldPath[] = [
  'builder',
  'code.edition',
  'frame.species',
  'frame.grade',
  'frame.treatment',
  'decking.size',
  'decking.edges',
  'decking.fastening',
  'decking.overhang',
  'decking.gap',
  'decking.wallGap',
  'guard.infill',
  'guard.cap',
  'guard.fixing',
  'guard.holdDown',
  'cutting.kerf',
  'cutting.endTrim',
  'cutting.staggerPenalty',
  'cutting.handling',
  'cutting.keepOffcutsFrom',
  'cutting.unusableShare',
  'cutting.finishProbability',
  'cutting.objective',
  'cutting.objectiveThen',
  'work.crew',
  'pricing.method',
  'pricing.margin',
  'pricing.markup',
  'pricing.salesTax',
  'pricing.priceTax',
  'pricing.contingency',
  'pricing.overhead',
  'pricing.dailySetUp',
  'pricing.book',
]

/** A job that nobody has said anything of yet, but for what it takes over from another. */
export function startingFrom(other: JobStatement): JobStatement {
  return CARRIED.reduce((made, path) => {
    const value = statedValue(other, path)
    return value === undefined ? made : setField(made, path, value)
  }, UNANSWERED)
}
