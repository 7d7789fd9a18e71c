export type * from './types.ts'
export type { CodeTable, SafeSide, TableAxis, TableBlock, TableEntry } from './code-table.ts'
export { LEDGER_SPACING } from './irc-2021/ledger-spacing.ts'
