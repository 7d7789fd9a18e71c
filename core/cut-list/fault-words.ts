import { columnLetters } from './headings.ts'
import type { RowFault } from './types.ts'

/** Where a fault is, in words: `row 5, column C (Length)`; '' where the list as a whole is meant. */
function faultPlace({ row, column, heading }: RowFault): string {
  if (row === 0) return ''
  if (column === 0) return `row ${row}`
  const head = heading.replace(/[\s\p{Cc}]+/gu, ' ').trim()
  return `row ${row}, column ${columnLetters(column)}${head === '' ? '' : ` (${head.slice(0, 40)})`}`
}

/** A fault in one sentence, its place first. */
export function faultWords(fault: RowFault): string {
  const place = faultPlace(fault)
  const words = `${fault.message}; ${fault.fix}`
  return place === '' ? words : `${place}: ${words}`
}
