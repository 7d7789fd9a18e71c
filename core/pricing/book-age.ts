/** Prices older than this are worth asking the yard again (common practice, no source). */
export const OLD_AFTER_DAYS = 60

/** Whole days from the day of a book to another day, both written as `2026-11-01`; below zero where it lies ahead. */
export function bookAge(bookDate: string, today: string): number {
  return dayNumber(today) - dayNumber(bookDate)
}

/** Days since 1 March of the year 0, the leap day being the last of its year. */
function dayNumber(written: string): number {
  const [year = 0, month = 1, day = 1] = written.split('-').map(Number)
  const shifted = month > 2 ? month - 3 : month + 9
  const years = month > 2 ? year : year - 1
  const leapDays = Math.floor(years / 4) - Math.floor(years / 100) + Math.floor(years / 400)
  return 365 * years + leapDays + Math.floor((153 * shifted + 2) / 5) + day - 1
}
