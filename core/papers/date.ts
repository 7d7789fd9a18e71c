/** Days of a month, 1 to 12, in the Gregorian calendar. */
function daysIn(year: number, month: number): number {
  const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0
  return [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1] ?? 0
}

/** The day so many days after an ISO date, by the calendar alone; '' where none was stated. */
export function daysAfter(date: string, days: number): string {
  const [year, month, day] = date.split('-').map(Number)
  if (year === undefined || month === undefined || day === undefined || date === '') return ''
  let [y, m, d] = [year, month, day + days]
  while (d > daysIn(y, m)) {
    d -= daysIn(y, m)
    m += 1
    if (m > 12) {
      m = 1
      y += 1
    }
  }
  return `${`${y}`.padStart(4, '0')}-${`${m}`.padStart(2, '0')}-${`${d}`.padStart(2, '0')}`
}
