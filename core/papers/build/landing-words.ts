import type { Member } from '../../frame/index.ts'
import type { StairPlan } from '../../stairs/index.ts'
import { printLength, ticks } from '../../units/index.ts'

/** How a landing between flights is framed and held, by its marks; null of stairs without one. */
export function landingWords({
  platform,
  members,
  connectors,
  totalRise,
  flights,
}: StairPlan): string | null {
  if (platform === null) return null
  const of = (role: Member['role']) => members.filter((member) => member.role === role)
  const count = (kind: string) => connectors.find((one) => one.kind === kind)?.count ?? 0
  return [
    `beams ${marks(of('landing beam'))}, two plies each${platform.faced > 0 ? ` and before the outer one a third board, ${of('landing beam').at(-1)?.mark}` : ''}, on posts ${marks(of('landing post'))}`,
    `${count('landing post base')} post bases and ${count('landing post cap')} caps`,
    `joists ${marks(of('landing joist'))} hung between the beams, tops flush, in ${count('landing hanger')} landing hangers, every hole filled`,
    `top of its boards ${printLength(ticks(Math.round((flights[0]?.topLevel ?? 0) - platform.level)))} under the top of the decking and ${printLength(ticks(Math.round(totalRise - (flights[0]?.topLevel ?? 0) + platform.level)))} over the foot of the stairs`,
  ].join('; ')
}

/** "LJ1 to LJ4", by the marks of first and last. */
function marks(members: readonly Member[]): string {
  const names = [...new Set(members.map(({ mark }) => mark.replace(/-\d+$/, '')))]
  return names.length < 3 ? names.join(' and ') : `${names[0]} to ${names.at(-1)}`
}
