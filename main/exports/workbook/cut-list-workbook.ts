import type { CutListResult } from '../../../core/cut-list/index.ts'
import { packedAlike } from './same-bytes.ts'
import { listCuttingSheet } from './sheets/list-cutting-sheet.ts'
import { listOrderSheet } from './sheets/list-order-sheet.ts'
import { listPlanSheet } from './sheets/list-plan-sheet.ts'
import { writeWorkbook } from './write-workbook.ts'

/** A planned cut list as a workbook with live formulas: the plan, the order, the cutting sheet; same list, same bytes. */
export async function makeCutListWorkbook(result: CutListResult): Promise<Uint8Array> {
  const order = listOrderSheet(result)
  const cutting = listCuttingSheet(result)
  const sheets = [listPlanSheet(result, order.sums, cutting.lengths), order.sheet, cutting.sheet]
  const foot = result.book === null ? 'Cut list' : `Cut list · ${result.book.name}, ${result.book.date}`
  return packedAlike(await writeWorkbook(sheets, { title: 'Cut list', foot }))
}
