import { IRC_LIMITS } from '../data/index.ts'
import { common, insetBy } from '../geometry/index.ts'
import type { Level } from '../layout/index.ts'
import { inches, ticks } from '../units/index.ts'
import type { CheckContext } from './context.ts'
import { byLimit, length } from './finding.ts'
import { judge } from './judge.ts'
import type { Check } from './types.ts'
import { feetInches } from './words.ts'

/** Platforms no farther apart than this are walked between: common practice, no source. */
const BESIDE = inches(6)

/**
 * The way from each further level to the one beside it: a single riser of 7-3/4 in at most, IRC 2021 R311.7.5.1, or
 * steps, which are not framed between levels. A level that no other is beside stands alone.
 */
export function checkLevels(context: CheckContext): readonly Check[] {
  const { levels } = context.layout
  return levels.slice(1).map((level) => checkOne(context, level, levels))
}

function checkOne({ job }: CheckContext, level: Level, levels: readonly Level[]): Check {
  const beside = levels.filter((other) => other !== level && liesBeside(level, other))
  const rise = (other: Level) => Math.abs(other.deckTop - level.deckTop)
  const nearest = beside.reduce<Level | null>(
    (best, other) => (best === null || rise(other) < rise(best) ? other : best),
    null,
  )
  const most = inches(IRC_LIMITS.riser.value)
  const high = nearest === null ? level.deckTop : ticks(rise(nearest))
  const risers = Math.ceil(high / most)
  const found = byLimit(IRC_LIMITS.riser, length(high), length(most), [
    nearest === null
      ? `Level ${level.number} lies beside no other`
      : `From level ${level.number} to level ${nearest.number}: ${feetInches(high)}`,
  ])
  const one = nearest !== null && high <= most
  return judge(job, {
    id: `level-${level.number}`,
    title: 'Step between levels',
    subjects: [],
    fields: ['shape.levels', 'size.height'],
    prescriptive: one ? { ...found, ratio: null } : null,
    calculated: null,
    good: () => `One step of ${feetInches(high)} leads to level ${level.number}.`,
    bad: '',
    uncovered:
      nearest === null
        ? `No other level lies beside level ${level.number}: how one gets to it is not told`
        : `Level ${level.number} lies ${feetInches(high)} from level ${nearest.number}: ${risers} risers between them are not framed or counted here`,
    whenUncovered:
      'Set down a sum for the steps between, and have a guard where the drop is more than 30 in.',
    remedy: '',
    caution: 'Where one level ends over another, flash or slope so that water runs off both.',
  })
}

/** Whether two platforms come within some inches of each other. */
function liesBeside(level: Level, other: Level): boolean {
  const wider = insetBy(
    level.outline,
    level.outline.map(() => -BESIDE),
  ).polygon
  return common([wider], [other.outline]).length > 0
}
