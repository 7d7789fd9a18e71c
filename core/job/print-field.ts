import { cents, printLength, printMoney, printShare, share, ticks } from '../units/index.ts'
import type { FieldValue } from './field-value.ts'
import type { FieldSpec } from './types.ts'

/** A field's value as a person reads it: `23'-6"`, `$25.00`, `10 %`, `40 psf`, `Southern Pine`. */
export function printFieldValue(field: FieldSpec, value: FieldValue): string {
  if (typeof value === 'number') return printAmount(field, value)
  if (typeof value === 'boolean') return value ? 'yes' : 'no'
  if (typeof value !== 'string') {
    const [one, several] = field.entries === undefined ? ['spot', 'spots'] : ['entry', 'entries']
    return value.length === 1 ? `1 ${one}` : `${value.length} ${several}`
  }
  const choice = field.choices?.indexOf(value) ?? -1
  return field.choiceLabels?.[choice] ?? value
}

/** A number in a field's own unit, such as one of its bounds. */
export function printAmount(field: FieldSpec, amount: number): string {
  switch (field.kind) {
    case 'length':
      return printLength(ticks(amount))
    case 'money':
      return printMoney(cents(amount))
    case 'share':
      return printShare(share(amount))
    case 'psf':
      return `${amount} psf`
    default:
      return `${amount}`
  }
}

/** The bounds of a field in words, or an empty text where it has none. */
export function printBounds(field: FieldSpec): string {
  if (field.min === undefined || field.max === undefined) return ''
  return `from ${printAmount(field, field.min)} to ${printAmount(field, field.max)}`
}
