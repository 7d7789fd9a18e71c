import { TICKS_PER_FOOT, TICKS_PER_INCH, type Ticks } from './ticks.ts'

/** Carpenter's form: `23'-6 1/2"`, under a foot `7 3/4"`, nothing `0"`, below zero with a minus before it. */
export function printLength(length: Ticks): string {
  const size = Math.abs(length)
  const feet = Math.floor(size / TICKS_PER_FOOT)
  const rest = printMixed(size % TICKS_PER_FOOT, feet > 0)
  return `${length < 0 ? '-' : ''}${feet > 0 ? `${feet}'-` : ''}${rest}"`
}

/** Inches alone, as on a cut list: `150 1/2 in`. */
export function printInches(length: Ticks): string {
  return `${length < 0 ? '-' : ''}${printMixed(Math.abs(length))} in`
}

/** A count of 1/32 in, not negative, as whole inches and a fraction in lowest terms; after feet, 0 is written too. */
function printMixed(size: number, afterFeet = false): string {
  const whole = Math.floor(size / TICKS_PER_INCH)
  let numerator = size % TICKS_PER_INCH
  let denominator = TICKS_PER_INCH
  if (numerator === 0) return `${whole}`
  while (numerator % 2 === 0) {
    numerator /= 2
    denominator /= 2
  }
  return `${whole > 0 || afterFeet ? `${whole} ` : ''}${numerator}/${denominator}`
}
