import { type LumberSize, sectionOf } from '../data/index.ts'
import type { Cause, Frame, Member, ProductClass, Role } from '../frame/index.ts'
import { type FieldPath, furtherStairs, type Job } from '../job/index.ts'
import { type StairPlan, spotAt } from '../stairs/index.ts'
import { feet, inches, type Ticks, ticks } from '../units/index.ts'
import type { GuardStretch, StairGuard } from './types.ts'
import { underBorderAt } from './under-border.ts'

/** A cap comes in pieces no longer than this, each ending over a post: common practice, no source. */
const LONGEST_CAP = feet(16)

/** A post beside stairs reaches this far down past the nosings, along the stringer: common practice, no source. */
const BELOW_NOSING = inches(18)

const RAIL: LumberSize = '2x4'

/** Thickness of the cap rail; nothing where there is none. */
export function capThickness(job: Job): number {
  return job.guard.cap === 'none' ? 0 : sectionOf(job.guard.cap).thickness
}

/** Posts, rails, caps and the blocking behind the posts, of the deck's guard and of the stairs'. */
export function guardMembers(
  job: Job,
  stretches: readonly GuardStretch[],
  beside: readonly StairGuard[],
  stairs: readonly StairPlan[],
  frame: Frame,
): readonly Member[] {
  return [
    ...stretches.flatMap((stretch) => [
      ...posts(job, stretch),
      ...rails(job, stretch),
      ...caps(job, stretch),
      ...blocks(job, stretch),
      ...borderBlocks(job, stretch, frame),
    ]),
    ...beside.flatMap((one, side) => {
      const plan = stairs.find(({ flights }) => flights.some(({ number }) => number === one.flight))
      return stairLumber(job, one, side + 1, furtherStairs(plan?.branch ?? 'stairs', 'stairs.kind'))
    }),
  ]
}

function posts(job: Job, { edge, posts: placed }: GuardStretch): readonly Member[] {
  const { postSize, height } = job.guard
  const joist = sectionOf(job.frame.joists.size).depth
  const decking = sectionOf(job.decking.size).thickness
  const length = ticks(joist + decking + height - capThickness(job))
  const half = sectionOf(postSize).thickness / 2
  return placed.map(({ id, at }) => {
    const centre = spotAt(edge, at, -(inches(1.5) + half))
    return stick(job, {
      id,
      mark: `GP${id.split('-')[2]}`,
      role: 'guard post',
      size: postSize,
      length,
      around: centre,
      half,
      top: edge.top + height,
      cause: {
        fields: ['guard.height', 'guard.postSize', 'guard.postSpacing', 'frame.joists.size'],
        ids: [],
        rule: 'From the joists’ lower edge to the cap; inside the rim, not notched (AWC DCA 6)',
      },
    })
  })
}

function rails(job: Job, { number, bays, edge, from }: GuardStretch): readonly Member[] {
  if (job.guard.infill === 'panels') return []
  return bays.flatMap(({ clear }, i) =>
    ['top', 'bottom'].map((which) =>
      stick(job, {
        id: `guard-rail-${number}-${i + 1}-${which}`,
        mark: `GR${number}-${i + 1}`,
        role: 'guard rail',
        size: RAIL,
        length: clear,
        around: spotAt(edge, from, 0),
        half: 0,
        top: edge.top + job.guard.height,
        cause: {
          fields: ['guard.infill', 'guard.postSpacing'],
          ids: [],
          rule: 'Between two posts, one at the top and one 3-1/2 in above the deck (common practice, no source)',
        },
      }),
    ),
  )
}

/** Pieces of cap along a stretch, each as many bays as make no more than 16 ft. */
function caps(job: Job, stretch: GuardStretch): readonly Member[] {
  const { number, edge, from, to, posts: placed } = stretch
  const { cap, height } = job.guard
  if (cap === 'none') return []
  const stops = [...placed.slice(1, -1).map(({ at }) => at), to]
  const lengths: number[] = []
  let start = from
  for (const [i, stop] of stops.entries()) {
    const next = stops[i + 1]
    if (next === undefined || next - start > LONGEST_CAP) {
      lengths.push(stop - start)
      start = stop
    }
  }
  return lengths.map((length, i) =>
    stick(job, {
      id: `guard-cap-${number}-${i + 1}`,
      mark: `GC${number}-${i + 1}`,
      role: 'guard cap',
      size: cap,
      length: ticks(Math.ceil(length)),
      around: spotAt(edge, from, 0),
      half: 0,
      top: edge.top + height,
      cause: {
        fields: ['guard.cap', 'size.width', 'size.depth'],
        ids: [],
        rule: 'On the posts from end to end, jointed over a post, 16 ft at most (common practice, no source)',
      },
    }),
  )
}

