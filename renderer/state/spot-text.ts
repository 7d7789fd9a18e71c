import type { JsonValue, Spot } from '../../core/job/index.ts'
import { fail, ok, parseLength, printLength, type Result } from '../../core/units/index.ts'

/** Spot heights as lines of text, `x, y, z`, one spot a line. */
export function printSpots(spots: readonly Spot[]): string {
  return spots.map(({ x, y, z }) => [x, y, z].map(printLength).join(', ')).join('\n')
}

/** The same read back, in the form in which a job states them; a fault names its line. */
export function readSpotLines(text: string): Result<JsonValue, string> {
  const spots: { readonly x: string; readonly y: string; readonly z: string }[] = []
  for (const [index, line] of text.split('\n').entries()) {
    if (line.trim() === '') continue
    const parts = line.split(/[,;\t]/).map((part) => part.trim())
    const [x = '', y = '', z = ''] = parts
    if (parts.length !== 3) {
      return fail(
        `Line ${index + 1} has ${parts.length === 1 ? 'one value' : `${parts.length} values`}: write three, such as 4', 13'-6", -6".`,
      )
    }
    for (const part of [x, y, z]) {
      const read = parseLength(part)
      if (!read.ok) return fail(`Line ${index + 1}, “${part}”: ${read.error.message}; ${read.error.fix}.`)
    }
    spots.push({ x, y, z })
  }
  return ok(spots)
}
