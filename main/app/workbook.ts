export { makeWorkbook, type PricedEstimate } from '../exports/workbook/index.ts'
