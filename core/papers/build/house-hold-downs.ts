import type { Estimate } from '../../estimate-types.ts'
import { houseHoldDowns } from '../../frame/index.ts'
import { printLength } from '../../units/index.ts'

/** "J1, 1'-3 1/4" from the left end of the ledger; J13, …": to the joist's middle. */
export function houseHoldDownWords(source: Pick<Estimate, 'frame'>): string {
  return houseHoldDowns(source.frame)
    .map(
      ({ joist, fromEnd, end }, i) =>
        `${joist.mark}, ${printLength(fromEnd)} from the ${end} end${i === 0 ? ' of its wall’s ledger to its middle' : ''}`,
    )
    .join('; ')
}
