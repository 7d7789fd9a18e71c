import type { Primitive } from '../../core/papers/index.ts'

/** a letter of a dimension takes so much, its text keeps so much clear of the ticks, and stands so far beyond them, px */
const LETTER = 5.6
const ROOM = 6
const BEYOND = 7

/** Whether the text of an upright dimension, turned, has room between its ticks; else it stands level beside the line. */
export function fitsUpright(text: string, [from, to]: readonly [number, number]): boolean {
  return Math.abs(to - from) >= text.length * LETTER + ROOM
}

/** Ids of the level dimensions that another goes before on their line: their texts have no room at their left. */
export function continued(primitives: readonly Primitive[]): ReadonlySet<string> {
  const level = primitives.flatMap((p) => (p.kind === 'dimension' && p.y1 === p.y2 ? [p] : []))
  const ends = new Set(level.map(({ x2, y1, offset }) => `${x2} ${y1} ${offset}`))
  return new Set(level.filter(({ x1, y1, offset }) => ends.has(`${x1} ${y1} ${offset}`)).map(({ id }) => id))
}

/**
 * Where the text of a level dimension stands along its line, px: in the middle; where the line is too short for it,
 * beyond the end that is the end of its chain.
 */
export function placeOfText(
  text: string,
  [from, to]: readonly [number, number],
  isFirst: boolean,
): { readonly at: number; readonly anchor: 'start' | 'middle' | 'end' } {
  if (to - from >= text.length * LETTER + ROOM) return { at: (from + to) / 2, anchor: 'middle' }
  return isFirst ? { at: from - BEYOND, anchor: 'end' } : { at: to + BEYOND, anchor: 'start' }
}
