export { type LedgerFastener, type LedgerSheathing, ledgerSpacing } from './ledger-spacing.ts'
export { lookUpRow, type TableLookup, type TableQuery } from './table-lookup.ts'
