import { type Psf, psf } from '../units/index.ts'

/** Live or ground snow load, whichever is greater; never both. IRC 2021 R507.1, footnotes of the deck tables. */
export function governingLoad(live: Psf, snow: Psf): Psf {
  return psf(Math.max(live, snow))
}

/**
 * Load with which the span and height tables are entered, psf.
 * Their 50, 60 and 70 psf pages are for snow, whose shorter duration allows 15 % more stress (NDS 2.3.2); a live load
 * above 40 psf gets no such help, so it is entered at the next page: 50 as 60, 60 as 70 (80 / 1.15 is within 0.6 % of
 * 60 + 10). A live load over 60 psf has no page: the answer lies beyond the table.
 */
export function spanTableLoad(live: Psf, snow: Psf): number {
  return Math.max(snow, live <= 40 ? 40 : live <= 50 ? 60 : live <= 60 ? 70 : Number.POSITIVE_INFINITY)
}
