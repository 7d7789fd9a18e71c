import type { Primitive } from '../../core/papers/index.ts'
import { inches } from '../../core/units/index.ts'

/** a letter of a dimension takes so much, its text keeps so much clear of the ticks, and stands so far beyond them, px */
const LETTER = 5.6
const ROOM = 6
const BEYOND = 7

/** What stands beside a deck, its grips, and a text turned: an upright dimension line keeps clear of both, px. */
const BESIDE = 30
/** the usual distance of a dimension line from what it measures, ticks */
const USUAL = inches(17)

/** How much further out than to scale upright dimensions stand, px, where the drawing is small. */
export function nearestUpright(scale: number): number {
  return Math.max(0, BESIDE - USUAL * scale)
}

/**
 * Where the text of an upright dimension stands: turned beside its line where its ticks leave it room; turned on the outer
 * side, where it may reach past them a little; or level.
 */
export function placeOfUprightText(
  text: string,
  [from, to]: readonly [number, number],
): 'beside' | 'outside' | 'level' {
  const room = Math.abs(to - from)
  const long = text.length * LETTER
  if (room >= long + ROOM) return 'beside'
  return room >= long * 0.7 ? 'outside' : 'level'
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
