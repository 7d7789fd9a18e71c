export type { Brand } from './brand.ts'
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
export { fail, ok, type Result } from './result.ts'
export {
  ceilTicks,
  feet,
  inches,
  MAX_TICKS,
  nearestSixteenth,
  type Ticks,
  TICKS_PER_FOOT,
  TICKS_PER_INCH,
  ticks,
  toFeet,
  toInches,
} from './ticks.ts'
