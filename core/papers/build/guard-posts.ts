import { membersNamed } from '../../checks/index.ts'
import type { GuardPlan } from '../../guard/index.ts'
import type { Step } from '../sheet-types.ts'
import type { PaperSource } from '../source.ts'

type Source = PaperSource['estimate']

/** Posts of a guard that stand in the deck's own frame, "GP1 to GP6, GP9"; or on landings. Empty where there are none. */
export function guardPostMarks({ guard, frame }: Source, where: 'deck' | 'landing'): string {
  if (guard === null) return ''
  const joistIds = guard.stretches
    .filter(({ landing }) => (landing === null) === (where === 'deck'))
    .flatMap(({ posts }) => posts.map(({ id }) => id))
  return membersNamed({ frame: { ...frame, members: guard.members }, joistIds })
}

/** Blocks behind the posts: cut and nailed while the frame is open. */
export function guardBlockCount(guard: GuardPlan): number {
  return guard.members.filter(({ role }) => role === 'guard blocking').length
}

/** What holds the guard is set while the frame is open: later no one gets at it, and the inspector could not see it. */
export function guardPostSteps(source: Source): readonly Step[] {
  const { guard, job } = source
  const marks = guardPostMarks(source, 'deck')
  if (guard === null || marks === '') return []
  const held = job.guard.fixing === 'hold-downs' ? ', a hold-down at the upper one' : ''
  return [
    {
      text: `Set the guard’s posts ${marks} inside the rims as on the guard’s plan, plumb both ways, two bolts through rim and post each${held}; then nail the ${guardBlockCount(guard)} blocks behind the posts.`,
      notes: [
        'Their bolts, hold-downs and blocks are seen at the framing inspection. Rails and balusters come after the decking.',
      ],
    },
  ]
}
