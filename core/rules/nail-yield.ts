/** Dowel bearing strength of a nail thinner than 1/4 in, psi, to the nearest 50: 16600 G^1.84. NDS 2018 12.3.3, from memory. */
function nailBearing(gravity: number): number {
  return 50 * Math.round((16_600 * gravity ** 1.84) / 50)
}

/**
 * Lateral value Z of a nail in single shear where it bends in both members (mode IV), lb, before adjustment: the least of
 * all modes for 16d common through 1-1/2 in into ten diameters or more. D² ÷ KD × √(2 Fe Fyb ÷ 3 (1 + Re)), Re = 1, KD 2.2
 * up to 0.17 in. NDS 2018 Table 12.3.1A, Fyb 90,000 psi for 0.142 to 0.177 in; from memory.
 * @param gravity G of both members
 * @param diameter D, in, of 0.142 to 0.17
 */
export function nailLateral(gravity: number, diameter: number): number {
  return (diameter ** 2 / 2.2) * Math.sqrt((2 * nailBearing(gravity) * 90_000) / 6)
}
