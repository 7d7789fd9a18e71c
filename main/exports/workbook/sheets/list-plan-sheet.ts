import type { CutListResult, ListPlan } from '../../../../core/cut-list/index.ts'
import { cents, toFeet } from '../../../../core/units/index.ts'
import { dollars, empty, formula, number, text } from '../cell.ts'
import { type Sheet, SheetBuilder } from '../sheet.ts'
import type { ListLengths } from './list-cutting-sheet.ts'
import { nameOf } from './list-order-sheet.ts'

/** How good the plan of each product is: what it costs, what no order can go below, and how much of the boards is used. */
export function listPlanSheet(
  { plans, infeasible, remarks, book }: CutListResult,
  sums: ReadonlyMap<string, string>,
  lengths: ReadonlyMap<string, ListLengths>,
): Sheet {
  const sheet = new SheetBuilder('Plan', [36, 10, 13, 13, 13, 11, 60], true)
  sheet.title('Cut list: the plan')
  if (book !== null) {
    const invented = book.invented ? ' They are invented: give your yard’s before you rely on a figure.' : ''
    sheet.note(`Prices of ${book.name}, ${book.date}.${invented}`)
  }
  for (const remark of remarks) sheet.note(remark)
  for (const { message, help } of infeasible) sheet.note(`${message} ${help}`)
  sheet.gap()
  sheet.header(['Product', '>Boards', '>Cost', '>No less than', '>Gap', '>Used', 'Proof'])
  for (const each of plans) writePlan(sheet, each, sums, lengths)
  if (plans.some(({ lengthUnit }) => lengthUnit !== null))
    sheet.note('Where stock has no prices, cost, bound and gap are feet of board.')
  return sheet.done()
}

function writePlan(
  sheet: SheetBuilder,
  each: ListPlan,
  sums: ReadonlyMap<string, string>,
  lengths: ReadonlyMap<string, ListLengths>,
): void {
  const { plan } = each
  const row = sheet.next
  const format = each.lengthUnit === null ? 'money' : 'decimal'
  const sum = sums.get(plan.jobId)
  const at = lengths.get(plan.jobId)
  const board = plan.boards.reduce((all, { length }) => all + length, 0)
  sheet.row([
    text(nameOf(each), { wrap: true }),
    number(plan.boards.length, 'count'),
    sum === undefined ? number(0, format) : formula(sum, amountOf(each, plan.cost), format),
    number(amountOf(each, plan.bound), format),
    formula(`C${row}-D${row}`, amountOf(each, plan.gap), format),
    at === undefined ? empty : formula(`${at.pieces}/${at.boards}`, plan.waste.used / board, 'share'),
    text(plan.why, { wrap: true, soft: true }),
  ])
}

function amountOf({ lengthUnit }: ListPlan, amount: number): number {
  return lengthUnit === null ? dollars(cents(amount)) : toFeet(lengthUnit) * amount
}
