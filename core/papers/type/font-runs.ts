import { REGULAR_WIDTHS, type WidthRuns } from './font-widths.ts'
import { OTHER_REGULAR } from './other-widths.ts'
import { ARABIC_REGULAR, HEBREW_REGULAR } from './script-widths.ts'

/** The font of the papers, and those that write what it lacks, the last for every script that no other has. */
export type Face = 'own' | 'other' | 'hebrew' | 'arabic' | 'any'

const FACES = new Map(
  (
    [
      ['arabic', ARABIC_REGULAR],
      ['hebrew', HEBREW_REGULAR],
      ['other', OTHER_REGULAR],
      ['own', REGULAR_WIDTHS],
    ] as const satisfies readonly (readonly [Face, WidthRuns])[]
  ).flatMap(([face, runs]) =>
    runs.flatMap(([first, widths]) => widths.map((_, i): [number, Face] => [first + i, face])),
  ),
)

/** A text in runs of one font each. */
export function fontRuns(text: string): readonly { readonly face: Face; readonly text: string }[] {
  const runs: { face: Face; text: string }[] = []
  for (const character of text) {
    const face = FACES.get(character.codePointAt(0) ?? 0) ?? 'any'
    const last = runs.at(-1)
    if (last?.face === face) last.text += character
    else runs.push({ face, text: character })
  }
  return runs
}
