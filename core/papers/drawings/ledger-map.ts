import { inches, printInches, printLength } from '../../units/index.ts'
import type { LedgerFastening } from '../marking/ledger-fastenings.ts'
import type { Drawing, Primitive } from '../types.ts'
import { drawingOf, uprightDimension } from './shapes.ts'

const PITCH = inches(56)
const RADIUS = inches(1.25)
const FIGURES = inches(3)
const FIGURES_LONG = inches(22)

/** Ledgers as they hang on the wall, seen from the yard: fasteners in their two rows, joists as thin lines between them. */
export function ledgerMap(all: readonly LedgerFastening[], name: string): Drawing {
  const drawing = drawingOf(
    'ledger-fasteners',
    `${name} of the ledgers, seen from the yard`,
    all.flatMap((one, i) => drawn(one, i * PITCH)),
    inches(8),
  )
  return { ...drawing, y1: drawing.y1 + FIGURES_LONG, x0: drawing.x0 - inches(14) }
}

function drawn({ carrier, depth, rows, places, spacing }: LedgerFastening, y: number): readonly Primitive[] {
  const { id, length, from, label, marks, lines } = carrier
  const x = (at: number): number => (from === 'right' ? length - at : at)
  const circle = (at: number, row: number): Primitive => ({
    kind: 'circle',
    id,
    layer: 'joints',
    cx: x(at),
    cy: y + row,
    r: RADIUS,
    weight: 'medium',
    stroke: 'solid',
  })
  const upright = (at: number, stroke: 'hidden' | 'centre'): Primitive => ({
    kind: 'line',
    id,
    layer: 'beams',
    x1: x(at),
    y1: y,
    x2: x(at),
    y2: y + depth,
    weight: 'fine',
    stroke,
  })
  return [
    {
      kind: 'rect',
      id,
      layer: 'joists',
      x: 0,
      y,
      w: length,
      h: depth,
      weight: 'medium',
      stroke: 'solid',
      fill: 'wood',
    },
    {
      kind: 'text',
      id,
      layer: 'marks',
      x: 0,
      y: y - inches(8),
      text: `${label}, ${printLength(length)} long: ${places.length} places at ${printInches(spacing)} or closer, two at ${lines.length === 0 ? 'each end' : 'each end and on either side of the joint'}; tape hooked on the ${from} end${from === 'rear' || from === 'front' ? ', drawn at the left' : ''}`,
      anchor: 'start',
      size: 'normal',
    },
    ...marks.flatMap(({ at, wide }) => [upright(at, 'hidden'), upright(at + wide, 'hidden')]),
    ...lines.map(({ at }) => upright(at, 'centre')),
    ...places.flatMap(({ at, row }): readonly Primitive[] => [
      ...(row === 'bottom' ? [] : [circle(at, rows.top)]),
      ...(row === 'top' ? [] : [circle(at, rows.bottom)]),
      {
        kind: 'text',
        id,
        layer: 'dimensions',
        x: x(at),
        y: y + depth + FIGURES,
        text: printLength(at),
        anchor: 'end',
        size: 'small',
        turned: true,
      },
    ]),
    uprightDimension(id, y, y + rows.top, length, inches(5)),
    uprightDimension(id, y, y + rows.bottom, 0, -inches(5)),
  ]
}
