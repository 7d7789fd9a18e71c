import { membersNamed } from '../../checks/index.ts'
import { guardBolts, sectionOf } from '../../data/index.ts'
import type { Estimate } from '../../estimate-types.ts'
import { fromAbove } from '../../frame/index.ts'
import { isInside } from '../../geometry/index.ts'
import type { GuardPlan, GuardPost, GuardStretch } from '../../guard/index.ts'
import { spotAt } from '../../stairs/index.ts'
import { inches, printInches, type Ticks, ticks } from '../../units/index.ts'

type Source = Pick<Estimate, 'job' | 'frame' | 'guard'>

/** A guard post's bolts: what they go through, and how long they are bought. */
export interface PostBolts {
  readonly post: GuardPost
  readonly stretch: GuardStretch
  /** boards along the edge, the post, and a block that stands tight behind it */
  readonly through: number
  readonly blockBehind: boolean
  readonly upper: Ticks
  readonly lower: Ticks
}

/** Bolts of every post of the deck and its landings; those beside stairs go through stringers. */
export function postBolts({ job, frame, guard }: Source): readonly PostBolts[] {
  if (guard === null) return []
  const thick = sectionOf(job.guard.postSize).thickness
  const seat = job.guard.fixing === 'hold-downs' ? inches(guardBolts.holdDown) : 0
  return guard.stretches.flatMap((stretch) =>
    stretch.posts.map((post): PostBolts => {
      const blockBehind = hasBlockBehind(stretch, post, [...guard.members, ...frame.members], guard, thick)
      const through = stretch.behind + thick + (blockBehind ? sectionOf(job.frame.joists.size).thickness : 0)
      const least = through + inches(guardBolts.beyondWood)
      return { post, stretch, through, blockBehind, upper: bought(least + seat), lower: bought(least) }
    }),
  )
}

/** Where bolts are bought for: some posts only, where others wait. */
type IsHere = (post: string) => boolean

/** What to buy for which posts: "7 in above and 6 in below at GP1 to GP7; 8 in at GP8 to GP11". */
export function boltLengthWords(source: Source, isHere: IsHere = () => true): string {
  const here = postBolts(source).filter(({ post }) => isHere(post.id))
  const alike = Map.groupBy(here, ({ upper, lower }) => `${upper} ${lower}`)
  return [...alike.values()]
    .map((group) => {
      const [first] = group
      if (first === undefined) return ''
      const marks = membersNamed({
        frame: { ...source.frame, members: source.guard?.members ?? [] },
        joistIds: group.map(({ post }) => post.id),
      })
      return `${pairWords(first)} at ${marks}`
    })
    .join('; ')
}

/** The same with those beside stairs, and first how many there are of each length: "14 of 6 in, 14 of 7 in: …". */
export function boltOrderWords(source: Source, isHere: IsHere): string {
  const level = postBolts(source).filter(({ post }) => isHere(post.id))
  const beside = stairBolts(source).filter(({ id }) => isHere(id))
  const lengths = [...level, ...beside].flatMap(({ upper, lower }) => [upper, lower])
  const counts = [
    ...Map.groupBy(
      lengths.toSorted((a, b) => a - b),
      (length) => length,
    ),
  ].map(([length, all]) => `${all.length} of ${printInches(length)}`)
  const [stair] = beside
  const places = [
    boltLengthWords(source, isHere),
    ...(stair === undefined ? [] : [`${pairWords(stair)} beside stairs`]),
  ].filter((words) => words !== '')
  return places.length === 0 ? '' : `${counts.join(', ')}: ${places.join('; ')}`
}

interface Pair {
  readonly upper: Ticks
  readonly lower: Ticks
}

/** Beside stairs they go through stringer and post. */
function stairBolts({ job, guard }: Source): readonly (Pair & { readonly id: string })[] {
  const through = sectionOf('2x12').thickness + sectionOf(job.guard.postSize).thickness
  const least = through + inches(guardBolts.beyondWood)
  const seat = job.guard.fixing === 'hold-downs' ? inches(guardBolts.holdDown) : 0
  const pair = { upper: bought(least + seat), lower: bought(least) }
  return (guard?.stairs ?? []).flatMap(({ posts }) => posts.map(({ id }) => ({ id, ...pair })))
}

function pairWords({ upper, lower }: Pair): string {
  return upper === lower ? printInches(upper) : `${printInches(upper)} above and ${printInches(lower)} below`
}

/** Whether a block lies across the line of the bolts, against the post's inner face. */
function hasBlockBehind(
  { edge, behind }: GuardStretch,
  { id, at }: GuardPost,
  members: Source['frame']['members'],
  { backing }: GuardPlan,
  thick: number,
): boolean {
  const spot = spotAt(edge, at, -(behind + thick + inches(0.5)))
  const blocks = backing.find(({ post }) => post === id)?.blocks ?? []
  return members.some((member) => blocks.includes(member.id) && isInside(fromAbove(member), spot))
}

function bought(least: number): Ticks {
  const step = inches(guardBolts.step)
  return ticks(Math.ceil(least / step - 1e-9) * step)
}
