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

/** Where a dimension stands in its chain. */
export interface InChain {
  readonly isFirst: boolean
  readonly isLast: boolean
}

export const ALONE: InChain = { isFirst: true, isLast: true }

/** Places of the level dimensions in their chains, by id: those amid one have no room for their texts beside them. */
export function placesInChains(primitives: readonly Primitive[]): ReadonlyMap<string, InChain> {
  const level = primitives.flatMap((p) => (p.kind === 'dimension' && p.y1 === p.y2 ? [p] : []))
  const ends = new Set(level.map(({ x2, y1, offset }) => `${x2} ${y1} ${offset}`))
  const starts = new Set(level.map(({ x1, y1, offset }) => `${x1} ${y1} ${offset}`))
  return new Map(
    level.map(({ id, x1, x2, y1, offset }) => [
      id,
      { isFirst: !ends.has(`${x1} ${y1} ${offset}`), isLast: !starts.has(`${x2} ${y1} ${offset}`) },
    ]),
  )
}

/**
 * Where the text of a level dimension stands along its line, px: in the middle; where the line is too short for it,
 * beyond the end that is the end of its chain; null amid a chain: it is read when the drawing is larger.
 */
export function placeOfText(
  text: string,
  [from, to]: readonly [number, number],
  { isFirst, isLast }: InChain,
): { readonly at: number; readonly anchor: 'start' | 'middle' | 'end' } | null {
  if (to - from >= text.length * LETTER + ROOM) return { at: (from + to) / 2, anchor: 'middle' }
  if (isFirst) return { at: from - BEYOND, anchor: 'end' }
  return isLast ? { at: to + BEYOND, anchor: 'start' } : null
}
