export { makeCutListWorkbook, makeWorkbook, type PricedEstimate } from '../exports/workbook/index.ts'
