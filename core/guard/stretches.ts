import { sectionOf } from '../data/index.ts'
import type { Frame } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import type { Level } from '../layout/index.ts'
import type { DeckEdge, StairPlan } from '../stairs/index.ts'
import { inches, ticks } from '../units/index.ts'
import { fillBay } from './bays.ts'
import { alongEdge, besideHigher, type EdgePart } from './beside-higher.ts'
import { joistsInto } from './joists-into.ts'
import type { GuardPost, GuardStretch } from './types.ts'

/** A post's face stands this far off a wall: common practice, no source. */
const OFF_WALL = inches(0.5)

/** Least clear opening that is worth rails; less is closed by the posts themselves. */
const LEAST_BAY = inches(4)

/** How a stretch ends: at a wall, at a corner that the next stretch turns, or free, as beside stairs. */
type End = 'wall' | 'corner' | 'free'

/** Stretches of guard along the guarded edges, left open where stairs leave. */
export function layStretches(
  job: Job,
  frame: Frame,
  edges: readonly DeckEdge[],
  guarded: ReadonlySet<string>,
  stairs: readonly StairPlan[],
  levels: readonly Level[],
): readonly GuardStretch[] {
  let number = 0
  let post = 0
  return edges.flatMap((edge, i) => {
    if (!guarded.has(edge.id)) return []
    const around = [edges[(i + edges.length - 1) % edges.length], edges[(i + 1) % edges.length]]
    const endAt = (spot: DeckEdge['near']): End => {
      const next = around.find((one) => one !== undefined && touches(one, spot))
      if (next?.wall === true) return 'wall'
      return next !== undefined && guarded.has(next.id) ? 'corner' : 'free'
    }
    const whole = { from: 0, to: edge.length, ends: [endAt(edge.near), endAt(edge.far)] as const }
    const opened = openedAt(waysOff(frame, edge, stairs, levels), whole)
    return opened.map(({ from, to, ends }) => {
      number += 1
      const [first, last] = [from + inset(job, ends[0]), to - inset(job, ends[1])]
      const places = postPlaces(job, joistsInto(frame, edge), first, last)
      const posts = places.map((place): GuardPost => {
        post += 1
        return { id: `guard-post-${post}`, ...place }
      })
      const width = sectionOf(job.guard.postSize).thickness
      const bays = posts.slice(1).flatMap(({ at }, k) => {
        const clear = ticks(Math.max(0, Math.floor(at - (posts[k]?.at ?? at) - width)))
        return clear < LEAST_BAY ? [] : [fillBay(job, clear, false)]
      })
      return { number, edge, from, to, posts, bays }
    })
  })
}

interface Span {
  readonly from: number
  readonly to: number
  readonly ends: readonly [End, End]
}

/** Where stairs or a step leave from an edge, or a level as high or higher stands along it: parts without a guard. */
function waysOff(
  { steps }: Frame,
  edge: DeckEdge,
  stairs: readonly StairPlan[],
  levels: readonly Level[],
): readonly EdgePart[] {
  const flights = stairs
    .filter((one) => one.edge.id === edge.id)
    .map(({ place, width }) => ({ from: place, to: place + width }))
  const boxes = steps
    .filter(({ edge: number }) => number === edge.number)
    .map(({ line }) => {
      const ends = line.map((point) => alongEdge(edge, point))
      return { from: Math.min(...ends), to: Math.max(...ends) }
    })
  return [...flights, ...boxes, ...besideHigher(edge, levels)].toSorted((a, b) => a.from - b.from)
}

/** What is left of an edge beside the ways off it. */
function openedAt(ways: readonly EdgePart[], whole: Span): readonly Span[] {
  if (ways.length === 0) return [whole]
  const spans: Span[] = []
  let from = whole.from
  let start = whole.ends[0]
  for (const way of ways) {
    if (way.from > from) spans.push({ from, to: way.from, ends: [start, 'free'] })
    from = Math.max(from, way.to)
    start = 'free'
  }
  spans.push({ from, to: whole.to, ends: [start, whole.ends[1]] })
  return spans.filter((span) => span.to - span.from >= inches(8))
}

/**
 * From the end of a stretch to the centre of its last post. Two posts stand at a corner, each far enough along its own
 * edge to clear the other behind the rim (common practice, no source).
 */
function inset(job: Job, end: End): number {
  const post = sectionOf(job.guard.postSize).thickness
  if (end === 'wall') return OFF_WALL + post / 2
  return end === 'corner' ? inches(1.5 + 1.25) + 1.5 * post : post / 2
}

/**
 * Posts from the first to the last, at most the stated distance apart. Where joists run into the edge each inner post is
 * moved beside the nearest one, as long as no opening becomes too wide; more posts are tried before that is given up.
 */
function postPlaces(
  job: Job,
  joists: readonly number[],
  first: number,
  last: number,
): readonly Omit<GuardPost, 'id'>[] {
  const post = sectionOf(job.guard.postSize).thickness
  const most = job.guard.postSpacing
  if (last - first < post) return [{ at: (first + last) / 2, onJoist: false }]
  const beside = joists.flatMap((joist) => [joist - (post + 48) / 2, joist + (post + 48) / 2])
  const fewest = Math.max(1, Math.ceil((last - first) / most - 1e-9))
  const ideal = (spaces: number) =>
    Array.from({ length: spaces + 1 }, (_, i) => first + (i * (last - first)) / spaces)
  if (joists.length > 0) {
    for (let spaces = fewest; spaces <= fewest + 1; spaces += 1) {
      const moved = ideal(spaces).map((at, i) => {
        const near = i === 0 || i === spaces ? undefined : nearest(beside, at, first + post, last - post)
        return near === undefined ? { at, onJoist: isBeside(beside, at) } : { at: near, onJoist: true }
      })
      if (moved.slice(1).every(({ at }, i) => at - (moved[i]?.at ?? at) <= most + 1e-6)) return moved
    }
  }
  return ideal(fewest).map((at) => ({ at, onJoist: false }))
}

function nearest(places: readonly number[], at: number, from: number, to: number): number | undefined {
  return places
    .filter((place) => place >= from && place <= to)
    .toSorted((a, b) => Math.abs(a - at) - Math.abs(b - at) || a - b)[0]
}

function isBeside(places: readonly number[], at: number): boolean {
  return places.some((place) => Math.abs(place - at) <= inches(3))
}

function touches(edge: DeckEdge, spot: DeckEdge['near']): boolean {
  return [edge.near, edge.far].some((end) => end.x === spot.x && end.y === spot.y)
}
