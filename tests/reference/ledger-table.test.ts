import { describe, expect, it } from 'vitest'
import { LEDGER_SPACING } from '../../core/data/index.ts'
import {
  calculatedLedgerSpacing,
  impliedFastenerLoad,
  type LedgerFastener,
  type LedgerSheathing,
} from '../../core/rules/index.ts'

const FASTENERS: readonly (readonly [LedgerFastener, LedgerSheathing])[] = [
  ['lag', 'up to 1/2 in'],
  ['bolt', 'up to 1/2 in'],
  ['bolt', 'up to 1 in'],
]

describe('IRC 2021 Table R507.9.1.3(1): the load that its cells imply for one fastener', () => {
  for (const [fastener, sheathing] of FASTENERS) {
    it(`${fastener}, sheathing ${sheathing}: the least of the 60 psf page`, () => {
      const page = LEDGER_SPACING.blocks.find((block) => block.at[0] === 60)
      const row =
        page?.rows[`1/2 in ${fastener === 'lag' ? 'lag screw' : 'bolt'}, sheathing ${sheathing}`] ?? []
      // cells of 36 in are at the cap and imply less than the fastener carries
      const implied = row.flatMap((spacing, i) =>
        spacing === null || spacing >= 36
          ? []
          : [(70 * Number(LEDGER_SPACING.columnAxis.entries[i]) * spacing) / 24],
      )
      expect(Math.min(...implied)).toBe(impliedFastenerLoad(fastener, sheathing))
    })

    it(`${fastener}, sheathing ${sheathing}: spacing by that load is never wider than the table`, () => {
      for (const block of LEDGER_SPACING.blocks) {
        const row =
          block.rows[`1/2 in ${fastener === 'lag' ? 'lag screw' : 'bolt'}, sheathing ${sheathing}`] ?? []
        for (const [i, tabled] of row.entries()) {
          const line = ((Number(block.at[0]) + 10) * Number(LEDGER_SPACING.columnAxis.entries[i])) / 24
          expect(
            calculatedLedgerSpacing(line, impliedFastenerLoad(fastener, sheathing) ?? 0),
          ).toBeLessThanOrEqual(tabled ?? 0)
        }
      }
    })
  }
})
