export { cutWords } from './cutting/cut-words.ts'
export { boardDrawing } from './drawings/board-drawings.ts'
export { footingLayout } from './drawings/footing-layout.ts'
export { deckingPlan, framingPlan } from './drawings/framing-plan.ts'
export { strokeWithin } from './drawings/joint-stroke.ts'
export { solidView, type Turn } from './drawings/solid-view.ts'
export { deckElevation, deckSection } from './drawings/upright-views.ts'
export { fingerprint } from './fingerprint.ts'
export { offsetText } from './offset-text.ts'
export { heldOf } from './order/held-lines.ts'
export type * from './page-types.ts'
export { layOutPages } from './pages/lay-out.ts'
export { PAPERS } from './pages/paper.ts'
export { changeLines } from './quote/change-lines.ts'
export { type ChangeStep, changeSteps, changeWords } from './quote/change-steps.ts'
export { DEPOSIT_LIMITS } from './quote/deposit-limits.ts'
export { quoteWarnings } from './quote/quote-warnings.ts'
export type * from './sheet-types.ts'
export { makeSheets, SHEET_IDS, SHEET_TITLES, USUAL_SHEETS } from './sheets/index.ts'
export { orderMessages } from './sheets/order-sheet.ts'
export { PERMIT_SHEETS, permitGaps, permitScaleGaps } from './sheets/permit-list.ts'
export { UPRIGHT_LAYERS } from './sheets/section-sheet.ts'
export { SHEET_SETS } from './sheets/sets.ts'
export {
  aboutOf,
  type Firm,
  type Logo,
  NO_FIRM,
  NO_QUOTE,
  type PaperSource,
  type PricedOption,
  type QuoteChange,
  type QuoteContext,
} from './source.ts'
export { calendarTable } from './tables/calendar-table.ts'
export { checksTable } from './tables/checks-table.ts'
export { compareTable } from './tables/compare-table.ts'
export { costTable } from './tables/cost-table.ts'
export { boardsTable, costingTable, purchasesTable, workedTable } from './tables/costing-tables.ts'
export {
  cutListBoundTable,
  cutListOrderTable,
  cutListPiecesTable,
  cutListRows,
  cutListSheetTable,
  listCost,
} from './tables/cut-list-tables.ts'
export { cuttingTable } from './tables/cutting-table.ts'
export {
  concreteTable,
  diggingTable,
  groundVolumesTable,
  measuredPostsTable,
  postBoardsTable,
  tubesTable,
} from './tables/ground-concrete.ts'
export { footingScheduleTable } from './tables/ground-footings.ts'
export { foundTable } from './tables/ground-found.ts'
export {
  layoutChecksTable,
  layoutCornersTable,
  layoutHolesTable,
  layoutStringsTable,
} from './tables/ground-layout.ts'
export { hardwareTable } from './tables/hardware-table.ts'
export { hoursTable } from './tables/hours-table.ts'
export { jointGoods } from './tables/joint-goods.ts'
export { memberSchedule } from './tables/member-schedule.ts'
export { orderNote } from './tables/order-notes.ts'
export { orderTable } from './tables/order-table.ts'
export { restBoards, restCuttingTable, restPurchaseTable } from './tables/rest-tables.ts'
export { summaryTable } from './tables/summary-table.ts'
export { suppliersTable } from './tables/suppliers-table.ts'
export { type Face, fontRuns } from './type/font-runs.ts'
export { widthOf } from './type/measure.ts'
export { runsFromRight } from './type/visual-order.ts'
export type * from './types.ts'
