import { REGULAR_WIDTHS, type WidthRuns } from './font-widths.ts'

/** The font of the papers, and the one that writes what it lacks. */
export type Face = 'own' | 'other'

const codesOf = (runs: WidthRuns): ReadonlySet<number> =>
  new Set(runs.flatMap(([first, widths]) => widths.map((_, i) => first + i)))

const own = codesOf(REGULAR_WIDTHS)

/** Whether the papers' own font draws a character. */
function isOwn(code: number): boolean {
  return own.has(code)
}

/** A text in runs of one font each. */
export function fontRuns(text: string): readonly { readonly face: Face; readonly text: string }[] {
  const runs: { face: Face; text: string }[] = []
  for (const character of text) {
    const face = isOwn(character.codePointAt(0) ?? 0) ? 'own' : 'other'
    const last = runs.at(-1)
    if (last?.face === face) last.text += character
    else runs.push({ face, text: character })
  }
  return runs
}
