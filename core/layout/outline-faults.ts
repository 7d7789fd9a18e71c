import { firstCrossing } from '../geometry/index.ts'
import { edgeLengthList, edgeList, type Fault, type Job } from '../job/index.ts'
import { feet, inches, printLength, type Ticks, ticks } from '../units/index.ts'
import type { Outline } from './outline.ts'
import type { Level } from './types.ts'

/** Farthest corner from the deck's left end at the wall, either way. */
const REACH = feet(100)

/** A shorter edge has no room for the boards that meet there: common practice, no source. */
const LEAST_EDGE = inches(12)

/** What is wrong with a stated outline by itself. */
export function outlineFaults(job: Job, { corners, edges }: Outline): readonly Fault[] {
  const at = (message: string, fix: string, path = 'shape.outline'): Fault => ({ path, message, fix })
  if (job.shape.outline.trim() === '') return []
  const crossing = firstCrossing(corners)
  if (crossing !== null) {
    const [a, b] = crossing.map((i) => edges[i]?.number ?? 0).sort((one, other) => one - other)
    return [
      at(
        `edges ${a} and ${b} cross, touch or fold back on each other`,
        'name the corners in their order around the deck',
      ),
    ]
  }
  const faults: Fault[] = []
  const least = (axis: 'x' | 'y'): Ticks => ticks(Math.min(...corners.map((corner) => corner[axis])))
  for (const [axis, where] of [
    ['x', 'the left end'],
    ['y', 'the wall'],
  ] as const) {
    const first = least(axis)
    if (first === 0) continue
    faults.push(
      at(
        `${axis} is measured from ${where}, and the corner nearest to it is at ${printLength(first)}`,
        `${first > 0 ? 'take' : 'add'} ${printLength(ticks(Math.abs(first)))} ${first > 0 ? 'off' : 'to'} every ${axis}`,
      ),
    )
  }
  const far = corners.findIndex(({ x, y }) => x > REACH || y > REACH)
  if (far >= 0)
    faults.push(
      at(`a corner lies more than ${printLength(REACH)} out`, 'the program frames one deck of one house'),
    )
  for (const { number, from, to } of edges) {
    const length = Math.hypot(to.x - from.x, to.y - from.y)
    if (length >= LEAST_EDGE) continue
    faults.push(
      at(
        `edge ${number} is only ${printLength(ticks(Math.round(length)))} long`,
        `make it ${printLength(LEAST_EDGE)} at least, or leave a corner out`,
      ),
    )
  }
  return faults
}

/** Edges that walls or setbacks are stated for and that the deck does not have; a setback may be of a further level's. */
export function unknownEdges(
  job: Job,
  edges: Outline['edges'],
  further: readonly Pick<Level, 'edges'>[],
): readonly Fault[] {
  const own = edges.map(({ number }) => number)
  const all = [...own, ...further.flatMap((level) => level.edges.map(({ number }) => number))]
  const named = [
    ...edgeList(job.shape.walls).map((number) => ({ number, path: 'shape.walls', known: own })),
    ...edgeLengthList(job.shape.setbacks).map(({ edge }) => ({
      number: edge,
      path: 'shape.setbacks',
      known: all,
    })),
  ]
  return named
    .filter(({ number, known }) => !known.includes(number))
    .slice(0, 1)
    .map(({ number, path }) => ({
      path,
      message: `there is no edge ${number}: the outline has ${edges.length}`,
      fix: `name edges from 1 to ${edges.length}; edge 1 runs from the first corner to the second`,
    }))
}
