/**
 * Bearing area factor Cb = (lb + 3/8) / lb for a bearing under 6 in long and not nearer than 3 in to the member's end;
 * else 1. NDS 2018 3.10.4.
 * @param bearing lb, in
 * @param toEnd from the bearing to the member's end, in
 */
export function bearingAreaFactor(bearing: number, toEnd: number): number {
  return bearing < 6 && toEnd >= 3 ? (bearing + 0.375) / bearing : 1
}

/**
 * Bearing stress across the grain, fc⊥ = R / (b lb), psi. NDS 2018 3.10.2.
 * @param reaction lb
 * @param breadth in
 * @param bearing in
 */
export function bearingStress(reaction: number, breadth: number, bearing: number): number {
  return reaction / (breadth * bearing)
}
