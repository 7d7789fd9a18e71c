import { LOAD_DURATION } from '../data/index.ts'
import type { Psf } from '../units/index.ts'

/** CD of the deck's governing load: 1.15 where snow is more than the live load, else 1.0. NDS 2018 2.3.2. */
export function loadDuration(live: Psf, snow: Psf): number {
  return snow > live ? LOAD_DURATION.snow : LOAD_DURATION.floor
}
