/**
 * Weight of wood, lb per cu ft: 62.4 G ÷ (1 + 0.009 G MC) × (1 + MC ÷ 100). NDS Supplement 3.1.3 (see `densitySource`).
 * @param gravity G, oven-dry weight and volume
 * @param moisture MC, percent of dry weight
 */
export function woodDensity(gravity: number, moisture: number): number {
  return ((62.4 * gravity) / (1 + 0.009 * gravity * moisture)) * (1 + moisture / 100)
}
