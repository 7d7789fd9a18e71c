import { sectionOf } from '../../data/index.ts'
import type { StringerPattern } from '../../stairs/index.ts'
import { inches, printLength, ticks } from '../../units/index.ts'
import type { Drawing, Primitive } from '../types.ts'
import { drawingOf, levelDimension } from './shapes.ts'

/** Room for running figures above the edge. */
const ABOVE = inches(4)
const ROOM = inches(16)

/**
 * A stringer lying on horses, its upper edge up and its lower end at the left: the steps as they are cut, or for a
 * closed one as its treads stand, the running figures along the edge from the lowest mark, and below how far that lies
 * from the board's lower end. A cut one is sawn off where the uppermost level cut ends: its head's plumb cut begins there.
 */
export function stringerDrawing(pattern: StringerPattern): Drawing {
  const { rise, run, topRun, step, drop, kind, marks, flight } = pattern
  const depth = sectionOf('2x12').depth
  const sine = rise / step
  const cosine = run / step
  const id = `stringer-${flight}`
  const stroke = kind === 'cut' ? 'solid' : 'hidden'
  const line = (
    from: Point,
    to: Point,
    as: 'solid' | 'hidden',
    weight: 'heavy' | 'medium' = 'heavy',
  ): Primitive => ({
    kind: 'line',
    id,
    layer: 'joists',
    x1: from[0],
    y1: from[1],
    x2: to[0],
    y2: to[1],
    weight,
    stroke: as,
  })
  const first = rise - drop + pattern.below
  // plumb and level as they lie when the board lies on its edge
  const foot: Point = [-lowestMark(pattern), first * cosine]
  const seat: Point = [foot[0] + ((depth - foot[1]) / sine) * cosine, depth]
  const end = headMark(pattern)
  const plumb: Point = [end - depth * (sine / cosine), depth]
  const head: Point = kind === 'cut' ? [(marks.length - 1) * step + topRun * cosine, topRun * sine] : [end, 0]
  const steps = marks.flatMap(({ riser }): readonly Primitive[] => {
    const from: Point = [(riser - 1) * step, 0]
    const isTop = riser === marks.length
    const level = isTop ? topRun : run
    const corner: Point = [from[0] + level * cosine, level * sine]
    if (isTop && kind === 'cut') return [line(from, corner, stroke)]
    return [line(from, corner, stroke), line(corner, isTop ? head : [riser * step, 0], stroke)]
  })
  return {
    ...drawingOf(
      id,
      `Stringer of flight ${flight}`,
      [
        ...(kind === 'cut'
          ? [
              line([foot[0], 0], [head[0], 0], 'hidden', 'medium'),
              line([head[0], 0], head, 'hidden', 'medium'),
            ]
          : [line([0, 0], head, 'solid')]),
        line([foot[0], 0], foot, 'hidden', 'medium'),
        levelDimension(`${id}-lowest`, foot[0], 0, depth, inches(3)),
        line([0, 0], foot, 'solid'),
        line(foot, seat, 'solid'),
        line(seat, plumb, 'solid'),
        line(plumb, head, 'solid'),
        ...steps,
        ...marks.map(
          ({ at, riser }): Primitive => ({
            kind: 'text',
            id: `${id}-mark-${riser}`,
            layer: 'dimensions',
            x: at,
            y: -ABOVE / 2,
            text: printLength(ticks(at)),
            anchor: 'start',
            size: 'small',
            turned: true,
          }),
        ),
      ],
      inches(4),
    ),
    y0: -ROOM,
  }
}

/** The lowest mark's distance from the board's lower end, which the foot's lowest point touches; exact. */
export function lowestMark({ rise, drop, below, step }: StringerPattern): number {
  return ((rise - drop + below) * rise) / step
}

/** Where a closed one's plumb cut at the head meets the upper edge, along it from the lowest mark; exact. */
export function headMark({ marks, step, run, topRun }: StringerPattern): number {
  return marks.length * step - ((run - topRun) * step) / run
}

type Point = readonly [number, number]
