/** Most characters that a cell may hold. */
const LONGEST = 32_767

/**
 * Foreign text made safe for a cell's XML: what XML 1.0 cannot carry is left out, and what a spreadsheet would
 * decode (_x0041_ reads as A) is escaped. It is written as text, so "=1+1" stays what it says.
 */
export function cellText(words: string): string {
  return words
    .replace(/[\p{Cc}\p{Cs}\uFFFE\uFFFF]/gu, (c) => (c === '\n' || c === '\t' ? c : ''))
    .replace(/_(?=x[0-9A-Fa-f]{4}_)/g, '_x005F_')
    .slice(0, LONGEST)
}

/** The same for a page's foot, where & begins a code and 255 characters are the limit. */
export function footerText(words: string): string {
  return [...cellText(words).replace(/\s+/g, ' ')].slice(0, 60).join('').replaceAll('&', '&&')
}
