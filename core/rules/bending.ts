import { type Rectangle, sectionModulus } from './section.ts'

/**
 * Bending stress fb = M / S, psi. NDS 2018 3.3.2.
 * @param moment in-lb
 */
export function bendingStress(moment: number, section: Rectangle): number {
  return moment / sectionModulus(section)
}

/**
 * Longest simple span that bending allows under a uniform load, in: L = √(8 Fb′ S / w). NDS 2018 3.3.1.
 * @param load lb per in
 * @param bending Fb′, psi
 */
export function bendingSpan(load: number, section: Rectangle, bending: number): number {
  return Math.sqrt((8 * bending * sectionModulus(section)) / load)
}
