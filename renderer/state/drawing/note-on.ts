import { type Check, percent } from '../../../core/checks/index.ts'
import { printLength, toFeet } from '../../../core/units/index.ts'
import type { MemberCut } from '../board-index.ts'
import { bySeverity, markOf } from '../figures.ts'
import { capital, type Thing } from '../things.ts'

interface Note {
  /** kind and mark, length, lumber, boards */
  readonly words: readonly string[]
  /** the check that it comes nearest to failing; null where none speaks of it */
  readonly worst: { readonly mark: ReturnType<typeof markOf>; readonly text: string } | null
}

/** Boards named by number before they are only counted. */
const FEW = 2

/** One line on a thing of the drawing. */
export function noteOn(thing: Thing, cut: MemberCut | null, checks: readonly Check[]): Note {
  const own = checks.filter(({ subjects }) => subjects.includes(thing.id))
  const [worst] = bySeverity(own)
  const ratio = worst?.governing?.ratio ?? null
  return {
    words: [
      `${capital(thing.kind)} ${thing.mark}`,
      ...(thing.length === null ? [] : [printLength(thing.length)]),
      ...(thing.lumber === null ? [] : [thing.lumber]),
      ...(cut === null || cut.sources.length === 0 ? [] : [boards(cut)]),
    ],
    worst:
      worst === undefined
        ? null
        : {
            mark: markOf(worst.status),
            text: ratio === null ? worst.title : `${worst.title} ${percent(ratio)}`,
          },
  }
}

function boards({ sources }: MemberCut): string {
  if (sources.length > FEW) return `${sources.length} pieces`
  return sources.map(({ board }) => `board ${board.number}, a ${toFeet(board.length)}`).join(' and ')
}
