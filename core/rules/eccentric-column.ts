import { criticalBuckling } from './column-stability.ts'

/** A square column and where its load stands. */
export interface EccentricColumn {
  /** Fc′, with CP, psi */
  readonly compression: number
  /** Fb′, psi */
  readonly bending: number
  /** Emin′, psi */
  readonly leastModulus: number
  /** le/d */
  readonly slenderness: number
  /** e/d: from the column's middle to the load, as a share of its depth */
  readonly off: number
}

/**
 * What a column bears of its limit under a load beside its middle and none from the side:
 * (fc / Fc′)² + fc (6 e / d)(1 + 0.234 fc / FcE) ÷ (Fb′ (1 − fc / FcE)). NDS 2018 15.4.1, from memory. Without end where
 * the stress comes to FcE, at which the column buckles.
 * @param stress fc, psi
 */
export function eccentricShare(stress: number, column: EccentricColumn): number {
  const { compression, bending, leastModulus, slenderness, off } = column
  const buckling = slenderness <= 0 ? 0 : stress / criticalBuckling(slenderness, leastModulus)
  if (buckling >= 1) return Number.POSITIVE_INFINITY
  const bent = (stress * 6 * off * (1 + 0.234 * buckling)) / (bending * (1 - buckling))
  return (stress / compression) ** 2 + bent
}

/** The greatest stress fc at which that share is no more than 1, psi: halved down to, for the share grows with it. */
export function eccentricCapacity(column: EccentricColumn): number {
  let [low, high] = [0, column.compression]
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2
    if (eccentricShare(middle, column) <= 1) low = middle
    else high = middle
  }
  return low
}
