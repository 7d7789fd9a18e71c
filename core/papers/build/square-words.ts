import type { Design } from '../../estimate-types.ts'
import { isBeforeOneWall, layoutChecks } from '../../ground/index.ts'
import { printLength } from '../../units/index.ts'

/**
 * What proves the frame square: its diagonals; of an outline that is no rectangle, those of the rectangle around it; and
 * where the house stands in that rectangle, lines from the corners of the house. Of several levels, each one's.
 */
export function squareWords(design: Design): string {
  const { layout, frame } = design
  if (layout.levels.length > 1 || !isBeforeOneWall(design)) {
    const lines = layoutChecks(design).filter(({ kind }) => kind === 'square' || kind === 'level')
    return lines.map(({ what, measures }) => `${lowered(what)} ${printLength(measures)}`).join('; ')
  }
  const of = layout.outline.length === 4 ? 'both diagonals' : 'both diagonals of the rectangle around it'
  return `${of} ${printLength(frame.longDiagonal)}`
}

function lowered(words: string): string {
  return words.charAt(0).toLowerCase() + words.slice(1)
}
