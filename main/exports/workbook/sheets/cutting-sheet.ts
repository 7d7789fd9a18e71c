import { type CutPlan, stretchOf } from '../../../../core/cutting/index.ts'
import type { Planned } from '../../../../core/estimate-types.ts'
import { cutWords } from '../../../../core/papers/index.ts'
import { productName } from '../../../../core/pricing/index.ts'
import { printLength, printMoney, toFeet } from '../../../../core/units/index.ts'
import { empty, formula, inchesOf, number, text } from '../cell.ts'
import { type Sheet, SheetBuilder } from '../sheet.ts'
import type { Source } from '../source.ts'

/** Which piece comes from which board, in the order it is cut, and how good the plan is proved to be. */
export function cuttingSheet({ estimate }: Source): Sheet {
  const sheet = new SheetBuilder('Cutting plan', [8, 9, 82, 12, 12, 12], true)
  sheet.title('Cutting plan')
  sheet.note(
    `Cut from the left end in the order given. Kerf ${printLength(estimate.job.cutting.kerf)}, end trim ` +
      `${printLength(estimate.job.cutting.endTrim)}. Lengths are as cut; to what a piece is cut in place stands beside them.`,
  )
  sheet.gap()
  sheet.header([
    'Board',
    'Length',
    'Pieces, mark and length',
    '>In pieces, in',
    '>Left over, in',
    '>Left over',
  ])
  for (const planned of estimate.plans) writePlan(sheet, planned)
  return sheet.done()
}

function writePlan(sheet: SheetBuilder, { product, plan }: Planned): void {
  sheet.group(productName(product))
  sheet.row([text(proofOf(plan), { soft: true })])
  const first = sheet.next
  for (const board of plan.boards) {
    const used = stretchOf(board)
    sheet.row([
      text(`${board.number}`),
      text(`${toFeet(board.length)} ft`),
      text(board.cuts.map(cutWords).join('  ·  '), { wrap: true }),
      number(inchesOf(used), 'inches'),
      number(inchesOf(board.offcut), 'inches'),
      text(board.offcut === 0 ? '' : printLength(board.offcut), { right: true }),
    ])
  }
  const used = plan.boards.reduce((sum, board) => sum + stretchOf(board), 0)
  const left = plan.boards.reduce((sum, board) => sum + board.offcut, 0)
  sheet.row([
    empty,
    empty,
    text(jointsOf(plan), { soft: true, rule: 'thin', wrap: true }),
    formula(`SUM(D${first}:D${sheet.next - 1})`, inchesOf(used), 'inches', { bold: true }),
    formula(`SUM(E${first}:E${sheet.next - 1})`, inchesOf(left), 'inches', { bold: true }),
  ])
}

function proofOf(plan: CutPlan): string {
  const count = plan.boards.length
  const boards = `${count} ${count === 1 ? 'board' : 'boards'}, ${printMoney(plan.stockCost)}`
  const joints = plan.joints.length === 0 ? '' : ` and joints ${printMoney(plan.jointCost)}`
  const proof =
    plan.status === 'proven optimal'
      ? 'proven: no order that meets the rules costs less'
      : `no order can cost less than ${printMoney(plan.bound)}: this one is within ${printMoney(plan.gap)}`
  return `${boards}${joints}; ${plan.status === 'stopped' ? 'stopped before its end; ' : ''}${proof}.`
}

function jointsOf(plan: CutPlan): string {
  if (plan.joints.length === 0) return 'No joints.'
  const places = new Map<string, number>()
  for (const joint of plan.joints) {
    const key = `${joint.label} (${printLength(joint.at)} from the left end)`
    places.set(key, (places.get(key) ?? 0) + 1)
  }
  const list = [...places].map(([place, count]) => (count === 1 ? place : `${place} × ${count}`))
  return `Joints: ${list.join('; ')}.`
}
