import type { Check, CheckStatus } from '../../checks/index.ts'
import type { Estimate } from '../../estimate-types.ts'
import { productName } from '../../pricing/index.ts'
import { printLength, printMoney, sumCents } from '../../units/index.ts'
import type { PaperTable } from '../types.ts'
import { hours, tableOf } from './table.ts'

/** One page of answers: size, money, order and its proof, fit, hours, checks, prices used, what is not included. */
export function summaryTable(estimate: Estimate): PaperTable {
  const { job, plans, scope, checks, fit } = estimate
  const rows = [
    [
      'Deck',
      `${printLength(job.size.width)} × ${printLength(job.size.depth)}, ${printLength(job.size.height)} high`,
    ],
    ...moneyRows(estimate),
    ['Lumber, boards and joints', printMoney(sumCents(plans.map(({ plan }) => plan.cost)))],
    ...plans.map(({ product, plan }) => [productName(product), proofOf(plan)]),
    ['Fit', fit.message],
    ['Checks', countStatuses(checks)],
    [
      'Not included',
      scope
        .filter(({ state }) => state === 'not included')
        .map(({ topic }) => topic)
        .join(', '),
    ],
  ]
  return tableOf(
    'summary',
    'Summary',
    [
      ['what', 'What', 'left'],
      ['value', 'Value', 'left'],
    ],
    rows.map(([what, value]) => ({ what: what ?? '', value: value ?? '' })),
  )
}

function moneyRows({ pricing }: Estimate): readonly string[][] {
  if (pricing === null) return [['Cost', 'Not known: something has no plan or no price']]
  const { totals } = pricing
  const price = totals.method === 'none' ? [] : [['Price', printMoney(totals.priceWithTax)]]
  return [
    ['Cost', printMoney(totals.cost)],
    ...price,
    [
      `${totals.perSquareFootOf === 'price' ? 'Price' : 'Cost'} per square foot`,
      printMoney(totals.perSquareFoot),
    ],
    [
      'Hours',
      `${hours(totals.crewHours)} clock hours of the crew, ${hours(totals.workerHours)} worker hours`,
    ],
    ['Prices', `${pricing.bookName}, ${pricing.bookDate}`],
  ]
}

function proofOf(plan: Estimate['plans'][number]['plan']): string {
  const boards = `${plan.boards.length} ${plan.boards.length === 1 ? 'board' : 'boards'}`
  const proof =
    plan.status === 'proven optimal'
      ? plan.status
      : `${plan.status}, at most ${printMoney(plan.gap)} above the least`
  return `${boards}, ${printMoney(plan.cost)}: ${proof}`
}

function countStatuses(checks: readonly Check[]): string {
  const statuses: readonly CheckStatus[] = ['passes', 'near', 'fails', 'calculated only', 'outside scope']
  return statuses
    .map((status) => ({ status, count: checks.filter((check) => check.status === status).length }))
    .filter(({ count }) => count > 0)
    .map(({ status, count }) => `${count} ${status}`)
    .join(', ')
}
