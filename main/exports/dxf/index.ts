import {
  DxfWriter,
  LWPolylineFlags,
  point2d,
  point3d,
  TextHorizontalAlignment,
  TextVerticalAlignment,
  Units,
} from '@tarikjabiri/dxf'
import {
  type Drawing,
  type Layer,
  type Primitive,
  type Stroke,
  strokeWithin,
} from '../../../core/papers/index.ts'
import { dxfText } from './text.ts'

const INCH = 32
/** height of letters in inches of the deck: 3/32 in on paper at 1/4 in to the foot */
const LETTER = { small: 4.5, normal: 6 } as const
const LINE_TYPES: { readonly [stroke in Stroke]: string } = {
  solid: 'Continuous',
  hidden: 'HIDDEN',
  centre: 'CENTER',
}
const LAYERS: readonly Layer[] = [
  'house',
  'decking',
  'joists',
  'beams',
  'posts',
  'footings',
  'strings',
  'stairs',
  'guard',
  'dimensions',
  'joints',
  'marks',
]

/**
 * A drawing as DXF (AC1021) in inches at full size, y upward, a layer of the same name for each of its layers.
 * Dimensions are lines and text on layer dimensions, which every reader shows. The same drawing gives the same bytes.
 */
export function makeDxf(drawing: Drawing): string {
  const dxf = new DxfWriter()
  dxf.setUnits(Units.Inches)
  dxf.addLType('HIDDEN', 'hidden __ __ __', [0.25, -0.125])
  dxf.addLType('CENTER', 'centre ____ _ ____', [1.25, -0.25, 0.25, -0.25])
  // a linetype's dashes are in drawing units: at full size they would be too fine to see
  dxf.setVariable('$LTSCALE', { 40: 24 })
  for (const layer of LAYERS) dxf.addLayer(layer, 7, 'Continuous')
  for (const primitive of drawing.primitives) write(dxf, primitive)
  return dxf.stringify()
}

const X = (ticks: number): number => ticks / INCH
const Y = (ticks: number): number => (ticks === 0 ? 0 : -ticks / INCH)

function write(dxf: DxfWriter, p: Primitive): void {
  const layerName = p.layer
  const line = (x1: number, y1: number, x2: number, y2: number, stroke: Stroke = 'solid'): void => {
    dxf.addLine(point3d(X(x1), Y(y1)), point3d(X(x2), Y(y2)), { layerName, lineType: LINE_TYPES[stroke] })
  }
  const outline = (points: readonly { readonly x: number; readonly y: number }[]): void => {
    const stroke = 'stroke' in p ? p.stroke : 'solid'
    dxf.addLWPolyline(
      points.map(({ x, y }) => ({ point: point2d(X(x), Y(y)) })),
      { layerName, flags: LWPolylineFlags.Closed, lineType: LINE_TYPES[stroke] },
    )
  }
  switch (p.kind) {
    case 'rect':
      outline([
        { x: p.x, y: p.y },
        { x: p.x + p.w, y: p.y },
        { x: p.x + p.w, y: p.y + p.h },
        { x: p.x, y: p.y + p.h },
      ])
      break
    case 'polygon':
      outline(p.points)
      break
    case 'line':
      line(p.x1, p.y1, p.x2, p.y2, p.stroke)
      break
    case 'circle':
      dxf.addCircle(point3d(X(p.cx), Y(p.cy)), X(p.r), { layerName, lineType: LINE_TYPES[p.stroke] })
      break
    case 'text':
      words(dxf, layerName, p.x, p.y, p.text, LETTER[p.size], p.anchor, p.turned === true)
      break
    case 'joint': {
      const reach = strokeWithin(p.half) ?? p.half + 2 * INCH
      if (p.along === 'x') line(p.x, p.y - reach, p.x, p.y + reach)
      else line(p.x - reach, p.y, p.x + reach, p.y)
      break
    }
    case 'dimension':
      dimension(dxf, p, line)
  }
}

type Anchor = 'start' | 'middle' | 'end'
const ALIGN: { readonly [anchor in Anchor]: TextHorizontalAlignment } = {
  start: TextHorizontalAlignment.Left,
  middle: TextHorizontalAlignment.Center,
  end: TextHorizontalAlignment.Right,
}

function words(
  dxf: DxfWriter,
  layerName: Layer,
  x: number,
  y: number,
  text: string,
  height: number,
  anchor: Anchor,
  turned: boolean,
): void {
  const at = point3d(X(x), Y(y))
  dxf.addText(at, height, dxfText(text), {
    layerName,
    horizontalAlignment: ALIGN[anchor],
    verticalAlignment: TextVerticalAlignment.Middle,
    secondAlignmentPoint: at,
    ...(turned ? { rotation: 90 } : {}),
  })
}

function dimension(
  dxf: DxfWriter,
  p: Extract<Primitive, { kind: 'dimension' }>,
  line: (x1: number, y1: number, x2: number, y2: number) => void,
): void {
  const upright = Math.abs(p.x2 - p.x1) < Math.abs(p.y2 - p.y1)
  const [dx, dy] = upright ? [p.offset, 0] : [0, p.offset]
  line(p.x1, p.y1, p.x1 + dx, p.y1 + dy)
  line(p.x2, p.y2, p.x2 + dx, p.y2 + dy)
  line(p.x1 + dx, p.y1 + dy, p.x2 + dx, p.y2 + dy)
  const above = LETTER.small * INCH
  const x = (p.x1 + p.x2) / 2 + dx - (upright ? above : 0)
  const y = (p.y1 + p.y2) / 2 + dy - (upright ? 0 : above)
  words(dxf, p.layer, x, y, p.text, LETTER.small, 'middle', upright)
}
