import { momentOfInertia, type Rectangle } from './section.ts'

/**
 * Longest simple span whose deflection stays within L / limit under a uniform load, in:
 * from 5 w L⁴ / (384 E′ I) = L / limit. NDS 2018 3.5, IRC 2021 Table R301.7 (floors L/360 under live load).
 * @param load lb per in, the part that the limit is meant for
 * @param modulus E′, psi
 * @param limit 360 for L/360
 */
export function deflectionSpan(load: number, section: Rectangle, modulus: number, limit: number): number {
  return Math.cbrt((384 * modulus * momentOfInertia(section)) / (5 * load * limit))
}

/**
 * Tip deflection of an overhang under a load at its end, in: P a² (L + a) / (3 E′ I).
 * AWC Design Aid 6, beam overhanging one support, load at the end.
 * @param load lb
 * @param overhang a, in
 * @param span L, in
 */
export function tipDeflection(load: number, overhang: number, span: number, stiffness: number): number {
  return (load * overhang ** 2 * (span + overhang)) / (3 * stiffness)
}

/**
 * Longest cantilever whose tip stays within a / limit under a load at its end, in: P a (L + a) / (3 E′ I) = 1 / limit.
 * @param load lb
 * @param span L, in
 * @param stiffness E′ I, lb-in²
 */
export function cantileverByTip(load: number, span: number, stiffness: number, limit: number): number {
  return (-span + Math.sqrt(span ** 2 + (12 * stiffness) / (load * limit))) / 2
}
