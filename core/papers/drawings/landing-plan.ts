import type { Member } from '../../frame/index.ts'
import type { Platform, StairPlan } from '../../stairs/index.ts'
import { inches, printLength, ticks } from '../../units/index.ts'
import type { Drawing, LineWeight, Primitive, Stroke } from '../types.ts'
import { drawingOf, levelDimension, uprightDimension } from './shapes.ts'
import { pairs } from './stair-places.ts'

/** Below the landing, for the figures of its joists. */
const FIGURES = inches(3)
const FIGURES_LONG = inches(9)
/** From the mark of one ply to that of the next, more than plies are thick. */
const MARK_LINE = inches(3.5)

/**
 * A landing's frame from above with its marks, the way up to the deck at the top of the sheet: beams, joists with their
 * nearer edges from the left end, posts under the beams.
 */
export function landingPlan({ members, number }: StairPlan, platform: Platform): Drawing {
  const { depth, width } = platform
  const id = number === 1 ? 'landing-plan' : `landing-plan-${number}`
  const own = members.flatMap((member) => {
    const seen = seenOn(platform, member)
    return seen === null ? [] : [{ member, ...seen }]
  })
  const of = (role: Member['role']) => own.filter(({ member }) => member.role === role)
  const box = (
    { member, x0, y0, x1, y1 }: (typeof own)[number],
    look: { readonly stroke: Stroke; readonly weight: LineWeight; readonly fill: 'wood' | 'none' },
  ): Primitive => ({
    kind: 'rect',
    id: member.id,
    layer: 'joists',
    x: x0,
    y: y0,
    w: x1 - x0,
    h: y1 - y0,
    ...look,
  })
  const words = (
    of: string,
    x: number,
    y: number,
    text: string,
    anchor: 'start' | 'middle' | 'end' = 'middle',
    turned = false,
  ): Primitive => ({
    kind: 'text',
    id: of,
    layer: 'guard',
    x,
    y,
    text,
    anchor,
    size: 'small',
    ...(turned ? { turned } : {}),
  })
  const beams = of('landing beam')
  const joists = of('landing joist')
  const posts = of('landing post')
  const drawing = drawingOf(
    id,
    'Landing’s frame from above, the deck at the top',
    [
      ...beams.map((one) => box(one, { stroke: 'solid', weight: 'medium', fill: 'wood' })),
      ...joists.map((one) => box(one, { stroke: 'solid', weight: 'medium', fill: 'wood' })),
      ...of('landing post').map((one) => box(one, { stroke: 'hidden', weight: 'medium', fill: 'none' })),
      ...[true, false].flatMap((isNear) => {
        const plies = beams.filter(({ y0, y1 }) => y0 + y1 < depth === isNear).toSorted((a, b) => a.y0 - b.y0)
        const middle = plies.reduce((sum, { y0, y1 }) => sum + (y0 + y1) / 2, 0) / plies.length
        return plies.map(({ member }, i) =>
          words(member.id, -inches(4), middle + (i - (plies.length - 1) / 2) * MARK_LINE, member.mark, 'end'),
        )
      }),
      ...joists.flatMap(({ member, x0, x1 }) => [
        words(member.id, (x0 + x1) / 2, depth / 2, member.mark),
        words(member.id, (x0 + x1) / 2, depth + FIGURES, printLength(ticks(Math.round(x0))), 'end', true),
      ]),
      ...of('landing post').map(({ member, x0, x1, y0, y1 }) =>
        words(
          member.id,
          x0 < width / 2 ? x1 + inches(4) : x0 - inches(4),
          (y0 + y1) / 2 + (y0 < depth / 2 ? inches(6) : -inches(6)),
          member.mark,
        ),
      ),
      ...pairs(
        places(
          posts.map(({ x0, x1 }) => (x0 + x1) / 2),
          width,
        ),
      ).map(([from, to], i) => levelDimension(`landing-post-along-${i + 1}`, from, to, 0, -inches(5))),
      ...pairs(
        places(
          posts.map(({ y0, y1 }) => (y0 + y1) / 2),
          depth,
        ),
      ).map(([from, to], i) => uprightDimension(`landing-post-away-${i + 1}`, from, to, width, inches(5))),
      levelDimension(id, 0, width, 0, -inches(13)),
      uprightDimension(id, 0, depth, width, inches(13)),
    ],
    inches(4),
  )
  return { ...drawing, x0: drawing.x0 - inches(10), y1: drawing.y1 + FIGURES_LONG }
}

/** From side to side with the posts' middles between. */
function places(middles: readonly number[], end: number): readonly number[] {
  return [...new Set([0, ...middles.map((middle) => Math.round(middle)), end])].sort((a, b) => a - b)
}

/** A member's place on the landing: across it from its near side, and down from the edge towards the deck; null beyond it. */
function seenOn({ corner, across, down, depth, width }: Platform, { box }: Member) {
  const spots = [
    { x: box.x0, y: box.y0 },
    { x: box.x1, y: box.y1 },
  ].map(({ x, y }) => ({
    x: (x - corner.x) * across.x + (y - corner.y) * across.y,
    y: (x - corner.x) * down.x + (y - corner.y) * down.y,
  }))
  const xs = spots.map(({ x }) => x)
  const ys = spots.map(({ y }) => y)
  const [x0, x1, y0, y1] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)]
  const past = inches(6)
  return x0 < -past || y0 < -past || x1 > width + past || y1 > depth + past ? null : { x0, x1, y0, y1 }
}
