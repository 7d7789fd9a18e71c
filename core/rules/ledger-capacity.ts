import type { LedgerFastener, LedgerSheathing } from './ledger-spacing.ts'

/**
 * Load that one ledger fastener carries, lb: the least that any cell of the 60 psf page of IRC 2021 Table
 * R507.9.1.3(1) implies, (60 + 10) × half the joist span × spacing. Not a published value.
 * Null for a lag screw through more than 1/2 in of sheathing, which the table does not know.
 */
export function impliedFastenerLoad(fastener: LedgerFastener, sheathing: LedgerSheathing): number | null {
  if (sheathing === 'up to 1/2 in') return fastener === 'lag' ? 367.5 : 682.5
  return fastener === 'bolt' ? 577.5 : null
}

/** Greatest spacing allowed at all, in: the table's cap. */
const WIDEST = 36

/**
 * Spacing of ledger fasteners by that load, whole inches, rounded down, 36 at most.
 * @param line load of the deck on the ledger, lb per in
 */
export function calculatedLedgerSpacing(line: number, perFastener: number): number {
  return Math.min(WIDEST, Math.floor(perFastener / line + 1e-9))
}
