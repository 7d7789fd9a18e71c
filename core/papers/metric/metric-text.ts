const MM_PER_INCH = 25.4
/** A length under this is told to a tenth of a millimetre. */
const SMALL = 10

/** `23'-6 1/2"`, `7 3/4"`, `3/8"` as lengths are printed. */
const CARPENTERS = /(-?)(?:(\d+)'-)?(?:(\d+) (\d+)\/(\d+)|(\d+)\/(\d+)|(\d+(?:\.\d+)?))"/g
/** `150 1/2 in`, `0.5 in`; not the word "in" of a sentence, nor a scale, nor by what screws and bolts are sold. */
const INCHES =
  /(?<![\d./]|\d-)(-?)(?:(\d+) (\d+)\/(\d+)|(\d+)\/(\d+)|(\d+(?:\.\d+)?)) in(?![\w-])(?! (?:(?:lag|carriage|anchor|header) (?:screw|bolt)|bolt)s?\b)(?! (?:the|all|a|an|it|this|that|each|every|one|two|order|its|=)\b)(?! \d)(?! =)/g
/** `1-1/2`, as scales and stock are named, is no length of its own. */
const RANGES = /(\d+(?:\.\d+)?) to (?=\d+(?:\.\d+)? in\b)/g

/**
 * A text with its lengths in millimetres: what was printed in feet and inches or in inches. Names of goods (2x10, 16 ft),
 * areas and loads stay as the trade has them.
 */
export function metricText(text: string): string {
  return text
    .replaceAll('for each inch', 'for each 25.4 mm')
    .replace(RANGES, (_, low: string) => `${low} in to `)
    .replace(
      CARPENTERS,
      (_, sign: string, feet: string | undefined, ...parts: readonly (string | undefined)[]) =>
        print(sign, Number(feet ?? 0) * 12 + mixed(parts)),
    )
    .replace(INCHES, (_, sign: string, ...parts: readonly (string | undefined)[]) =>
      print(sign, mixed(parts)),
    )
}

/** Whole and fraction, a fraction alone, or a number. */
function mixed([whole, top, bottom, aloneTop, aloneBottom, number]: readonly (string | undefined)[]): number {
  if (whole !== undefined) return Number(whole) + Number(top) / Number(bottom)
  if (aloneTop !== undefined) return Number(aloneTop) / Number(aloneBottom)
  return Number(number)
}

function print(sign: string, inches: number): string {
  const mm = inches * MM_PER_INCH
  return `${sign}${mm > 0 && mm < SMALL ? Math.round(mm * 10) / 10 : Math.round(mm)} mm`
}
