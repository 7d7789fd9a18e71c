import { inches } from '../../units/index.ts'

/** Half of the width from which a board lies flat, its neighbours against it. */
const FLAT = inches(1.5)
const SHARE = 0.7

/**
 * Half the length of a joint's stroke that stays within a flat board's faces, ticks, so that joints of neighbours at one
 * place do not run together; null for what stands on edge, too thin to show a stroke within its faces.
 * @param half half the member's width from above, ticks
 */
export function strokeWithin(half: number): number | null {
  return half >= FLAT ? half * SHARE : null
}
