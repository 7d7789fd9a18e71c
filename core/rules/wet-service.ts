import { WET_SERVICE } from '../data/index.ts'

/** CM for each design value: see `DesignValues`. */
export interface WetFactors {
  readonly bending: number
  readonly tension: number
  readonly shear: number
  readonly compressionAcross: number
  readonly compression: number
  readonly modulus: number
}

const DRY: WetFactors = { bending: 1, tension: 1, shear: 1, compressionAcross: 1, compression: 1, modulus: 1 }

/**
 * CM of dimension lumber. NDS Supplement 2018 Tables 4A and 4B: a strength too low to be lowered further keeps 1,
 * Fb × CF at 1,150 psi or less and Fc × CF at 750 psi or less.
 * @param bending Fb × CF, psi
 * @param compression Fc × CF, psi
 */
export function wetDimension(wet: boolean, bending: number, compression: number): WetFactors {
  if (!wet) return DRY
  const factors = WET_SERVICE.dimension
  return {
    ...factors,
    bending: bending <= WET_SERVICE.bendingFreeTo ? 1 : factors.bending,
    compression: compression <= WET_SERVICE.compressionFreeTo ? 1 : factors.compression,
  }
}

/** CM of posts and timbers, 5x5 and larger. NDS Supplement 2018 Table 4D. */
export function wetTimber(wet: boolean): WetFactors {
  return wet ? WET_SERVICE.timber : DRY
}
