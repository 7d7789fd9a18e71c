import type { PriceBook } from './types.ts'

/** A working day of the crew, hours: common practice, no source. */
export const DAY = 8

/** Tasks that are done once a day, whatever else is. */
export const DAILY_RATES = ['day-setup', 'clean-daily'] as const

/** Hours of a day that are left for the work itself: the day less its own set-up and clean-up at the book's rates, 1 at least. */
export function hoursLeft({ rates, crewSize }: Pick<PriceBook, 'rates' | 'crewSize'>): number {
  const daily = rates
    .filter(({ id }) => DAILY_RATES.some((one) => one === id))
    .reduce((sum, { crewHours, workers }) => sum + (crewHours * workers) / 100_000 / crewSize, 0)
  return Math.max(1, DAY - daily)
}
