import { sectionOf } from '../data/index.ts'
import type { Job } from '../job/index.ts'
import { inches, printInches, printLength, type Ticks, ticks } from '../units/index.ts'
import { runWild } from './decking-runs.ts'
import type { NarrowStretch } from './narrow-stretches.ts'
import type { Beam, Footing, Post } from './types.ts'

/** Under this a post leaves no room for its base and its cap: common practice, no source. */
const SHORT_POST = inches(6)

/** What the person who sets the deck out must be told in words. */
export function layoutNotes(
  job: Job,
  footings: readonly Footing[],
  posts: readonly Post[],
  blocking: readonly {
    readonly beam: Pick<Beam, 'mark' | 'flush' | 'size'>
    readonly leftOut: readonly { readonly bay: number; readonly clear: Ticks }[]
  }[],
  deckingShort: Ticks,
  longest: Ticks,
  strips: readonly NarrowStretch[],
): readonly string[] {
  return [
    'Have buried services marked before digging.',
    'Frost depth is a local fact: the building official’s figure governs.',
    ...soilNotes(job),
    ...holeNotes(job, footings),
    ...longJoistNotes(job, longest),
    ...wildNotes(job),
    ...flushNotes(
      job,
      blocking.map(({ beam }) => beam),
    ),
    ...posts
      .filter((post) => post.length < SHORT_POST)
      .map(
        (post) =>
          `Post ${post.number} is only ${printLength(post.length)} long: see that its base and cap have room.`,
      ),
    ...blocking.flatMap(({ beam, leftOut }) =>
      leftOut.map(
        (one) =>
          `Bay ${one.bay} over beam ${beam.mark} is ${printLength(one.clear)} clear, under 3 in: no block there.`,
      ),
    ),
    ...(deckingShort > 0
      ? [
          `The last course ends ${printLength(deckingShort)} short of the overhang: one narrower than 1/4 in is left out.`,
        ]
      : []),
    ...new Set(
      strips.map(
        ({ member, length, width }) =>
          `Along ${printLength(length)} course ${member.mark} is only ${printLength(width)} wide, too narrow for screws: choose another gap or move the deck’s edge there; without a border the board beside it may jut out in its place.`,
      ),
    ),
  ]
}

/** Joists longer than stock, with no middle beam to joint them over. */
function longJoistNotes({ frame }: Job, longest: Ticks): readonly string[] {
  if (longest <= frame.joists.longest) return []
  return [
    `Joists of ${printLength(longest)} are longer than the ${printLength(frame.joists.longest)} stated as the longest to be had: see that the yard has them, or state a middle beam, over which they are jointed.`,
  ]
}

/** Decking that was to run wild and cannot. */
function wildNotes(job: Job): readonly string[] {
  if (job.cutting.deckingWild === 0 || runWild(job)) return []
  return [
    'The decking does not run wild: its courses are fitted to a border, a breaker, an opening or another part.',
  ]
}

/** How deep the deck is at a flush beam, and what that saves in height. */
function flushNotes(job: Job, beams: readonly Pick<Beam, 'mark' | 'flush' | 'size'>[]): readonly string[] {
  const board = sectionOf(job.decking.size).thickness
  const joist = sectionOf(job.frame.joists.size).depth
  return beams
    .filter(({ flush }) => flush)
    .map(({ mark, size }) => {
      const deep = ticks(board + sectionOf(size).depth)
      return `Beam ${mark} is flush: its underside lies ${printInches(deep)} under the top of the decking, where a dropped one would lie ${printInches(ticks(deep + joist))} under it. Prop it until its joists hang.`
    })
}

function soilNotes(job: Job): readonly string[] {
  const { soil } = job.site
  if (soil === 'unknown') {
    return [
      'The soil is not known and is taken as one that heaves: use smooth tubes, and have the bearing confirmed.',
    ]
  }
  if (soil === 'clay or silt') {
    return [
      'Clay and silt grip a rough pier and lift it as they freeze: the tube’s smooth side must reach the base.',
    ]
  }
  return []
}

function holeNotes(job: Job, footings: readonly Footing[]): readonly string[] {
  const notes: string[] = []
  for (const [i, footing] of footings.entries()) {
    const next = footings[i + 1]
    if (next !== undefined && next.y === footing.y && next.x - footing.x < footing.holeDiameter) {
      notes.push(`Holes ${footing.number} and ${next.number} run into each other: dig one trench.`)
    }
  }
  const nearest = footings.reduce(
    (least, one) => Math.min(least, one.y - one.holeDiameter / 2),
    Number.POSITIVE_INFINITY,
  )
  if (nearest < 0) {
    notes.push(
      job.site.attachment === 'freestanding'
        ? 'A hole reaches under the line of the rear rim: keep clear of the house’s footing, and ask before digging beside it.'
        : 'A hole reaches the house wall: keep clear of the house’s footing, and ask before digging beside it.',
    )
  }
  return notes
}
