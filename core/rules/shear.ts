import { areaOf, type Rectangle } from './section.ts'

/**
 * Shear stress of a rectangle, fv = 3 V / (2 b d), psi. NDS 2018 3.4.2.
 * @param shear lb, at the support: the loads within a depth of it are not left out (3.4.3.1 would allow it)
 */
export function shearStress(shear: number, section: Rectangle): number {
  return (1.5 * shear) / areaOf(section)
}

/**
 * Longest simple span that shear allows under a uniform load, in: L = 4 Fv′ b d / (3 w). NDS 2018 3.4.2.
 * @param load lb per in
 * @param shear Fv′, psi
 */
export function shearSpan(load: number, section: Rectangle, shear: number): number {
  return (4 * shear * areaOf(section)) / (3 * load)
}
