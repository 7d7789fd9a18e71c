import { IRC_LIMITS, type LumberSize, sectionOf } from '../data/index.ts'
import { without } from '../geometry/index.ts'
import type { Job } from '../job/index.ts'
import type { Level, OutlineEdge } from '../layout/index.ts'
import { inches, type Ticks, ticks } from '../units/index.ts'
import { productOf } from './dimensions.ts'
import { cornersOf, overlapOnPlan } from './footprint.ts'
import type { Box, LevelStep, Member } from './types.ts'

/** Levels no farther apart than this are stepped between: common practice, no source. */
const BESIDE = inches(3)
/** A handrail is needed from four risers (IRC 2021 R311.7.8): stairs, not a box. */
const MOST_RISERS = 3
/** Bearers of a box stand no farther apart: the span of 5/4 boards, IRC 2021 Table R507.7. */
const SPACING = inches(16)
/** Room for the guard's corner posts at either end of a step: common practice, no source. */
const BESIDE_STEP = inches(5)
/** Least stretch on which a step is built: the width of stairs, IRC 2021 R311.7.1, and the room beside it. */
const LEAST_STRETCH = inches(IRC_LIMITS.stairWidth.value) + 2 * BESIDE_STEP
/** Landing at the foot of steps, along the way: IRC 2021 R311.7.6. */
const LANDING = inches(36)
const BOX_SIZES = ['2x4', '2x6', '2x8'] as const satisfies readonly LumberSize[]

interface FramedStep {
  readonly step: LevelStep
  readonly members: readonly Member[]
}

/** Where a higher level's edge runs beside a lower one: along x or y, the lower one on its positive or negative side. */
interface Seam {
  readonly edge: OutlineEdge
  readonly axis: 'x' | 'y'
  /** the higher level's edge, across the axis */
  readonly at: number
  readonly side: 1 | -1
  /** from it to the lower level */
  readonly apart: number
  readonly from: number
  readonly to: number
}

/**
 * Box steps between levels of which one runs beside another, two or three risers below it: boxes one on the other on the
 * lower level's decking, against the higher one's rim, in the middle of the longest stretch that they share.
 */
export function frameLevelSteps(
  job: Job,
  levels: readonly Level[],
  decking: readonly Member[],
): readonly FramedStep[] {
  if (job.shape.steps === 'none') return []
  const steps: FramedStep[] = []
  for (const [i, one] of levels.entries()) {
    for (const other of levels.slice(i + 1)) {
      const [higher, lower] = one.deckTop >= other.deckTop ? [one, other] : [other, one]
      const step = stepBetween(job, higher, lower, decking, steps.length + 1)
      if (step !== null) steps.push(step)
    }
  }
  return steps
}

/** The higher level's fascia stands before its rim. */
function fasciaAt({ decking }: Job): number {
  return decking.fascia === 'none' ? 0 : sectionOf(decking.fascia).thickness
}

/** The fewest risers, each within IRC 2021 R311.7.5.1. */
export function risersFor(drop: number): number {
  return Math.ceil(drop / inches(IRC_LIMITS.riser.value))
}

function stepBetween(
  job: Job,
  higher: Level,
  lower: Level,
  decking: readonly Member[],
  number: number,
): FramedStep | null {
  const drop = ticks(higher.deckTop - lower.deckTop)
  const risers = risersFor(drop)
  if (risers < 2 || risers > MOST_RISERS) return null
  const longest = seamsOf(higher, lower).reduce<Seam | null>(
    (best, one) => (best === null || one.to - one.from > best.to - best.from ? one : best),
    null,
  )
  if (longest === null) return null
  const seam = { ...longest, at: longest.at + longest.side * fasciaAt(job) }
  const width = ticks(Math.min(job.shape.stepWidth, 2 * Math.floor((seam.to - seam.from) / 2 - BESIDE_STEP)))
  const from = Math.round((seam.from + seam.to - width) / 2)
  const treads = treadsOf(job, risers)
  const reach = treads.covers.at(-1) ?? 0
  const span = { from, to: from + width }
  if (!liesOn(lower, seam, span, reach)) return null
  const on = decking
    .filter(
      ({ box }) =>
        Math.abs(box.z1 - lower.deckTop) < 1 && overlapOnPlan(box, boxOf(seam, span, 0, reach, 0, 0)),
    )
    .map(({ id }) => id)
  const members = treads.covers
    .toReversed()
    .flatMap((cover, i) =>
      boxMembers(job, { seam, span, number, box: i + 1, cover, treads, on, risers, drop, lower }),
    )
  const [near, far] =
    seam.axis === 'x'
      ? [
          { x: span.from, y: seam.at },
          { x: span.to, y: seam.at },
        ]
      : [
          { x: seam.at, y: span.from },
          { x: seam.at, y: span.to },
        ]
  return {
    members,
    step: {
      id: `step-${number}`,
      higher: higher.number,
      lower: lower.number,
      edge: seam.edge.number,
      risers,
      drop,
      width,
      tread: ticks(Math.min(treads.first, treads.further)),
      landing: liesOn(lower, seam, span, reach + LANDING),
      line: [near, far],
      memberIds: members.map(({ id }) => id),
    },
  }
}

