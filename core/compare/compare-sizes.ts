import type { LpEngine } from '../cutting/index.ts'
import { costDesign, design, type EstimateOptions } from '../estimate.ts'
import { isRectangle, type JobStatement, setField } from '../job/index.ts'
import type { PriceBook } from '../pricing/index.ts'
import { printLength, type Ticks, ticks } from '../units/index.ts'
import { rowOf, unpriced } from './row.ts'
import type { CompareRow } from './types.ts'

/** Steps of one side, both ends included. */
interface Steps {
  readonly from: Ticks
  readonly to: Ticks
  readonly step: Ticks
}

export interface SizeGrid {
  readonly width: Steps
  readonly depth: Steps
}

/** The sizes of a grid, those nearest to the given one first; of equally near ones the smaller first. */
function sizesOf(
  { width, depth }: SizeGrid,
  near: { readonly width: Ticks; readonly depth: Ticks },
): readonly { readonly width: Ticks; readonly depth: Ticks }[] {
  const far = (size: { readonly width: Ticks; readonly depth: Ticks }) =>
    Math.abs(size.width - near.width) / width.step + Math.abs(size.depth - near.depth) / depth.step
  return stepsOf(depth)
    .flatMap((d) => stepsOf(width).map((w) => ({ width: w, depth: d })))
    .sort((a, b) => far(a) - far(b) || a.depth - b.depth || a.width - b.width)
}

/**
 * The same rectangle in each size of a grid, framed, checked, cut by sound plans with their bound, and priced in full.
 * A size that cannot be framed or priced is a row that says why. Nothing for a job that is not valid itself, or whose
 * outline is stated corner by corner.
 */
export function* compareSizes(
  statement: JobStatement,
  book: PriceBook,
  engine: LpEngine,
  grid: SizeGrid,
  options: EstimateOptions = {},
): Iterable<CompareRow> {
  const base = design(statement)
  if (!base.ok || !isRectangle(base.value.job)) return
  const shared = { ...options, known: options.known ?? new Map(), quick: true }
  for (const size of sizesOf(grid, base.value.job.size)) {
    // stated anew, as what nobody has set follows the depth
    const made = design(
      setField(
        setField(statement, 'size.width', printLength(size.width)),
        'size.depth',
        printLength(size.depth),
      ),
    )
    yield made.ok
      ? rowOf(size, made.value, costDesign(made.value, book, engine, shared))
      : unpriced(size, made.error[0]?.message ?? 'It cannot be framed.')
  }
}

/** Every step of a side, in order. Throws where a step is not above 0. */
export function stepsOf({ from, to, step }: Steps): readonly Ticks[] {
  if (step <= 0) throw new RangeError('a grid of sizes needs steps above 0')
  const steps: Ticks[] = []
  for (let at: number = from; at <= to; at += step) steps.push(ticks(at))
  return steps
}
