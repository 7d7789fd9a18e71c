import type { Band } from '../geometry/index.ts'
import type { Job } from '../job/index.ts'
import type { ZoneView } from '../layout/index.ts'
import { printLength, ticks } from '../units/index.ts'
import { type Course, type Decked, partsOf } from './decking.ts'
import { type Dimensions, productOf } from './dimensions.ts'
import { boundsOf, cornersOf, placedBoard } from './footprint.ts'
import type { Laying } from './laying.ts'
import { linesEvery } from './runs.ts'
import type { Member } from './types.ts'

/** Breaker boards of a zone, along its joists, from the left; each is what its strip covers of the field. */
export function frameBreakers(
  job: Job,
  d: Dimensions,
  view: ZoneView,
  laying: Laying,
  { field, joists, openings }: Decked,
  first: number,
): readonly Course[] {
  if (laying.breakers.length === 0) return []
  const holes = openings.map(cornersOf)
  const bounds = boundsOf(field.flat())
  const half = laying.board / 2
  // one on the edge of a part belongs to its neighbour: no field makes way for it here
  const part = boundsOf(view.polygon)
  let number = first
  return laying.breakers
    .filter((at) => at > part.x0 && at < part.x1)
    .flatMap((at) => {
      const strip = cornersOf({ x0: at - half, x1: at + half, y0: bounds.y0, y1: bounds.y1 })
      const under = joists.filter(
        ({ place }) => place.under === 'breaker' && Math.abs(place.centre - at) < laying.board,
      )
      return partsOf(strip, field, holes).map((shape): Course => {
        const { x0, x1, y0, y1 } = boundsOf(shape)
        const low = (x: number) => endAt(shape, x, Math.min)
        const high = (x: number) => endAt(shape, x, Math.max)
        const beside = under.filter(({ from, to }) => from < y1 && to > y0)
        // past the end of a border, or a corner, it is notched where it lies: its corners are all of its shape's then
        const isNotched = shape.length > 4
        const levels = { z0: d.joistTop, z1: d.deckTop }
        const member: Member = {
          id: `breaker-${number}`,
          mark: `BB${number}`,
          role: 'decking',
          product: productOf(job, job.decking.size),
          ripTo: null,
          ...(isNotched
            ? {
                ...placedBoard(view, lengthwise(x0, x1, [y0, y1], [y0, y1]), levels, true),
                plan: shape.map(view.turned),
              }
            : placedBoard(view, lengthwise(x0, x1, [low(x0), high(x0)], [low(x1), high(x1)]), levels, true)),
          lay: { part: 'breaker', zone: view.zone.id, row: 1, degrees: 0, alongJoists: true },
          bearings: beside.map((joist) => joist.member.id),
          cause: {
            fields: [
              'decking.breakers',
              'decking.parts',
              'size.depth',
              'decking.overhang',
              'decking.wallGap',
            ],
            ids: beside.map((joist) => joist.member.id),
            rule: `A board along the joists, its middle ${printLength(at)} from the end that joists are laid out across; the others end against it on both sides, over two joists (common practice, no source)`,
          },
        }
        number += 1
        return {
          member,
          from: y0,
          lap: ticks(0),
          lines: linesEvery(
            job.frame.joists.spacing,
            member.length,
            (at) => beside.find(({ from, to }) => from <= y0 + at && to >= y0 + at)?.member ?? member,
          ),
        }
      })
    })
}

/** Corners of a board along the joists from where its left and its right edge begin and end. */
function lengthwise(
  x0: number,
  x1: number,
  left: readonly [number, number],
  right: readonly [number, number],
): Band {
  return [
    { x: x0, y: left[0] },
    { x: x0, y: left[1] },
    { x: x1, y: right[1] },
    { x: x1, y: right[0] },
  ]
}

/** Where a shape's left or right edge ends. */
function endAt(
  shape: readonly { readonly x: number; readonly y: number }[],
  x: number,
  pick: (...ys: readonly number[]) => number,
): number {
  return pick(...shape.filter((point) => Math.abs(point.x - x) < 0.05).map(({ y }) => y))
}
