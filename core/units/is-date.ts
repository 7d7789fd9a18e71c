/** Whether a text is a day of the calendar written as 2026-11-01. */
export function isDate(written: string): boolean {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/u.exec(written)
  if (parts === null) return false
  const [year, month, day] = [Number(parts[1]), Number(parts[2]), Number(parts[3])]
  const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0
  const days = [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1]
  return days !== undefined && day >= 1 && day <= days
}
