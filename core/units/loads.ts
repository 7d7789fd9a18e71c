import type { Brand } from './brand.ts'

/** Pounds per square foot: floor and snow load, soil bearing. */
export type Psf = Brand<'Psf'>

/** Largest area load or bearing pressure reckoned with, psf: sound bedrock carries 12,000. */
const MAX_PSF = 20_000

/** Brands a whole number of pounds per square foot, 0 to 20,000. Throws otherwise: that is a bug, not input. */
export function psf(n: number): Psf {
  if (!Number.isInteger(n) || n < 0 || n > MAX_PSF) {
    throw new RangeError(`${n} is not a whole number of psf from 0 to 20,000`)
  }
  return n as Psf
}
