import type { Takeoff, Task } from '../takeoff/index.ts'
import type { Line, PriceBook } from './types.ts'
import { DAILY_RATES, hoursLeft } from './working-day.ts'

/** Working days that concrete hardens before posts stand on it: common practice, no source. */
const CURING_DAYS = 3

/** Working days from asking for an inspection to going on: common practice, no source; ask your building department. */
const INSPECTION_DAYS = 1

export interface CalendarStep {
  readonly kind: 'work' | 'inspection' | 'wait'
  readonly what: string
  /** working days from the first, both counted */
  readonly from: number
  readonly to: number
  /** clock hours of the crew, in 1/100 hour; 0 where nobody works */
  readonly crewHours: number
}

/** Work on the ground that follows the inspection of the open holes. */
const AFTER_HOLES = /^(mix-|readymix-|wetset-|backfill-|layout-recheck$|pad$)/

type Work = (task: Task) => boolean

const inStage =
  (...stages: readonly Task['stage'][]): Work =>
  ({ stage }) =>
    stages.includes(stage)

/** Steps in the order in which a deck is built; the three inspections are those of the code's usual permit. */
const STEPS: readonly (
  | { readonly kind: 'work'; readonly what: string; readonly tasks: Work }
  | { readonly kind: 'inspection' | 'wait'; readonly what: string; readonly days: number }
)[] = [
  { kind: 'work', what: 'Clear the place, unload', tasks: beforeAll },
  {
    kind: 'work',
    what: 'Set out, dig and form',
    tasks: (task) => task.stage === 'ground' && !AFTER_HOLES.test(task.rateId),
  },
  { kind: 'inspection', what: 'Footings inspected before concrete', days: INSPECTION_DAYS },
  {
    kind: 'work',
    what: 'Pour, set bolts, backfill',
    tasks: (task) => task.stage === 'ground' && AFTER_HOLES.test(task.rateId),
  },
  { kind: 'wait', what: 'Concrete hardens', days: CURING_DAYS },
  { kind: 'work', what: 'Frame', tasks: inStage('frame') },
  { kind: 'inspection', what: 'Frame inspected before decking', days: INSPECTION_DAYS },
  { kind: 'work', what: 'Decking', tasks: inStage('decking') },
  { kind: 'work', what: 'Stairs', tasks: inStage('stairs') },
  { kind: 'work', what: 'Guard', tasks: inStage('guard') },
  {
    kind: 'work',
    what: 'Clean up',
    tasks: (task) => task.stage === 'general' && !beforeAll(task) && !isDaily(task),
  },
  { kind: 'inspection', what: 'Final inspection', days: INSPECTION_DAYS },
  { kind: 'work', what: 'Stain, when the wood has dried', tasks: inStage('finish') },
]

/** Each day has its own, whether or not the job pays for them: they are no step of their own. */
function isDaily({ rateId }: Task): boolean {
  return DAILY_RATES.some((one) => one === rateId)
}

function beforeAll({ stage, rateId }: Task): boolean {
  return stage === 'before' || rateId === 'stage-lumber'
}

/**
 * Working days by stage for the price book's crew, one stage after another, with the inspections between and the time
 * that concrete hardens. A stage takes up the day on which the one before it ends, where hours are left in it.
 */
export function workCalendar(
  takeoff: Pick<Takeoff, 'tasks'>,
  lines: readonly Line[],
  book: Pick<PriceBook, 'crewSize' | 'rates'>,
): readonly CalendarStep[] {
  const hoursOf = new Map(
    lines
      .filter(({ group }) => group === 'labour')
      .map(({ cause, thousandths }) => [cause.ids[0] ?? '', thousandths / 10 / book.crewSize]),
  )
  const aDay = hoursLeft(book) * 100
  const steps: CalendarStep[] = []
  // hundredths of crew hours from the start of the first day
  let now = 0
  for (const step of STEPS) {
    if (step.kind === 'work') {
      const hours = takeoff.tasks
        .filter(step.tasks)
        .reduce((sum, task) => sum + (hoursOf.get(task.id) ?? 0), 0)
      if (hours === 0) continue
      const end = now + hours
      steps.push({
        kind: 'work',
        what: step.what,
        from: Math.floor(now / aDay) + 1,
        to: Math.max(1, Math.ceil(end / aDay - 1e-9)),
        crewHours: Math.round(hours),
      })
      now = end
    } else {
      const first = Math.ceil(now / aDay - 1e-9) + 1
      const to = first + step.days - 1
      steps.push({ kind: step.kind, what: step.what, from: first, to, crewHours: 0 })
      now = to * aDay
    }
  }
  return steps
}
