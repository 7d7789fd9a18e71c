import { planOnce } from './cost-design.ts'
import {
  type CutJob,
  type CutPlan,
  type DayState,
  type LpEngine,
  type Replan,
  replan,
  type Watch,
  watchPart,
} from './cutting/index.ts'
import { productsOfDay, readDay } from './day-statement.ts'
import { design } from './design.ts'
import { type Fault, isObject, type JsonValue } from './job/index.ts'
import { cutJobs, hasSeveralSuppliers, type OffcutsOnHand, type PriceBook } from './pricing/index.ts'
import { costDesign } from './split-order.ts'
import { fail, ok, type Result } from './units/index.ts'

/** What is asked on the day: one product of a job, and how far it has come. */
export interface RestRequest {
  /** id of the product's cutting plan */
  readonly planId: string
  readonly day: DayState
}

/** One product of a job with its plan and the rest of it. */
export interface ProductRest {
  readonly planId: string
  readonly label: string
  readonly job: CutJob
  readonly plan: CutPlan
  readonly replan: Replan
}

/** The rest of a product, or sentences that say what stands in the way. */
export type RestAnswer =
  | ({ readonly ok: true } & ProductRest)
  | { readonly ok: false; readonly reasons: readonly string[] }

type Begun = Omit<ProductRest, 'replan'>

/** What stands in the way of a new plan, and in which field of the day; '' for none. */
interface Reason {
  readonly where: string
  readonly sentence: string
}

/**
 * Plans the rest of one product of a job. The plan that was begun is made again from the job, the prices and the
 * rack, and comes out the same.
 */
export function planTheRest(
  statement: unknown,
  book: PriceBook,
  engine: LpEngine,
  { planId, day }: RestRequest,
  rack: readonly OffcutsOnHand[] = [],
  watch: Watch = {},
): RestAnswer {
  const begun = planOf(statement, book, engine, planId, rack)
  if (!begun.ok) return { ok: false, reasons: begun.error }
  const rest = restOf(begun.value, day, engine, watch)
  return rest.ok
    ? { ok: true, ...rest.value }
    : {
        ok: false,
        reasons: rest.error.map(({ where, sentence }) => (where === '' ? sentence : `${where}: ${sentence}`)),
      }
}

/** Plans the rest of every product that a day's file names; faults name their place in it. */
export function planTheDay(
  statement: unknown,
  book: PriceBook,
  engine: LpEngine,
  stated: JsonValue,
  rack: readonly OffcutsOnHand[] = [],
): Result<readonly ProductRest[], readonly Fault[]> {
  const products = productsOfDay(stated)
  if (!products.ok) return products
  const rests: ProductRest[] = []
  const faults: Fault[] = []
  for (const product of products.value) {
    const refuse = (reasons: readonly string[]): void => {
      for (const message of reasons) faults.push({ path: product, message, fix: '' })
    }
    const begun = planOf(statement, book, engine, product, rack)
    if (!begun.ok) {
      refuse(begun.error)
      continue
    }
    const { job, plan } = begun.value
    const day = readDay(isObject(stated) ? (stated[product] ?? null) : null, product, job, plan)
    if (!day.ok) {
      faults.push(...day.error)
      continue
    }
    const rest = restOf(begun.value, day.value, engine)
    if (rest.ok) rests.push(rest.value)
    else {
      for (const { where, sentence } of rest.error)
        faults.push({ path: where === '' ? product : `${product}.${where}`, message: sentence, fix: '' })
    }
  }
  return faults.length > 0 ? fail(faults) : ok(rests)
}

/** The plan of one product, by its id or by its size where only one has that size. */
function planOf(
  statement: unknown,
  book: PriceBook,
  engine: LpEngine,
  name: string,
  rack: readonly OffcutsOnHand[],
): Result<Begun, readonly string[]> {
  const designed = design(statement)
  if (!designed.ok) return fail(designed.error.map(({ path, message, fix }) => `${path}: ${message}; ${fix}`))
  // of several suppliers those of the order that was begun
  const bought = hasSeveralSuppliers(book) ? costDesign(designed.value, book, engine, { rack }).book : book
  const { classes } = cutJobs(designed.value, bought, rack)
  const ofSize = classes.filter(({ product }) => product.size === name)
  const found =
    classes.find(({ cutJob }) => cutJob.id === name) ?? (ofSize.length === 1 ? ofSize[0] : undefined)
  if (found === undefined) {
    const known = classes.map(({ cutJob }) => `"${cutJob.id}"`).join(', ')
    return fail([`The job has no cutting plan of that name. It has ${known}.`])
  }
  const job = found.cutJob
  const planned = planOnce(job, engine)
  if (!planned.ok) return fail([`${planned.error.message} ${planned.error.help}`])
  return ok({ planId: job.id, label: job.label, job, plan: planned.value })
}

function restOf(
  begun: Begun,
  day: DayState,
  engine: LpEngine,
  watch: Watch = {},
): Result<ProductRest, readonly Reason[]> {
  const part = { subject: `The rest of ${begun.label}`, part: 1, parts: 1, lengthUnit: null }
  const again = replan(begun.job, begun.plan, day, engine, watchPart(watch, part))
  if (again.ok) return ok({ ...begun, replan: again.value })
  if (again.error.kind === 'day') {
    return fail(
      again.error.faults.map(({ where, message, fix }) => ({ where, sentence: `${message} ${fix}` })),
    )
  }
  const { message, help } = again.error.infeasible
  return fail([{ where: '', sentence: `${message} ${help}` }])
}
