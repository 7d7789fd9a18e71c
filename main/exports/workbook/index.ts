import { isBegun } from '../../../core/costing/index.ts'
import type { TubePlan } from '../../../core/ground/index.ts'
import { makeSheets, NO_FIRM, type SheetId } from '../../../core/papers/index.ts'
import type { PriceBook } from '../../../core/pricing/index.ts'
import { packedAlike } from './same-bytes.ts'
import type { Sheet } from './sheet.ts'
import { checksSheet } from './sheets/checks-sheet.ts'
import { costSheet } from './sheets/cost-sheet.ts'
import { costingSheet } from './sheets/costing-sheet.ts'
import { cuttingSheet } from './sheets/cutting-sheet.ts'
import { groundSheet } from './sheets/ground-sheet.ts'
import { hardwareSheet } from './sheets/hardware-sheet.ts'
import { hoursSheet } from './sheets/hours-sheet.ts'
import { membersSheet } from './sheets/members-sheet.ts'
import { orderSheet } from './sheets/order-sheet.ts'
import { summarySheet } from './sheets/summary-sheet.ts'
import { tablesSheet } from './sheets/tables-sheet.ts'
import type { PricedEstimate, Source } from './source.ts'
import { writeWorkbook } from './write-workbook.ts'

export { makeCutListWorkbook } from './cut-list-workbook.ts'
export type { PricedEstimate } from './source.ts'

/**
 * An estimate as a workbook with live formulas; the same estimate gives the same bytes.
 * @param tubes which bought piece each form tube is cut from, where that was planned
 */
export async function makeWorkbook(
  estimate: PricedEstimate,
  book: PriceBook,
  tubes: TubePlan | null = null,
): Promise<Uint8Array> {
  const source = { estimate, book }
  const hardware = hardwareSheet(source)
  const order = orderSheet(source, hardware.bought)
  const hours = hoursSheet(source)
  const places = {
    quantity: new Map([...order.places.quantity, ...hours.places.quantity]),
    price: new Map([...order.places.price, ...hours.places.price]),
  }
  const sheets = [
    summarySheet(source),
    order.sheet,
    cuttingSheet(source),
    membersSheet(source),
    hardware.sheet,
    groundSheet(source, tubes),
    hours.sheet,
    costSheet(source, places),
    ...(isBegun(estimate.job) ? [costingSheet(source)] : []),
    checksSheet(source),
    ...printedTables(source),
  ]
  const foot = `${estimate.job.name} · ${book.name}, ${book.date}`
  return packedAlike(await writeWorkbook(sheets, { title: estimate.job.name, foot }))
}

/** Tables that only the printed sheets have, in the order in which they are printed. */
const PRINTED: readonly (readonly [SheetId, string])[] = [
  ['marking', 'Joist marks'],
  ['decking', 'Decking'],
  ['stairs', 'Stairs and guard'],
  ['cutting', 'Pieces by place'],
]

function printedTables(source: Source): readonly Sheet[] {
  const ids = PRINTED.map(([id]) => id)
  const papers = makeSheets({ ...source, firm: NO_FIRM, date: '', revision: '' }, ids)
  return PRINTED.flatMap(
    ([id, name]) =>
      tablesSheet(
        name,
        papers.find((paper) => paper.id === id),
      ) ?? [],
  )
}
