import type { Rectangle } from './section.ts'

/**
 * Slenderness of a bending member RB = √(le d / b²), NDS 2018 3.3.3.6; over 50 it is not allowed.
 * @param effectiveLength le, in, by NDS 2018 Table 3.3.3
 */
export function bendingSlenderness(effectiveLength: number, { breadth, depth }: Rectangle): number {
  return Math.sqrt((effectiveLength * depth) / breadth ** 2)
}

/**
 * Beam stability factor CL = (1 + r) / 1.9 − √(((1 + r) / 1.9)² − r / 0.95), r = FbE / Fb*, FbE = 1.20 Emin′ / RB².
 * NDS 2018 3.3.3.8. 0 where RB is over 50.
 * @param leastModulus Emin′, psi
 * @param bending Fb*: Fb′ without CL and Cfu, psi
 */
export function beamStability(slenderness: number, leastModulus: number, bending: number): number {
  if (slenderness > 50) return 0
  if (slenderness <= 0) return 1
  const r = criticalBending(slenderness, leastModulus) / bending
  const half = (1 + r) / 1.9
  return half - Math.sqrt(half ** 2 - r / 0.95)
}

/** FbE = 1.20 Emin′ / RB², psi. NDS 2018 3.3.3.6. */
export function criticalBending(slenderness: number, leastModulus: number): number {
  return (1.2 * leastModulus) / slenderness ** 2
}

/**
 * Whether the rules for depth over breadth hold a member upright, so that CL is 1. NDS 2018 4.4.1.2, nominal sizes.
 * @param ratio nominal depth over nominal breadth
 * @param held what is held in place: the ends, one edge along its length, both edges
 */
export function heldUpright(
  ratio: number,
  held: { readonly ends: boolean; readonly edge: boolean; readonly bothEdges: boolean },
): boolean {
  if (ratio <= 2) return true
  if (ratio <= 4) return held.ends
  // 5 < d/b ≤ 6 asks for bridging at 8 ft besides an edge: joists or blocking closer than that are such a hold
  if (ratio <= 6) return held.ends && held.edge
  return held.ends && held.bothEdges
}