/** One block behind a post beside a joist, two bays of them where the joists lie along the edge. */
function blocks(job: Job, { edge, posts: placed }: GuardStretch): readonly Member[] {
  const { size, spacing } = job.frame.joists
  const clear = ticks(spacing - sectionOf(size).thickness)
  return placed.flatMap(({ id, at, onJoist }) =>
    Array.from({ length: onJoist ? 1 : 2 }, (_, i) =>
      stick(job, {
        id: `guard-blocking-${id.split('-')[2]}-${i + 1}`,
        mark: `GB${id.split('-')[2]}`,
        role: 'guard blocking',
        size,
        length: clear,
        around: spotAt(edge, at, -inches(4)),
        half: 0,
        top: edge.top - sectionOf(job.decking.size).thickness,
        cause: {
          fields: ['guard.where', 'frame.joists.spacing'],
          ids: [id],
          rule: onJoist
            ? 'One block behind each post that stands beside a joist, so that more than one joist takes its load (IRC 2021 R507.10, read in summaries)'
            : 'Blocks in two bays behind each post along a joist, so that more than one joist takes its load (IRC 2021 R507.10, read in summaries)',
        },
      }),
    ),
  )
}

/** Blocks on both sides of each post that stands in what lies under a border's inner edge, which is cut there. */
function borderBlocks(job: Job, { edge, posts: placed }: GuardStretch, frame: Frame): readonly Member[] {
  const { size, spacing } = job.frame.joists
  const half = sectionOf(job.guard.postSize).thickness / 2
  return placed.flatMap(({ id, at }) => {
    const cut = underBorderAt(frame, spotAt(edge, at, -(inches(1.5) + half)), half)
    if (cut.length === 0) return []
    return [-1, 1].map((side, i) =>
      stick(job, {
        id: `guard-border-blocking-${id.split('-')[2]}-${i + 1}`,
        mark: `GK${id.split('-')[2]}`,
        role: 'guard blocking',
        size,
        length: ticks(spacing - sectionOf(size).thickness),
        around: spotAt(edge, at + side * (half + inches(0.75)), -inches(4)),
        half: 0,
        top: edge.top - sectionOf(job.decking.size).thickness,
        cause: {
          fields: ['decking.border', 'guard.where', 'guard.postSpacing'],
          ids: [id, ...cut],
          rule: 'One block on each side of a post that stands where a border’s inner edge is carried: it carries what is cut there (common practice, no source)',
        },
      }),
    )
  })
}

function stairLumber(job: Job, guard: StairGuard, side: number, askedBy: FieldPath): readonly Member[] {
  const { postSize, height, infill, cap } = job.guard
  const cause: Cause = {
    fields: ['guard.where', askedBy],
    ids: [`stringer-${guard.flight}-1`],
    rule: 'Beside stairs that rise more than 30 in (IRC 2021 R312.1.1)',
  }
  const piece = (id: string, mark: string, role: Role, size: LumberSize, length: Ticks) =>
    stick(job, { id, mark, role, size, length, around: { x: 0, y: 0 }, half: 0, top: 0, cause })
  const bay = ticks(Math.ceil(guard.length / guard.bays.length))
  return [
    ...Array.from({ length: guard.posts }, (_, i) =>
      piece(
        `stair-guard-post-${side}-${i + 1}`,
        `SG${side}-${i + 1}`,
        'guard post',
        postSize,
        ticks(height + BELOW_NOSING),
      ),
    ),
    ...(infill === 'panels'
      ? []
      : guard.bays.flatMap((_, i) =>
          ['top', 'bottom'].map((which) =>
            piece(
              `stair-guard-rail-${side}-${i + 1}-${which}`,
              `SR${side}-${i + 1}`,
              'guard rail',
              RAIL,
              bay,
            ),
          ),
        )),
    ...(cap === 'none'
      ? []
      : guard.bays.map((_, i) =>
          piece(`stair-guard-cap-${side}-${i + 1}`, `SC${side}-${i + 1}`, 'guard cap', cap, bay),
        )),
  ]
}

interface Stick {
  readonly id: string
  readonly mark: string
  readonly role: Role
  readonly size: LumberSize
  readonly length: Ticks
  readonly around: { readonly x: number; readonly y: number }
  readonly half: number
  readonly top: number
  readonly cause: Cause
}

function stick(job: Job, { id, mark, role, size, length, around, half, top, cause }: Stick): Member {
  const { species, grade, treatment } = job.frame
  const product: ProductClass = { size, species, grade, treatment }
  return {
    id,
    mark,
    role,
    product,
    length,
    ripTo: null,
    box: {
      x0: around.x - half,
      x1: around.x + half,
      y0: around.y - half,
      y1: around.y + half,
      z0: top - length,
      z1: top,
    },
    bearings: [],
    cause,
  }
}
