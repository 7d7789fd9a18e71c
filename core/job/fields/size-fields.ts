import { feet } from '../../units/index.ts'
import type { FieldSpec } from '../types.ts'

export const SIZE_FIELDS: readonly FieldSpec[] = [
  {
    path: 'size.width',
    label: 'Width',
    section: 'size',
    kind: 'length',
    min: feet(4),
    max: feet(100),
    boundsReason: 'the program frames one deck along one wall',
    default: '20 ft',
    help: 'Along the house, outside of the frame: outer face of the left end joist to outer face of the right one. The decking may overhang it.',
    basis: 'a common size, to be replaced by yours',
  },
  {
    path: 'size.depth',
    label: 'Depth',
    section: 'size',
    kind: 'length',
    min: feet(4),
    max: feet(40),
    boundsReason: 'the program frames one deck along one wall',
    default: '12 ft',
    help: 'Away from the house, outside of the frame: face of the house band, where the ledger lies, to the outer face of the front rim.',
    basis: 'a common size, to be replaced by yours',
  },
  {
    path: 'size.height',
    label: 'Height',
    section: 'size',
    kind: 'length',
    min: feet(1),
    max: feet(14),
    boundsReason:
      'lower, no post fits under the beam; higher, the deck tables of the code end (IRC 2021, Table R507.4; its cap from memory)',
    default: '42 in',
    help: 'Top of the decking above the ground at the deck’s left corner at the wall, left as you look at the house.',
    basis: 'a common height, to be replaced by yours',
  },
]
