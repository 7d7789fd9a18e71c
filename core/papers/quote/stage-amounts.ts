import { type Cents, cents, share, shareOf, sumCents } from '../../units/index.ts'
import type { Firm } from '../source.ts'

/** The stages' sums come to the price to the cent: the last one takes what rounding left. */
export function stageAmounts(stages: Firm['stages'], price: Cents): readonly Cents[] {
  const sums = stages.slice(0, -1).map(({ share: part }) => shareOf(price, share(part)))
  return [...sums, cents(price - sumCents(sums))]
}
