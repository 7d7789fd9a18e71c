import type { Design } from '../../estimate-types.ts'
import { edgeAt } from '../../geometry/index.ts'
import type { GuardPlan, GuardStretch } from '../../guard/index.ts'
import { spotAt } from '../../stairs/index.ts'
import { inches, printLength, ticks } from '../../units/index.ts'
import type { Drawing, Primitive } from '../types.ts'
import { houseWalls } from './house-walls.ts'
import { planGuard } from './plan-guard.ts'
import { planStairs } from './plan-stairs.ts'
import { drawingOf } from './shapes.ts'

/** How far outside an edge the figures of its posts stand, and how far inside it their marks. */
const OUT = inches(9)
const IN = inches(17)
/** The sign of the end from which an edge's posts are measured. */
const ORIGIN = inches(2.5)
const ORIGIN_OUT = inches(6)
const ORIGIN_BEFORE = inches(12)

/**
 * Every edge with a guard from above: the posts by their marks, and how far each stands from the edge's own beginning, a
 * ring with a 0 in front of it.
 */
export function guardPlan(design: Design, guard: GuardPlan): Drawing {
  const { layout } = design
  const edges = layout.levels.flatMap(({ outline, edges: own }) =>
    own.flatMap(({ number, kind }, i): readonly Primitive[] => {
      const { from, to } = edgeAt(outline, i)
      return kind === 'wall'
        ? []
        : [line(`edge-${number}`, 'decking', [from.x, from.y], [to.x, to.y], 'medium')]
    }),
  )
  const origins = [...Map.groupBy(guard.stretches, ({ edge }) => edge.id).values()].flatMap(([first]) =>
    first === undefined ? [] : origin(first),
  )
  return drawingOf(
    'guard-plan',
    'Guard from above',
    [
      ...houseWalls(design),
      ...edges,
      // what is written in the stairs stands on the framing plan; here the posts' marks do
      ...planStairs(design).filter(({ kind }) => kind !== 'text'),
      ...planGuard(design),
      ...guard.stretches.flatMap(placesOf),
      ...stairMarks(guard),
      ...origins,
    ],
    inches(14),
  )
}

/** The mark of each post inside the edge, its running figure outside; both outside of a landing, which has no room for marks. */
function placesOf({ edge, landing, posts }: GuardStretch): readonly Primitive[] {
  return posts.flatMap(({ id, at }): readonly Primitive[] => {
    const [from, to] = [spotAt(edge, at, 0), spotAt(edge, at, OUT - inches(3))]
    const [mark, figure] = [postMark(id), printLength(ticks(Math.round(at)))]
    return [
      line(id, 'guard', [from.x, from.y], [to.x, to.y], 'fine'),
      ...(landing === null
        ? [beside(id, edge, at, OUT, figure), beside(id, edge, at, -IN, mark)]
        : [beside(id, edge, at, OUT, `${mark}, ${figure}`)]),
    ]
  })
}

/** Marks of the posts beside stairs, in the middle of each: their places stand in the table. */
function stairMarks({ members }: GuardPlan): readonly Primitive[] {
  return members
    .filter(({ id }) => id.startsWith('stair-guard-post-'))
    .map(
      ({ id, mark, box }): Primitive => ({
        kind: 'text',
        id,
        layer: 'guard',
        x: (box.x0 + box.x1) / 2,
        y: (box.y0 + box.y1) / 2,
        text: mark,
        anchor: 'middle',
        size: 'small',
      }),
    )
}

/** As written on the wood: GP3 for guard-post-3. */
export function postMark(id: string): string {
  return `GP${id.split('-')[2]}`
}

/** A ring with a 0 where the tape is hooked. */
function origin({ edge, landing, number }: GuardStretch): readonly Primitive[] {
  const { x, y } = spotAt(edge, -ORIGIN_BEFORE, ORIGIN_OUT)
  const start = spotAt(edge, 0, 0)
  const level = Math.abs(edge.out.y) >= Math.abs(edge.out.x)
  const before = ORIGIN_BEFORE + inches(level ? 4 : 10)
  return [
    line(edge.id, 'guard', [start.x, start.y], [x, y], 'fine'),
    {
      kind: 'circle',
      id: edge.id,
      layer: 'guard',
      cx: x,
      cy: y,
      r: ORIGIN,
      weight: 'medium',
      stroke: 'solid',
    },
    beside(
      edge.id,
      edge,
      -before,
      ORIGIN_OUT,
      landing === null ? `0 of edge ${edge.number}` : `0 of stretch ${number}`,
      edge.along.x < 0 ? 'start' : 'end',
    ),
  ]
}

/** Words beside an edge, so far out: over an edge along the house centred, beside others towards the outside. */
function beside(
  id: string,
  edge: GuardStretch['edge'],
  at: number,
  out: number,
  words: string,
  along?: 'start' | 'end',
): Primitive {
  const { x, y } = spotAt(edge, at, out)
  const level = Math.abs(edge.out.y) >= Math.abs(edge.out.x)
  const outward = (out > 0 ? edge.out.x : -edge.out.x) > 0 ? 'start' : 'end'
  const anchor = level ? (along ?? 'middle') : outward
  return { kind: 'text', id, layer: 'guard', x, y, text: words, anchor, size: 'small' }
}

function line(
  id: string,
  layer: 'guard' | 'decking',
  [x1, y1]: readonly [number, number],
  [x2, y2]: readonly [number, number],
  weight: 'fine' | 'medium',
): Primitive {
  return { kind: 'line', id, layer, x1, y1, x2, y2, weight, stroke: 'solid' }
}
