import { expect } from 'vitest'

/** Within a share of the published figure. */
export function within(value: number, published: number, relative: number): void {
  expect(Math.abs(value - published), `${value} against ${published}`).toBeLessThanOrEqual(
    Math.abs(published) * relative,
  )
}

/** Within so much of the published figure, in its unit. */
export function apart(value: number, published: number, greatest: number): void {
  expect(Math.abs(value - published), `${value} against ${published}`).toBeLessThanOrEqual(greatest)
}
