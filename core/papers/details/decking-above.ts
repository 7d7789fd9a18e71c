import { sectionOf } from '../../data/index.ts'
import type { Job } from '../../job/index.ts'
import { inches } from '../../units/index.ts'
import type { Primitive } from '../types.ts'
import { box } from './detail.ts'

/** Decking seen on end over a joist, from its first edge onward: boards of their own width and thickness. */
export function deckingAbove({ decking }: Job, from: number, to: number, top: number): readonly Primitive[] {
  const { width, thickness } = boardOf(decking.size)
  const boards: Primitive[] = []
  for (let x = from; x < to; x += width + decking.gap)
    boards.push(box('decking', [x, top], [Math.min(to, x + width), top + thickness], { fill: 'wood' }))
  return boards
}

/** A board lying flat: across and thick, ticks. */
export function boardOf(size: Job['decking']['size']): {
  readonly width: number
  readonly thickness: number
} {
  const { depth, thickness } = sectionOf(size)
  return { width: depth, thickness }
}

/** Past what is drawn a member goes on: so far it is shown. */
export const GOES_ON = inches(14)
