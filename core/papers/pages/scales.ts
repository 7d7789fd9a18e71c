import type { PaperName } from '../sheet-types.ts'

/** Points in a tick at 1:1. */
export const POINTS_PER_TICK = 72 / 32

/** Usual scales, 1 : n: the architect's (3 in to 1/32 in to the foot) and the metric ones (ISO 5455, with 1:25). */
const ARCHITECT = [4, 8, 12, 16, 24, 32, 48, 64, 96, 128, 192, 384] as const
const METRIC = [5, 10, 20, 25, 50, 100, 200, 500] as const

const FRACTIONS: { readonly [denominator: number]: string } = {
  4: '3',
  8: '1-1/2',
  12: '1',
  16: '3/4',
  24: '1/2',
  32: '3/8',
  48: '1/4',
  64: '3/16',
  96: '1/8',
  128: '3/32',
  192: '1/16',
  384: '1/32',
}

/** What permit offices ask for: 1/4 in to the foot, or 1:50. */
export function permitScale(paper: PaperName): number {
  return usualScales(paper) === METRIC ? 50 : 48
}

export function usualScales(paper: PaperName): readonly number[] {
  return paper === 'a4' || paper === 'a3' ? METRIC : ARCHITECT
}

export function scaleName(denominator: number): string {
  if (denominator === 1) return 'true size, 1:1'
  const inches = FRACTIONS[denominator]
  return inches === undefined ? `1:${denominator}` : `${inches} in = 1 ft (1:${denominator})`
}

/**
 * The largest usual scale at which so many ticks stand in so many points; the stated one where it fits, and where it
 * does not, the largest that does.
 */
export function scaleFor(
  drawing: { readonly w: number; readonly h: number },
  room: { readonly w: number; readonly h: number },
  paper: PaperName,
  stated: number | null,
): number {
  const fits = (n: number): boolean =>
    (drawing.w * POINTS_PER_TICK) / n <= room.w && (drawing.h * POINTS_PER_TICK) / n <= room.h
  if (stated !== null && fits(stated)) return stated
  const usual = usualScales(paper)
  return usual.find((n) => fits(n) && (stated === null || n > stated)) ?? usual.at(-1) ?? 500
}
