/** Weight of plain concrete, lb per cubic foot (AWC DCA 6). */
export const CONCRETE_WEIGHT = 150

/** Side of a square footing, in: √(P / q). IRC 2021 Table R507.3.1 is made so. @param load lb @param bearing psf */
export function footingSide(load: number, bearing: number): number {
  return 12 * Math.sqrt(load / bearing)
}

/** Diameter of a round footing, in: √(4 P / (π q)). @param load lb @param bearing psf */
export function footingDiameter(load: number, bearing: number): number {
  return 12 * Math.sqrt((4 * load) / (Math.PI * bearing))
}

/** Pressure under a round footing, psf. @param load lb @param diameter in */
export function soilPressure(load: number, diameter: number): number {
  return load / ((Math.PI / 4) * (diameter / 12) ** 2)
}

/**
 * Thickness of a plain concrete footing that its projection asks for, in: the projection, 6 in at least.
 * IRC 2021 R403.1.1 and Table R507.3.1, (side − post) / 2.
 * @param across side or diameter, in
 * @param standing side of the post, or diameter of the tube, that stands on it, in
 */
export function footingThickness(across: number, standing: number): number {
  return Math.max(6, (across - standing) / 2)
}
