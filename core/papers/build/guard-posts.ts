import { membersNamed } from '../../checks/index.ts'
import type { GuardPlan } from '../../guard/index.ts'
import type { Step } from '../sheet-types.ts'
import type { PaperSource } from '../source.ts'

type Source = PaperSource['estimate']

/** Where a guard's posts stand, each in a stage of its own: the deck's frame, a landing of stairs, a stringer. */
export type GuardPlace = 'deck' | 'landing' | 'stairs'

/** Posts of a guard that stand in the deck's own frame, "GP1 to GP6, GP9"; or on landings. Empty where there are none. */
export function guardPostMarks({ guard, frame }: Source, where: 'deck' | 'landing'): string {
  if (guard === null) return ''
  return membersNamed({ frame: { ...frame, members: guard.members }, joistIds: guardPostIds(guard, where) })
}

/** Posts in one place: those of stairs are bolted to their stringers. */
export function guardPostCount(guard: GuardPlan, where: GuardPlace): number {
  return where === 'stairs' ? guard.stairPosts : guardPostIds(guard, where).length
}

/** Blocks behind the posts of one place: cut and nailed while that is open. */
export function guardBlockCount({ members, ...guard }: GuardPlan, where: GuardPlace): number {
  const [deck, landing] = [new Set(guardPostIds(guard, 'deck')), new Set(guardPostIds(guard, 'landing'))]
  return members.filter(({ role, cause }) => {
    if (role !== 'guard blocking') return false
    const serves = (posts: ReadonlySet<string>) => cause.ids.some((id) => posts.has(id))
    if (where === 'deck') return serves(deck)
    return where === 'landing' ? serves(landing) : !serves(deck) && !serves(landing)
  }).length
}

export function guardPostIds(
  { stretches }: Pick<GuardPlan, 'stretches'>,
  where: 'deck' | 'landing',
): readonly string[] {
  return stretches
    .filter(({ landing }) => (landing === null) === (where === 'deck'))
    .flatMap(({ posts }) => posts.map(({ id }) => id))
}

/** "the 16 blocks", "the one block"; empty where there are none. */
export function blockWords(count: number): string {
  if (count === 0) return ''
  return count === 1 ? 'the one block' : `the ${count} blocks`
}

/** What holds the guard is set while the frame is open: later no one gets at it, and the inspector could not see it. */
export function guardPostSteps(source: Source): readonly Step[] {
  const { guard, job } = source
  const marks = guardPostMarks(source, 'deck')
  if (guard === null || marks === '') return []
  const held = job.guard.fixing === 'hold-downs' ? ', a hold-down at the upper one' : ''
  const blocks = blockWords(guardBlockCount(guard, 'deck'))
  return [
    {
      text: `Set the guard’s posts ${marks} inside the rims as on the guard’s plan, plumb both ways, two bolts through rim and post each${held}${blocks === '' ? '' : `; then nail ${blocks} behind them`}.`,
      notes: [
        `Their bolts, hold-downs and blocks are seen at the framing inspection. ${laterWords(source)}Rails and balusters come after the decking.`,
      ],
    },
  ]
}

/** Posts that have nothing to stand in yet. */
function laterWords({ guard, ...source }: Source): string {
  if (guard === null) return ''
  const onLanding = guardPostMarks({ guard, ...source }, 'landing')
  const later = [
    ...(onLanding === '' ? [] : [`${onLanding} on the landing`]),
    ...(guard.stairPosts === 0 ? [] : ['those on the stairs']),
  ]
  return later.length === 0 ? '' : `Posts ${later.join(' and ')} wait for the stairs. `
}
