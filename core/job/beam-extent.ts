import type { Ticks } from '../units/index.ts'
import type { FieldPath, Job } from './types.ts'

/** The deck's own size along its beams, by which their posts are counted: its depth where joists run along the house. */
export function beamExtent({ shape, size }: Pick<Job, 'shape' | 'size'>): Ticks {
  return shape.joists === 'along' ? size.depth : size.width
}

/** The field of that size. */
export function beamExtentField({ joists }: Pick<Job['shape'], 'joists'>): FieldPath {
  return joists === 'along' ? 'size.depth' : 'size.width'
}
