import { SIZE_FACTOR } from '../data/index.ts'

export interface SizeFactors {
  readonly bending: number
  readonly compression: number
  readonly tension: number
}

/**
 * CF of dimension lumber of No.2 and better by its nominal thickness and depth, in. NDS Supplement 2018 Table 4A.
 * Southern Pine has its size effect in its values (Table 4B), and takes 1.1 in bending only where it is 4 in thick and
 * 8 in or deeper.
 */
export function sizeFactors(southernPine: boolean, thickness: number, depth: number): SizeFactors {
  if (southernPine) {
    const bending = thickness >= 4 && depth >= 8 ? SIZE_FACTOR.southernPineFourThickWide : 1
    return { bending, compression: 1, tension: 1 }
  }
  const of = (row: { readonly [depth: string]: number }) => row[String(depth)] ?? 1
  return {
    bending: of(thickness >= 4 ? SIZE_FACTOR.bendingFour : SIZE_FACTOR.bendingThin),
    tension: of(SIZE_FACTOR.tension),
    compression: of(SIZE_FACTOR.compression),
  }
}
