import type { Estimate } from '../../estimate-types.ts'
import { houseHoldDowns } from '../../frame/index.ts'
import { printLength } from '../../units/index.ts'

/** "J1, 1'-3 1/4" from the left end of the ledger to its middle; J13, …"; an end joist laps the ledger and is at its end. */
export function houseHoldDownWords(source: Pick<Estimate, 'frame'>): string {
  return houseHoldDowns(source.frame)
    .map(({ joist, fromEnd, end }, i) => {
      const [from, middle] = fromEnd > 0 ? [`${printLength(fromEnd)} from`, ' to its middle'] : ['at', '']
      return `${joist.mark}, ${from} the ${end} end${i === 0 ? ` of its wall’s ledger${middle}` : ''}`
    })
    .join('; ')
}
