import { type Ratio, ratio } from './ratio.ts'

/**
 * A plain decimal numeral (`12`, `12.5`, `.5`, `12.`) read exactly, or null where the text is anything else.
 * No sign, no exponent, no thousands separator.
 */
export function readDecimal(text: string): Ratio | null {
  const parts = /^(\d*)(?:\.(\d*))?$/.exec(text)
  if (parts === null) return null
  const whole = parts[1] ?? ''
  const places = parts[2] ?? ''
  if (whole === '' && places === '') return null
  return ratio(BigInt(`${whole}${places}`), 10n ** BigInt(places.length))
}
