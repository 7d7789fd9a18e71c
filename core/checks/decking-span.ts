import { DECKING_SPANS } from '../data/index.ts'
import { lookUpRow, type TableLookup } from '../rules/index.ts'
import type { CheckContext } from './context.ts'
import { atMost } from './finding.ts'
import { judge } from './judge.ts'
import { deckingIds } from './members.ts'
import type { Check } from './types.ts'
import { spacingText } from './words.ts'

/**
 * Joist spacing under the decking. IRC 2018 Table R507.7, which was read; the 2021 table, recalled, gives the same for
 * boards over several spans, and every piece of a course lies on three joists at least.
 */
export function checkDeckingSpan(context: CheckContext): Check {
  const { job, frame } = context
  // the table's diagonal column holds for any angle up to 45 degrees off square
  const slanting = frame.decked.some(({ degrees }) => degrees !== 0)
  const column = slanting ? 'diagonal' : 'perpendicular'
  const { spacing } = job.frame.joists
  const row = job.decking.size === '5/4x6' ? '1-1/4 in wood' : '2 in wood'
  const lookup = lookUpRow(DECKING_SPANS, { at: ['2018', 'multiple spans'], row, column })
  const recalled = lookUpRow(DECKING_SPANS, { at: ['2021', 'multiple spans'], row, column })
  const prescriptive = atMost(lookup, spacing, [
    `Joists at ${spacingText(spacing)}, boards ${slanting ? 'at an angle' : 'across them'} over two spans or more`,
    lookup.sentence,
    recalled.kind === 'row' ? `2021 edition, from memory: ${recalled.value} in` : recalled.sentence,
  ])
  return judge(job, {
    id: 'decking-span',
    title: 'Decking span',
    subjects: deckingIds(frame),
    fields: ['decking.size', 'decking.angle', 'decking.parts', 'frame.joists.spacing'],
    prescriptive,
    calculated: null,
    good: (share) => `Decking uses ${share} of its span, ${rowReadWords(recalled)}.`,
    bad: `Joists at ${spacingText(spacing)} are too far apart for ${job.decking.size} decking${slanting ? ' at an angle' : ''}.`,
    uncovered: `No table row covers ${job.decking.size} decking`,
    remedy: slanting
      ? 'Set the joists closer, use 2x6 decking, or lay it straight.'
      : 'Set the joists closer, or use 2x6 decking.',
    caution: '',
  })
}

/** Why the row of an older edition decides: it was read, that of 2021 is from memory. */
export function rowReadWords(recalled: TableLookup): string {
  const later =
    recalled.kind === 'row' && recalled.value !== null
      ? `, from memory, has ${recalled.value} in`
      : ' is not known'
  return `by the row of the 2018 edition, which was read; that of 2021${later}`
}
