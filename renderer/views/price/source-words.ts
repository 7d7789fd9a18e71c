import { bookAge, OLD_AFTER_DAYS, type PriceSource } from '../../../core/pricing/index.ts'

/** `of 2026-01-02, Yard of the north`. */
export function sourceWords({ date, supplier }: PriceSource): string {
  return supplier === '' ? `of ${date}` : `of ${date}, ${supplier}`
}

/** Whether a price is so old on a day that the yard should be asked again. */
export function isOldOn(today: string, { date }: PriceSource): boolean {
  return bookAge(date, today) > OLD_AFTER_DAYS
}
