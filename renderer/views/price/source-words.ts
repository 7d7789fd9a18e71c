import type { PriceSource } from '../../../core/pricing/index.ts'

/** `of 2026-01-02, Yard of the north`. */
export function sourceWords({ date, supplier }: PriceSource): string {
  return supplier === '' ? `of ${date}` : `of ${date}, ${supplier}`
}
