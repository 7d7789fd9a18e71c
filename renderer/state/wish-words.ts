import { type Cents, cents, printMoney } from '../../core/units/index.ts'
import type { WishPrice } from '../../core/wish-price.ts'
import { printDifference } from './print.ts'

/** What a wish costs, in one line. */
export function wishWords(price: WishPrice): string {
  if (!price.ok) return price.message
  const { lumber, cost, within } = price
  const doubt = within === 0 ? '' : `, to within ${printMoney(within)}`
  if (lumber === 0 && cost === 0) return `It costs nothing more${doubt}.`
  // who builds for himself has no price beside the cost
  const inPrice = price.price === cost ? '' : `, ${moved(price.price)} in the price`
  return `${moved(lumber)} for boards and joints${doubt}; ${moved(cost)} in the whole cost${inPrice}.`
}

function moved(amount: Cents): string {
  return amount === 0 ? 'no change' : printDifference(amount, (size) => printMoney(cents(size)))
}
