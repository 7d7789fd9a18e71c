import { printLength, TICKS_PER_FOOT, type Ticks } from '../units/index.ts'
import { clearField, setField } from './commands.ts'
import { namedRuns, withoutRun } from './run-names.ts'
import {
  printStockCounts,
  printStockLengths,
  type StockLength,
  stockCounts,
  stockLengths,
} from './stock-lists.ts'
import type { FieldPath, Job, JobStatement } from './types.ts'

/** One wish on the cutting, and the statement without it. */
export interface Wish {
  /** the same for the same wish, whatever else is wished */
  readonly key: string
  /** the wish in words */
  readonly label: string
  readonly path: FieldPath
  /** what its field states without it; '' where nothing is left */
  readonly without: string
}

/** Everything that a job wishes of its order and cuts, in the order of the fields. */
export function wishesOf(
  { cutting }: Job,
  runs: readonly { readonly id: string; readonly label: string }[],
): readonly Wish[] {
  const { objective, objectiveThen, onePiece, doWithout, atMost } = cutting
  const lengths = stockLengths(doWithout)
  const counts = stockCounts(atMost)
  return [
    ...(objective === 'least cost' ? [] : [objectiveWish('cutting.objective', `Cut for ${objective}`)]),
    ...(objectiveThen === 'least cost' || objectiveThen === objective
      ? []
      : [objectiveWish('cutting.objectiveThen', `Among equals for ${objectiveThen}`)]),
    ...namedRuns(onePiece, runs).named.map((run) => ({
      key: `one piece ${run.id}`,
      label: `${run.label} in one piece`,
      path: 'cutting.onePiece',
      without: withoutRun(onePiece, run),
    })),
    ...lengths.map((wish) => ({
      key: `without ${keyOf(wish)}`,
      label: `No ${stockName(wish)}`,
      path: 'cutting.doWithout',
      without: printStockLengths(lengths.filter((other) => other !== wish)),
    })),
    ...counts.map((wish) => ({
      key: `at most ${keyOf(wish)}`,
      label: `At most ${wish.count} × ${stockName(wish)}`,
      path: 'cutting.atMost',
      without: printStockCounts(counts.filter((other) => other !== wish)),
    })),
  ]
}

/** The statement as it would be without a wish. */
export function withoutWish(statement: JobStatement, { path, without }: Wish): JobStatement {
  return without === '' ? clearField(statement, path) : setField(statement, path, without)
}

function objectiveWish(path: FieldPath, label: string): Wish {
  return { key: path, label, path, without: '' }
}

function keyOf({ size, length }: StockLength): string {
  return `${size} ${length}`
}

/** A stock length with its size, `16' 2x10`. */
function stockName({ size, length }: StockLength): string {
  return `${stockFeet(length)} ${size}`
}

function stockFeet(length: Ticks): string {
  return length % TICKS_PER_FOOT === 0 ? `${length / TICKS_PER_FOOT}'` : printLength(length)
}
