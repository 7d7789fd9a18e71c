/** c for sawn lumber, NDS 2018 3.7.1.5. */
const SAWN = 0.8

/** Greatest slenderness le/d, NDS 2018 3.7.1.4. */
export const GREATEST_SLENDERNESS = 50

/**
 * Column stability factor CP = (1 + a) / 2c − √(((1 + a) / 2c)² − a / c), a = FcE / Fc*, times Kf. NDS 2018 3.7.1, 15.3.2.
 * 0 where le/d is over 50: such a column is not allowed.
 * @param slenderness le/d
 * @param leastModulus Emin′, psi
 * @param compression Fc*: Fc′ without CP, psi
 * @param built Kf of a built-up column that buckles across its plies: 0.6 nailed, 0.75 bolted; else 1
 */
export function columnStability(
  slenderness: number,
  leastModulus: number,
  compression: number,
  built = 1,
): number {
  if (slenderness > GREATEST_SLENDERNESS) return 0
  if (slenderness <= 0) return built
  const a = criticalBuckling(slenderness, leastModulus) / compression
  const half = (1 + a) / (2 * SAWN)
  return built * (half - Math.sqrt(half ** 2 - a / SAWN))
}

/** Critical buckling stress FcE = 0.822 Emin′ / (le/d)², psi. NDS 2018 3.7.1. */
export function criticalBuckling(slenderness: number, leastModulus: number): number {
  return (0.822 * leastModulus) / slenderness ** 2
}

/**
 * Slenderness le/d at which CP comes down to a given value: the inverse of `columnStability`.
 * Infinite where CP asks for nothing, 0 where it asks for 1 or more.
 */
export function slendernessFor(stability: number, leastModulus: number, compression: number): number {
  if (stability <= 0) return Number.POSITIVE_INFINITY
  if (stability >= 1) return 0
  const a = (SAWN * stability ** 2 - stability) / (stability - 1)
  return Math.sqrt((0.822 * leastModulus) / (a * compression))
}
