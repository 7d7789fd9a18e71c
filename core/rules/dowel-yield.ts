/** One member of a single-shear joint: bearing length along the dowel, in, and dowel bearing strength Fe, psi. */
export interface DowelMember {
  readonly length: number
  readonly strength: number
}

export type YieldMode = 'Im' | 'Is' | 'II' | 'IIIm' | 'IIIs' | 'IV'

/**
 * Dowel bearing strength, psi, to the nearest 50: along the grain 11200 G, across it 6100 G^1.45 / √D, for D of 1/4 in
 * and more. NDS 2018 12.3.3; the exponent 1.45 from memory, equal to the rounded values of Table 12A.
 * @param gravity G
 * @param diameter D, in
 */
export function dowelBearing(gravity: number, diameter: number, grain: 'along' | 'across'): number {
  const exact = grain === 'along' ? 11_200 * gravity : (6100 * gravity ** 1.45) / Math.sqrt(diameter)
  return 50 * Math.round(exact / 50)
}

/**
 * Lateral value Z of one dowel of 1/4 in or more in single shear, lb, before adjustment, with the mode that yields
 * first. NDS 2018 Table 12.3.1A; reduction Rd 4 Kθ, 3.6 Kθ and 3.2 Kθ (Table 12.3.1B).
 * @param diameter D, in
 * @param yieldStress Fyb, psi; 45,000 for bolts and lag screws of 3/8 in and more
 * @param angle greatest angle of load to grain in either member, degrees: Kθ = 1 + 0.25 θ / 90
 */
export function singleShearYield(
  main: DowelMember,
  side: DowelMember,
  diameter: number,
  yieldStress: number,
  angle: number,
): { readonly value: number; readonly mode: YieldMode } {
  const d = diameter
  const re = main.strength / side.strength
  const rt = main.length / side.length
  const k = 1 + 0.25 * (angle / 90)
  const k1 = (Math.sqrt(re + 2 * re ** 2 * (1 + rt + rt ** 2) + rt ** 2 * re ** 3) - re * (1 + rt)) / (1 + re)
  const bend = (share: number, length: number) =>
    (2 * yieldStress * share * d ** 2) / (3 * main.strength * length ** 2)
  const k2 = -1 + Math.sqrt(2 * (1 + re) + bend(1 + 2 * re, main.length))
  const k3 = -1 + Math.sqrt((2 * (1 + re)) / re + bend(2 + re, side.length))
  const modes: readonly (readonly [YieldMode, number])[] = [
    ['Im', (d * main.length * main.strength) / (4 * k)],
    ['Is', (d * side.length * side.strength) / (4 * k)],
    ['II', (k1 * d * side.length * side.strength) / (3.6 * k)],
    ['IIIm', (k2 * d * main.length * main.strength) / ((1 + 2 * re) * 3.2 * k)],
    ['IIIs', (k3 * d * side.length * main.strength) / ((2 + re) * 3.2 * k)],
    ['IV', (d ** 2 / (3.2 * k)) * Math.sqrt((2 * main.strength * yieldStress) / (3 * (1 + re)))],
  ]
  const [mode, value] = modes.reduce((least, one) => (one[1] < least[1] ? one : least))
  return { value, mode }
}