interface Treads {
  readonly board: LumberSize
  /** how far each box reaches from the higher level's edge, the top one first */
  readonly covers: readonly Ticks[]
  /** boards of the top box; each below has two more */
  readonly boards: number
  /** tread depths, nosing to nosing: under the higher level's overhang, and between boxes */
  readonly first: number
  readonly further: number
}

/** Boards enough for the least tread, IRC 2021 R311.7.5.2, past what the higher level's decking overhangs. */
function treadsOf(job: Job, risers: number): Treads {
  const { size, gap, overhang } = job.decking
  const plain = sectionOf(size).depth === inches(5.5) ? size : '5/4x6'
  const wide = sectionOf(plain).depth
  const least = inches(IRC_LIMITS.tread.value)
  const boards = Math.ceil((least + overhang + gap) / (wide + gap))
  const covers = Array.from({ length: risers - 1 }, (_, i) => {
    const count = boards + 2 * i
    return ticks(count * wide + (count - 1) * gap)
  })
  return { board: plain, covers, boards, first: (covers[0] ?? 0) - overhang, further: 2 * (wide + gap) }
}

interface OneBox {
  readonly seam: Seam
  readonly span: { readonly from: number; readonly to: number }
  readonly number: number
  /** from 1, the lowest first */
  readonly box: number
  readonly cover: Ticks
  readonly treads: Treads
  /** the lower level's boards that the lowest box stands on */
  readonly on: readonly string[]
  readonly risers: number
  readonly drop: Ticks
  readonly lower: Level
}

/** A frame of ripped boards, front and back between bearers, and its tread boards. */
function boxMembers(job: Job, one: OneBox): readonly Member[] {
  const { seam, span, number, box, cover, treads, risers, drop, lower } = one
  const { thickness } = sectionOf(treads.board)
  const rise = drop / risers
  const top = lower.deckTop + rise * box
  const bottom = lower.deckTop + rise * (box - 1)
  const high = ticks(Math.floor(rise - thickness))
  const size = BOX_SIZES.find((each) => sectionOf(each).depth >= high) ?? '2x8'
  const two = sectionOf(size).thickness
  const id = `step-${number}-box-${box}`
  const mark = `ST${number}-${box}`
  const fields = ['shape.steps', 'shape.stepWidth', 'shape.levels', 'size.height', 'decking.size']
  const frame = (name: string, letter: string, place: Box, length: number, rule: string): Member => ({
    id: `${id}-${name}`,
    mark: `${mark}${letter}`,
    role: 'step frame',
    product: productOf(job, size),
    length: ticks(Math.ceil(length)),
    ripTo: high < sectionOf(size).depth ? high : null,
    box: place,
    ...lineOf(seam, place, name.startsWith('bearer')),
    bearings: box === 1 ? one.on : [`step-${number}-box-${box - 1}-front`],
    cause: { fields, ids: [], rule },
  })
  const at = (a: number, b: number, low: number, far: number): Box =>
    boxOf(seam, { from: a, to: b }, low, far, bottom, bottom + high)
  const width = span.to - span.from
  const front = frame(
    'front',
    'F',
    at(span.from, span.to, cover - two, cover),
    width,
    'As long as the step is wide; ripped to the riser less the tread',
  )
  const back = frame(
    'back',
    'B',
    at(span.from, span.to, 0, two),
    width,
    'As long as the step is wide, against the higher level’s rim',
  )
  const gaps = Math.ceil((width - two) / SPACING)
  const bearers = Array.from({ length: gaps + 1 }, (_, i) => {
    const start = span.from + (i * (width - two)) / gaps
    return frame(
      `bearer-${i + 1}`,
      `C${i + 1}`,
      at(start, start + two, two, cover - two),
      cover - 2 * two,
      'Between front and back, 16 in apart at most (IRC 2021 Table R507.7)',
    )
  })
  const board = sectionOf(treads.board).depth
  const count = Math.round((cover + job.decking.gap) / (board + job.decking.gap))
  const boards = Array.from({ length: count }, (_, i): Member => {
    const low = i * (board + job.decking.gap)
    const place = boxOf(seam, span, low, low + board, top - thickness, top)
    return {
      id: `${id}-tread-${i + 1}`,
      mark: `${mark}T${i + 1}`,
      role: 'step tread',
      product: productOf(job, treads.board),
      length: ticks(Math.ceil(width)),
      ripTo: null,
      box: place,
      ...lineOf(seam, place, false),
      bearings: bearers.map((bearer) => bearer.id),
      cause: {
        fields: [...fields, 'decking.gap', 'decking.overhang'],
        ids: bearers.map((bearer) => bearer.id),
        rule: 'Boards enough for a tread of 10 in past the overhang (IRC 2021 R311.7.5.2); a box below carries two more',
      },
    }
  })
  return [front, back, ...bearers, ...boards]
}

