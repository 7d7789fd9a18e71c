import type { Member } from '../../frame/index.ts'
import type { PlacedFlight, Platform, StairPlan } from '../../stairs/index.ts'
import { END_NAILS } from '../../takeoff/index.ts'
import { printInches, printLength, ticks } from '../../units/index.ts'

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
    ...beamAtEdge(platform, of('landing post')),
    `${count('landing post base')} post bases and ${count('landing post cap')} caps`,
    `joists ${marks(of('landing joist'))} hung between the beams, tops flush, in ${count('landing hanger')} landing hangers, every hole filled; the outermost, flush with the beams’ ends, which leave a hanger no room, by ${count('landing end angle')} end joist angles in the corners and ${END_NAILS} nails 16d through the beam’s inner ply into each end, before the outer ply is nailed on (common practice, no source)`,
    ...boardsOver(of('landing decking'), flights.at(-1)),
    `top of its boards ${printLength(ticks(Math.round((flights[0]?.topLevel ?? 0) - platform.level)))} under the top of the decking and ${printLength(ticks(Math.round(totalRise - (flights[0]?.topLevel ?? 0) + platform.level)))} over the foot of the stairs`,
  ].join('; ')
}

/** What its boards are, and by how much they make the nosing where the lower flight leaves. */
function boardsOver(boards: readonly Member[], lower: PlacedFlight | undefined): readonly string[] {
  const [first] = boards
  const last = boards.at(-1)
  if (first === undefined || last === undefined || lower === undefined) return []
  return [
    `its boards ${marks(boards)} ${printLength(first.length)} long, the first at the edge away from the deck${last.ripTo === null ? '' : `, the last ripped to ${printInches(last.ripTo)}`}; where the lower flight leaves they reach ${printInches(lower.over)} over, as each tread does`,
  ]
}

/** Caps are made for a beam on a post's middle: one that stands at its edge is told, for those who buy and set them. */
function beamAtEdge({ outerOff }: Platform, posts: readonly Member[]): readonly string[] {
  if (outerOff === 0) return []
  const outer = marks(posts.slice(posts.length / 2))
  return [
    `the outer beam’s outer face flush with those of ${outer}, its middle ${printLength(outerOff)} outside theirs: caps made for a beam at the post’s edge, or a plate outside and an angle inside (common practice, no source; the posts are checked for it)`,
  ]
}

/** "LJ1 to LJ4", by the marks of first and last. */
function marks(members: readonly Member[]): string {
  const names = [...new Set(members.map(({ mark }) => mark.replace(/[a-z]+$/, '')))]
  return names.length < 3 ? names.join(' and ') : `${names[0]} to ${names.at(-1)}`
}
