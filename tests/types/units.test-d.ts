import {
  type Cents,
  cents,
  feet,
  type Psf,
  psf,
  type Share,
  share,
  type Ticks,
  ticks,
} from '../../core/units/index.ts'

/*
 * Checked by the compiler, not run: each line below a mark must fail to compile, and the compiler complains where
 * one does not.
 */

declare function needsTicks(length: Ticks): void
declare function needsCents(amount: Cents): void
declare function needsShare(part: Share): void
declare function needsPsf(load: Psf): void

needsTicks(feet(12))
needsCents(cents(450))
needsShare(share(3200))
needsPsf(psf(40))

// @ts-expect-error money is no length
needsTicks(cents(1))
// @ts-expect-error a length is no money
needsCents(ticks(1))
// @ts-expect-error the sum of a length and a sum of money is neither
needsTicks(ticks(1) + cents(1))
// @ts-expect-error even the sum of two lengths is a bare number until it is checked again
needsTicks(ticks(1) + ticks(1))
// @ts-expect-error a bare number has no unit
needsTicks(32)
// @ts-expect-error a share is no money
needsCents(share(100))
// @ts-expect-error a load is no share
needsShare(psf(40))
// @ts-expect-error a length is no load
needsPsf(ticks(40))
// @ts-expect-error text is no length
needsTicks('12 ft')
