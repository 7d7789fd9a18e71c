import { inches } from '../../units/index.ts'
import type { FieldSpec } from '../types.ts'

const COMMON = 'common practice, no source'

export const DECKING_FIELDS: readonly FieldSpec[] = [
  {
    path: 'decking.size',
    label: 'Decking size',
    section: 'decking',
    kind: 'choice',
    choices: ['5/4x6', '2x6', '2x4'],
    default: '5/4x6',
    help: 'The boards you walk on. They run along the house.',
    basis: COMMON,
  },
  {
    path: 'decking.overhang',
    label: 'Overhang',
    section: 'decking',
    kind: 'length',
    min: 0,
    max: inches(6),
    boundsReason: 'boards that reach further have nothing under them',
    default: '1 in',
    help: 'How far the decking reaches past the frame on the open sides.',
    basis: COMMON,
  },
  {
    path: 'decking.gap',
    label: 'Gap between boards',
    section: 'decking',
    kind: 'length',
    min: 0,
    max: inches(1),
    boundsReason: 'a wider gap catches heels and paws',
    default: '1/8 in',
    help: 'For dry boards. Treated boards laid wet take none: they shrink and open one.',
    basis: COMMON,
  },
  {
    path: 'decking.wallGap',
    label: 'Gap at the wall',
    section: 'decking',
    kind: 'length',
    min: 0,
    max: inches(2),
    boundsReason: 'a wider gap needs a filler board',
    default: '1/4 in',
    help: 'Between the first board and the house, so that water runs off.',
    basis: COMMON,
  },
]
