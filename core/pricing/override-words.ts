import { printUnitPrice } from '../units/index.ts'
import type { Line } from './types.ts'

/** What of a line is stated by hand, and in the place of what: `quantity stated, 38 computed`; empty for none. */
export function overrideWords({ overridden }: Pick<Line, 'overridden'>): string {
  if (overridden === undefined) return ''
  const { quantity, price, computed } = overridden
  return [
    ...(quantity ? [`quantity stated, ${computed.thousandths / 1000} computed`] : []),
    ...(price ? [`price stated, ${printUnitPrice(computed.price)} in the price book`] : []),
  ].join('; ')
}

/** The label of a line with what is stated of it. */
export function labelOfLine(line: Line): string {
  const words = overrideWords(line)
  return words === '' ? line.label : `${line.label} (${words})`
}
