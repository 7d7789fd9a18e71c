/** An exact fraction; the denominator is positive. */
export interface Ratio {
  readonly numerator: bigint
  readonly denominator: bigint
}

export function ratio(numerator: bigint, denominator = 1n): Ratio {
  if (denominator <= 0n) throw new RangeError('a ratio needs a positive denominator')
  return { numerator, denominator }
}

export function addRatios(a: Ratio, b: Ratio): Ratio {
  return ratio(a.numerator * b.denominator + b.numerator * a.denominator, a.denominator * b.denominator)
}

export function timesWhole(a: Ratio, factor: bigint): Ratio {
  return ratio(a.numerator * factor, a.denominator)
}

/** Largest whole number not above the ratio. */
export function floorOf(a: Ratio): bigint {
  const quotient = a.numerator / a.denominator
  return a.numerator < 0n && quotient * a.denominator !== a.numerator ? quotient - 1n : quotient
}

export function isWhole(a: Ratio): boolean {
  return a.numerator % a.denominator === 0n
}