/** The middle line of a board that does not lie along the house. */
function lineOf({ axis }: Seam, { x0, x1, y0, y1 }: Box, across: boolean): Pick<Member, 'line'> {
  if ((axis === 'x') !== across) return {}
  const x = (x0 + x1) / 2
  return {
    line: [
      { x, y: y0 },
      { x, y: y1 },
    ],
  }
}

/** A box between two places along a seam and two distances out from it. */
function boxOf(
  { axis, at, side }: Seam,
  { from, to }: { readonly from: number; readonly to: number },
  low: number,
  far: number,
  z0: number,
  z1: number,
): Box {
  const [a, b] = side === 1 ? [at + low, at + far] : [at - far, at - low]
  return axis === 'x'
    ? { x0: from, x1: to, y0: a, y1: b, z0, z1 }
    : { x0: a, x1: b, y0: from, y1: to, z0, z1 }
}

/** Whether a step of some reach stands wholly on a level; the gap between the two outlines is bridged. */
function liesOn(
  { outline }: Level,
  seam: Seam,
  span: { readonly from: number; readonly to: number },
  reach: number,
): boolean {
  const box = boxOf(seam, span, BESIDE, Math.max(reach, BESIDE + 1), 0, 0)
  return without([cornersOf(box)], [outline]).length === 0
}

/** Edges of the higher level along which the lower one lies, square to the house or along it, wide enough for a step. */
function seamsOf(higher: Level, lower: Level): readonly Seam[] {
  return higher.edges.flatMap((edge) => lower.edges.flatMap((other) => seamOf(edge, other) ?? []))
}

function seamOf(edge: OutlineEdge, other: OutlineEdge): Seam | null {
  for (const axis of ['x', 'y'] as const) {
    const across = axis === 'x' ? 'y' : 'x'
    if (edge.from[across] !== edge.to[across] || other.from[across] !== other.to[across]) continue
    // the outlines go round one way, so edges that face each other run opposite ways
    const way = Math.sign(edge.to[axis] - edge.from[axis])
    if (way === 0 || Math.sign(other.to[axis] - other.from[axis]) === way) continue
    const side = axis === 'x' ? (way > 0 ? -1 : 1) : way > 0 ? 1 : -1
    const apart = (other.from[across] - edge.from[across]) * side
    const [from, to] = [
      Math.max(Math.min(edge.from[axis], edge.to[axis]), Math.min(other.from[axis], other.to[axis])),
      Math.min(Math.max(edge.from[axis], edge.to[axis]), Math.max(other.from[axis], other.to[axis])),
    ]
    if (apart < 0 || apart > BESIDE || to - from < LEAST_STRETCH) continue
    return { edge, axis, at: edge.from[across], side, apart, from, to }
  }
  return null
}
