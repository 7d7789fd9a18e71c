export type { Brand } from './brand.ts'
export { lengthFromInches } from './grid.ts'
export { isDate } from './is-date.ts'
export { type Psf, psf } from './loads.ts'
export {
  type Cents,
  cents,
  divideRounded,
  MAX_CENTS,
  priceOf,
  type Share,
  share,
  shareOf,
  sumCents,
  type UnitPrice,
  unitPrice,
} from './money.ts'
export { type LengthFault, parseLength } from './parse-length.ts'
export { parseMoney } from './parse-money.ts'
export { parseQuantity } from './parse-quantity.ts'
export { parseShare } from './parse-share.ts'
export { printInches, printLength } from './print-length.ts'
export { printMoney, printMoneyChange } from './print-money.ts'
export { printShare } from './print-share.ts'
export { fail, ok, type Result } from './result.ts'
export type { TextFault } from './text-fault.ts'
export {
  ceilTicks,
  feet,
  inches,
  MAX_TICKS,
  nearestSixteenth,
  TICKS_PER_FOOT,
  TICKS_PER_INCH,
  type Ticks,
  ticks,
  toFeet,
  toInches,
} from './ticks.ts'
export { parseUnitPrice, printUnitPrice } from './unit-prices.ts'
