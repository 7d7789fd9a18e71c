import { IRC_LIMITS } from '../data/index.ts'
import { type LevelStep, risersFor } from '../frame/index.ts'
import { common, insetBy } from '../geometry/index.ts'
import type { Job } from '../job/index.ts'
import type { Level } from '../layout/index.ts'
import type { StairPlan } from '../stairs/index.ts'
import { inches, printInches, ticks } from '../units/index.ts'
import type { CheckContext } from './context.ts'
import { byLimit, length } from './finding.ts'
import { judge } from './judge.ts'
import { plainRules } from './plain-rules.ts'
import type { Check } from './types.ts'
import { feetInches } from './words.ts'

/** Platforms no farther apart than this are walked between: common practice, no source. */
const BESIDE = inches(6)

/**
 * The ways from each further level to those beside it: a single riser of 7-3/4 in at most, box steps whose risers and
 * treads keep to IRC 2021 R311.7.5, or stairs, which have checks of their own. A level that none of them leads to is
 * told, and one that no other is beside.
 */
export function checkLevels(context: CheckContext, stairs: readonly StairPlan[]): readonly Check[] {
  const { levels } = context.layout
  const { steps } = context.frame
  const reached = new Set([
    ...stairs.flatMap(({ edge, floor }) => (floor === null ? [] : [levelAt(levels, edge), floor.level])),
    ...steps.flatMap(({ higher, lower }) => [higher, lower]),
  ])
  const ways = levels
    .slice(1)
    .map((level) => ({ level, check: checkWay(context, level, levels) }))
    .filter(({ level, check }) => check.status !== 'outside scope' || !reached.has(level.number))
  return [...ways.map(({ check }) => check), ...steps.map((step) => checkStep(context.job, step))]
}

function levelAt(levels: readonly Level[], { number }: StairPlan['edge']): number {
  return levels.find(({ edges }) => edges.some((edge) => edge.number === number))?.number ?? 1
}

/** From a level to that of those beside it which is nearest in height: by one riser, or by nothing that is counted. */
function checkWay({ job }: CheckContext, level: Level, levels: readonly Level[]): Check {
  const beside = levels.filter((other) => other !== level && liesBeside(level, other))
  const rise = (other: Level) => Math.abs(other.deckTop - level.deckTop)
  const nearest = beside.reduce<Level | null>(
    (best, other) => (best === null || rise(other) < rise(best) ? other : best),
    null,
  )
  const most = inches(IRC_LIMITS.riser.value)
  const high = nearest === null ? level.deckTop : ticks(rise(nearest))
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
    fields: ['shape.levels', 'size.height', 'shape.steps'],
    prescriptive: one ? { ...found, ratio: null } : null,
    calculated: null,
    good: () => `One step of ${feetInches(high)} leads to level ${level.number}.`,
    bad: '',
    uncovered:
      nearest === null
        ? `No other level lies beside level ${level.number}: how one gets to it is not told`
        : `Level ${level.number} lies ${feetInches(high)} from level ${nearest.number}: ${risersFor(high)} risers between them are not framed or counted here`,
    whenUncovered:
      'Set down a sum for the steps between, and have a guard where the drop is more than 30 in.',
    remedy: '',
    caution: WATER,
  })
}

const WATER = 'Where one level ends over another, flash or slope so that water runs off both.'

/** Risers, treads and width of a box step, and the landing at its foot. */
function checkStep(job: Job, step: LevelStep): Check {
  const rise = step.drop / step.risers
  const { deciding, beside, broken, unread } = plainRules([
    { limit: IRC_LIMITS.riser, what: 'each riser', measure: rise, holds: 'at most' },
    { limit: IRC_LIMITS.tread, what: 'each tread', measure: step.tread, holds: 'at least' },
    { limit: IRC_LIMITS.stairWidth, what: 'the step', measure: step.width, holds: 'at least' },
  ])
  const told = `${step.risers} risers of ${printInches(ticks(Math.ceil(rise)))}`
  return judge(job, {
    id: `level-${step.id}`,
    title: 'Step between levels',
    subjects: step.memberIds,
    fields: ['shape.levels', 'size.height', 'shape.steps', 'shape.stepWidth'],
    prescriptive: step.landing || broken.length > 0 ? deciding : null,
    calculated: null,
    beside,
    good: () =>
      `A box step leads from level ${step.higher} to level ${step.lower}: ${told}, treads of ${printInches(step.tread)} or more.`,
    bad: `The box step at level ${step.lower}: ${broken.map(({ what, holds, limit }) => `${what} not ${holds} ${limit.value} in`).join('; ')}.`,
    uncovered: `Level ${step.lower} is too narrow for the 36 in of landing at the foot of its step (IRC 2021 R311.7.6)`,
    whenUncovered: 'Make the lower level deeper beyond the step, or have the step elsewhere.',
    remedy: 'Change the height of a level, or make the step wider.',
    caution: [unread, WATER].filter((one) => one !== '').join(' '),
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
