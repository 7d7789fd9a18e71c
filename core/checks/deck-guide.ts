import type { TableLookup } from '../rules/index.ts'
import type { CheckContext } from './context.ts'
import { percent } from './judge.ts'
import type { Finding } from './types.ts'

/** Load of the tables of AWC DCA 6, psf: live or snow. */
const GUIDE_LOAD = 40

/** Whether the AWC deck guide speaks of this deck at all: 40 psf live or snow, 10 psf dead. */
export function guideApplies(context: CheckContext): boolean {
  return context.load <= GUIDE_LOAD && context.noTables === null
}

/** The guide's answer, to be shown beside the code's and to decide nothing. */
export function beside(
  context: CheckContext,
  lookup: TableLookup,
  finding: (lookup: TableLookup) => Finding | null,
): readonly Finding[] {
  const found = guideApplies(context) ? finding(lookup) : null
  return found === null ? [] : [found]
}

/** What to say where the guide is stricter than the deck; empty where it is not. */
export function guideCaution(findings: readonly Finding[]): string {
  const stricter = findings.find((one) => one.ratio !== null && one.ratio > 1)
  if (stricter?.ratio == null) return ''
  const share = stricter.ratio < 10 ? ` (${percent(stricter.ratio)})` : ''
  return `${stricter.document} ${stricter.clause} does not allow it${share}; the code's own table is what governs.`
}
