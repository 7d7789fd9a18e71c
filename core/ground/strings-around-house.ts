import type { Design } from '../estimate-types.ts'
import { type Ticks, ticks } from '../units/index.ts'
import { overallEdges } from './frame-edges.ts'
import { allHoles } from './holes.ts'
import type { LayoutString } from './layout-strings.ts'
import { type Sight, sightOf } from './sight.ts'

type Edge = Design['layout']['edges'][number]

/** What an edge's string is measured from: a wall that it runs beside, or the corner of a wall that it starts from. */
function edgeFrom(
  edges: Design['layout']['edges'],
  at: number,
  across: (point: { readonly x: number; readonly y: number }) => number,
): { readonly offset: Ticks; readonly from: string } | null {
  const beside = edges
    .filter(({ kind, from, to }) => kind === 'wall' && across(from) === across(to) && across(from) !== at)
    .sort((a, b) => Math.abs(across(a.from) - at) - Math.abs(across(b.from) - at))[0]
  if (beside === undefined) return null
  return { offset: ticks(Math.abs(across(beside.from) - at)), from: wallWords(beside, edges) }
}

/** A wall by the corners of the outline at its ends, the lower number first. */
export function wallWords(wall: Edge, edges: readonly Edge[]): string {
  return `the wall between corners ${wallCorners(wall, edges).join(' and ')}`
}

/** The numbers of the corners at a wall's ends, the lower first. */
export function wallCorners(wall: Edge, edges: readonly Edge[]): readonly number[] {
  const after = edges.find(({ from }) => from.x === wall.to.x && from.y === wall.to.y)
  return [wall.number, after?.number ?? wall.number].sort((a, b) => a - b)
}

/**
 * What a string is measured from: edges from a wall, where one runs beside; else those square to the wall's axis from the
 * left edge, those along it from the front edge.
 * @param axis on which it has its place: x where it is square to the wall's axis
 */
export function offsetOf(
  { layout }: Design,
  axis: 'x' | 'y',
  at: number,
  edge: boolean,
): { readonly offset: Ticks; readonly from: string } {
  const { left, front } = overallEdges(layout)
  const found = edge ? edgeFrom(layout.edges, at, (point) => point[axis]) : null
  if (found !== null) return found
  return axis === 'x'
    ? { offset: ticks(at - left), from: 'the left edge of the frame' }
    : { offset: ticks(front - at), from: 'the front edge of the frame' }
}

/** A string between the walls that stand in its way, on the side where its holes are, or the edge that it lies over. */
export function cutAtWalls(string: LayoutString, design: Design): LayoutString {
  const { layout } = design
  const sight = sightOf(layout)
  const over = string.edge
    ? layout.levels
        .flatMap(({ outline }) => outline)
        .filter(({ x, y }) => (string.x1 === string.x2 ? x === string.x1 : y === string.y1))
    : allHoles(design).filter(({ number }) => string.holes.includes(number))
  const [first] = over
  if (first === undefined) return string
  // in the middle of an edge: its ends may stand at the house
  const last = string.edge ? (over.at(-1) ?? first) : first
  const kept = { x: (first.x + last.x) / 2, y: (first.y + last.y) / 2 }
  const on = string.x1 === string.x2 ? { x: string.x1, y: kept.y } : { x: kept.x, y: string.y1 }
  const start = reach(on, { x: string.x1, y: string.y1 }, sight)
  const end = reach(on, { x: string.x2, y: string.y2 }, sight)
  return { ...string, x1: start.x, y1: start.y, x2: end.x, y2: end.y }
}

/** As far towards the end as a string goes clear of the house, to a tick. */
function reach(
  from: { readonly x: number; readonly y: number },
  end: { readonly x: number; readonly y: number },
  { isClear }: Sight,
): { readonly x: number; readonly y: number } {
  if (isClear(from, end)) return end
  const at = (t: number) => ({ x: from.x + (end.x - from.x) * t, y: from.y + (end.y - from.y) * t })
  let [free, barred] = [0, 1]
  while ((barred - free) * Math.hypot(end.x - from.x, end.y - from.y) > 1 / 2) {
    const middle = (free + barred) / 2
    if (isClear(from, at(middle))) free = middle
    else barred = middle
  }
  const found = at(barred)
  return { x: Math.round(found.x), y: Math.round(found.y) }
}
