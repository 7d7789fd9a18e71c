import { LEDGER_SPACING } from '../data/index.ts'
import { type Psf, type Ticks, toFeet } from '../units/index.ts'
import { lookUpRow, type TableLookup } from './table-lookup.ts'

export type LedgerFastener = 'lag' | 'bolt'
export type LedgerSheathing = 'up to 1/2 in' | 'up to 1 in'

/**
 * Greatest spacing of 1/2 in fasteners of a ledger to a band joist, in whole inches on centre.
 * IRC 2021 Table R507.9.1.3(1), which includes a dead load of 10 psf; load and span are taken up to the next entry.
 * A lag screw through more than 1/2 in of sheathing has no row: the answer is "outside".
 * @param joistSpan clear span of the joists that hang from the ledger
 * @param load live or ground snow load, whichever is greater
 */
export function ledgerSpacing(
  joistSpan: Ticks,
  fastener: LedgerFastener,
  sheathing: LedgerSheathing,
  load: Psf,
): TableLookup {
  const row = `1/2 in ${fastener === 'lag' ? 'lag screw' : 'bolt'}, sheathing ${sheathing}`
  return lookUpRow(LEDGER_SPACING, { at: [load], row, column: toFeet(joistSpan) })
}
