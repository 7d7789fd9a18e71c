import { costJob, heldAgainst, isBegun } from '../../core/costing/index.ts'
import type { JointReason } from '../../core/cutting/index.ts'
import type { Job, Wish } from '../../core/job/index.ts'
import {
  boardsTable,
  costingTable,
  costTable,
  cuttingTable,
  hardwareTable,
  hoursTable,
  orderTable,
  type PaperTable,
  purchasesTable,
  summaryTable,
  suppliersTable,
  workedTable,
} from '../../core/papers/index.ts'
import { type PriceBook, topicLabel } from '../../core/pricing/index.ts'
import { splitWords } from '../../core/split-words.ts'
import { type Cents, cents, printLength, printMoney } from '../../core/units/index.ts'
import type { WishPrice } from '../../core/wish-price.ts'
import type { PricedEstimate } from '../app/workbook.ts'
import { checksReport } from './checks-report.ts'
import type { PricesFile } from './inputs.ts'
import { printable, textTable, wrap } from './text-table.ts'

export const CAUTIONS = [
  'Local code and the building official govern; frost depth, snow and soil are local facts.',
  'Have utilities marked before digging. What lies outside the tables needs a licensed professional.',
  '',
].join('\n')

/** Everything about an estimate that a builder reads, as plain text. */
export function estimateReport(
  estimate: PricedEstimate,
  used: PricesFile,
  joints: readonly JointReason[],
  wishes: ReadonlyMap<Wish, WishPrice>,
): string {
  const sections = [
    headOf(estimate.job, used),
    textTable(summaryTable(estimate), false),
    textTable(orderTable(estimate)),
    textTable(hardwareTable(estimate, used.book.goods)),
    suppliers(estimate),
    textTable(cuttingTable(estimate)),
    proofs(estimate),
    wishLines(wishes),
    jointReasons(joints),
    checksReport(estimate.checks),
    textTable(hoursTable(estimate)),
    textTable(costTable(estimate)),
    costingReport(estimate, used.book),
    idleLines(estimate),
    textTable(leftOutTable(estimate)),
    nearMisses(estimate),
    CAUTIONS,
  ]
  return sections.filter((section) => section !== '').join('\n')
}

/** Name and size of a job, and the prices that are used with their date. */
export function headOf(job: Job, used: PricesFile): string {
  return `${sizeOf(job)}${pricesHead(used)}`
}

/** The prices that are used, with their date and whence they come. */
export function pricesHead({ book, source, path }: PricesFile): string {
  const invented = book.invented
    ? '\nThese prices are invented: put in your yard’s before anyone relies on a figure.'
    : ''
  const whence = path === null ? '' : ` (${path}, named by ${source})`
  return `Prices: ${printable(`${book.name}, ${book.date}, ${book.supplier}${whence}`)}${invented}\n`
}

export function sizeOf({ name, size, site, builder }: Job): string {
  const title = name === '' ? 'Deck' : printable(name)
  const stands = site.attachment === 'ledger' ? 'on a ledger' : 'freestanding'
  const by = builder === 'owner' ? 'its owner' : 'a contractor'
  return `${title}: ${printLength(size.width)} wide, ${printLength(size.depth)} deep, ${printLength(size.height)} high, ${stands}, built by ${by}\n`
}

/** From whom it is bought, where the price book knows several. */
function suppliers({ split }: PricedEstimate): string {
  if (split === null) return ''
  const lines = splitWords(split).flatMap((words) => wrap(printable(words), 106))
  return `${textTable(suppliersTable(split))}${lines.map((line) => `  ${line}\n`).join('')}`
}

function proofs({ plans }: PricedEstimate): string {
  const lines = plans.flatMap(({ product, plan }) => wrap(`${product.size}: ${plan.why}`, 106))
  return `How good the cutting plan is\n${lines.map((line) => `  ${line}\n`).join('')}`
}

function wishLines(wishes: ReadonlyMap<Wish, WishPrice>): string {
  const lines = [...wishes].flatMap(([{ label }, price]) => wrap(`${label}: ${wishCost(price)}`, 106))
  return lines.length === 0
    ? ''
    : `What your wishes cost, each against the same job without it\n${lines.map((line) => `  ${line}\n`).join('')}`
}

function wishCost(price: WishPrice): string {
  if (!price.ok) return price.message
  const { lumber, cost, within } = price
  const more = (amount: Cents) =>
    amount === 0 ? 'nothing more' : `${printMoney(cents(Math.abs(amount)))} ${amount < 0 ? 'less' : 'more'}`
  const doubt = within === 0 ? '' : `, to within ${printMoney(within)}`
  return `${more(lumber)} for boards and joints${doubt}; ${more(cost)} in the whole cost.`
}

function jointReasons(joints: readonly JointReason[]): string {
  const lines = joints.flatMap(({ message }) => wrap(message, 106))
  return lines.length === 0
    ? ''
    : `Why the frame is jointed where it is\n${lines.map((line) => `  ${line}\n`).join('')}`
}

function nearMisses({ nearMisses: missed }: PricedEstimate): string {
  if (missed.length === 0) return ''
  const lines = missed.flatMap(({ message }) => wrap(message, 106))
  return `Just over a stock length\n${lines.map((line) => `  ${line}\n`).join('')}`
}

/** What the job took so far beside its estimate; nothing where it is not begun. */
function costingReport(estimate: PricedEstimate, book: PriceBook): string {
  const { job } = estimate
  if (!isBegun(job)) return ''
  const costing = costJob(job, heldAgainst(estimate, book))
  return [
    costingTable(costing),
    boardsTable(costing),
    purchasesTable(job, costing),
    workedTable(job, costing),
  ]
    .filter(({ rows }) => rows.length > 0)
    .map((table) => textTable(table))
    .join('\n')
}

/** What the job states of lines by hand and counts nowhere. */
function idleLines({ pricing: { idle } }: PricedEstimate): string {
  if (idle.length === 0) return ''
  const lines = idle.flatMap(({ message, fix }) => wrap(`${message} ${fix}`, 106))
  return `Stated by hand, and counted nowhere\n${lines.map((line) => `  ${line}\n`).join('')}`
}

function leftOutTable({ scope }: PricedEstimate): PaperTable {
  return {
    id: 'scope',
    title: 'Is it in the price?',
    columns: [
      { key: 'topic', label: 'Topic', align: 'left' },
      { key: 'amount', label: 'Amount', align: 'right' },
      { key: 'message', label: '', align: 'left' },
    ],
    rows: scope.map(({ topic, state, amount, message }) => ({
      topic: topicLabel(topic),
      amount: state === 'priced' ? printMoney(amount) : 'not included',
      message,
    })),
  }
}
