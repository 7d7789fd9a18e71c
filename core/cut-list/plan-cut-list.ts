import {
  auditPlan,
  type Infeasible,
  type LpEngine,
  planCuts,
  type Watch,
  watchPart,
} from '../cutting/index.ts'
import { hasSeveralSuppliers, leastPrices, type PriceBook } from '../pricing/index.ts'
import { ok } from '../units/index.ts'
import { listJobs } from './list-jobs.ts'
import { readCutList } from './read-cut-list.ts'
import type {
  CutList,
  CutListAnswer,
  CutListResult,
  ListPlan,
  Meaning,
  RowFault,
  SawSettings,
} from './types.ts'

/** What a list is planned from. */
export interface CutListRequest extends SawSettings {
  readonly text: string
  /** stock lengths given beside the list */
  readonly stockText?: string | undefined
  readonly columns?: readonly Meaning[] | undefined
  readonly stockColumns?: readonly Meaning[] | undefined
}

/** Reads a list and the stock beside it, and plans every product; any fault refuses all. */
export function runCutList(
  request: CutListRequest,
  book: PriceBook,
  engine: LpEngine,
  watch: Watch = {},
): CutListAnswer {
  const list = readRequest(request)
  if (!list.ok) return list
  const jobs = listJobs(list.list, request, leastPrices(book))
  if (!jobs.ok) return { ok: false, faults: jobs.error }
  const plans: ListPlan[] = []
  const infeasible: Infeasible[] = []
  for (const [index, { cutJob, ...named }] of jobs.value.entries()) {
    const part = { subject: cutJob.label, part: index + 1, parts: jobs.value.length }
    const told = watch.plans?.get(cutJob.id)
    const planned =
      told === undefined
        ? planCuts(cutJob, engine, watchPart(watch, { ...part, lengthUnit: named.lengthUnit }))
        : ok(told)
    if (!planned.ok) {
      infeasible.push(planned.error)
      continue
    }
    const faults = auditPlan(cutJob, planned.value)
    if (faults.length > 0) throw new Error(`plan of ${cutJob.label}: ${JSON.stringify(faults.slice(0, 3))}`)
    watch.onPlan?.(planned.value)
    plans.push({ ...named, plan: planned.value })
  }
  const fromBook = jobs.value.some(({ stockFrom }) => stockFrom === 'price book')
  return {
    ok: true,
    result: {
      plans,
      infeasible,
      book: fromBook ? { name: book.name, date: book.date, invented: book.invented } : null,
      remarks: remarksOf(list.list, jobs.value, book),
    },
  }
}

function readRequest({
  text,
  stockText = '',
  columns,
  stockColumns,
}: CutListRequest):
  | { readonly ok: true; readonly list: CutList }
  | { readonly ok: false; readonly faults: readonly RowFault[] } {
  const list = readCutList(text, { source: 'list', ...(columns === undefined ? {} : { columns }) })
  const stock =
    stockText.trim() === ''
      ? null
      : readCutList(stockText, {
          source: 'stock',
          ...(stockColumns === undefined ? {} : { columns: stockColumns }),
        })
  const faults = [...(list.ok ? [] : list.error), ...(stock === null || stock.ok ? [] : stock.error)]
  if (!list.ok || (stock !== null && !stock.ok)) return { ok: false, faults }
  const stray = stock?.value.pieces[0]
  if (stray !== undefined) {
    const message = 'a piece stands among the stock'
    const place = { source: 'stock' as const, row: stray.row, line: stray.line, column: 0, heading: '' }
    return { ok: false, faults: [{ ...place, message, fix: 'put it in the list of pieces' }] }
  }
  return {
    ok: true,
    list: {
      pieces: list.value.pieces,
      stock: [...list.value.stock, ...(stock?.value.stock ?? [])],
      ignored: [...list.value.ignored, ...(stock?.value.ignored ?? [])],
    },
  }
}

function remarksOf(
  { ignored }: CutList,
  jobs: readonly Pick<ListPlan, 'product' | 'stockFrom' | 'lengthUnit'>[],
  book: PriceBook,
): CutListResult['remarks'] {
  const unpriced = jobs.filter(({ lengthUnit }) => lengthUnit !== null)
  const named = (some: typeof jobs) => some.map(({ product }) => product).filter((name) => name !== '')
  const fromBook = jobs.filter(({ stockFrom }) => stockFrom === 'price book')
  return [
    ...(ignored.length === 0 ? [] : [`Columns that were not read: ${[...new Set(ignored)].join(', ')}.`]),
    ...(fromBook.length === 0
      ? []
      : [
          `Stock lengths and prices of ${named(fromBook).join(', ')} are the price book’s: the list gives none.`,
          ...(hasSeveralSuppliers(book)
            ? ['Each length counts at the least price of any supplier; deliveries are not counted.']
            : []),
        ]),
    ...(unpriced.length === 0
      ? []
      : [
          `${named(unpriced).length === 0 ? 'The stock' : `Stock of ${named(unpriced).join(', ')}`} has no prices, so the least length is bought.`,
        ]),
  ]
}
