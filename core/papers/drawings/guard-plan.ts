import type { Design } from '../../estimate-types.ts'
import { edgeAt } from '../../geometry/index.ts'
import type { GuardPlan, GuardStretch } from '../../guard/index.ts'
import type { Level } from '../../layout/index.ts'
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
/** and how far from a post beside stairs its mark stands, in a flight that is 36 in wide at least */
const ON_TREADS = inches(9)
/** The sign of the end from which an edge's posts are measured. */
const ORIGIN = inches(2.5)
const ORIGIN_OUT = inches(6)
const ORIGIN_BEFORE = inches(12)

/**
 * Every edge with a guard from above, one drawing for each level: the posts by their marks, and how far each stands from
 * the edge's own beginning, a ring with a 0 in front of it. Levels meet, and in one drawing their figures would too.
 */
export function guardPlans(design: Design, guard: GuardPlan): readonly Drawing[] {
  const { levels } = design.layout
  if (levels.length === 1) return [guardPlan(design, guard, null)]
  return levels.flatMap((level) => {
    const own = ofLevel(design, guard, level)
    return own.stretches.length === 0 && own.stairs.length === 0
      ? []
      : [guardPlan({ ...design, guard: own }, own, level)]
  })
}

/** What of a guard stands on one level, and along the stairs that go down from it. */
function ofLevel({ stairs }: Design, guard: GuardPlan, level: Level): GuardPlan {
  const edges = new Set(level.edges.map(({ number }) => number))
  const down = stairs.filter(({ edge }) => edges.has(edge.number))
  const landings = new Set(down.map(({ number }) => number))
  const flights = new Set(down.flatMap((one) => one.flights.map(({ number }) => number)))
  const stretches = guard.stretches.filter(({ edge, landing }) =>
    landing === null ? edges.has(edge.number) : landings.has(landing),
  )
  const beside = guard.stairs.filter(({ flight }) => flights.has(flight))
  const posts = new Set(stretches.flatMap((stretch) => stretch.posts.map(({ id }) => id)))
  const blocks = new Set(guard.backing.flatMap(({ post, blocks: own }) => (posts.has(post) ? own : [])))
  const isBeside = (id: string): boolean =>
    beside.some(({ number }) => new RegExp(`^stair-guard-[a-z]+-${number}-`).test(id))
  const members = guard.members.filter(({ id }) => posts.has(id) || blocks.has(id) || isBeside(id))
  return { ...guard, stretches, stairs: beside, members }
}

function guardPlan(design: Design, guard: GuardPlan, level: Level | null): Drawing {
  const { layout, stairs } = design
  const shown = level === null ? layout.levels : [level]
  const edges = shown.flatMap(({ outline, edges: own }) =>
    own.flatMap(({ number, kind }, i): readonly Primitive[] => {
      const { from, to } = edgeAt(outline, i)
      return kind === 'wall'
        ? []
        : [line(`edge-${number}`, 'decking', [from.x, from.y], [to.x, to.y], 'medium')]
    }),
  )
  const numbers = new Set(shown.flatMap((one) => one.edges.map(({ number }) => number)))
  const down = stairs.filter(({ edge }) => numbers.has(edge.number))
  const isAtHouse = shown.some((one) => one.edges.some(({ kind }) => kind === 'wall'))
  const origins = [...Map.groupBy(guard.stretches, ({ edge }) => edge.id).values()].flatMap(([first]) =>
    first === undefined ? [] : origin(first),
  )
  const name = level === null ? '' : level.number
  return drawingOf(
    level === null ? 'guard-plan' : `guard-plan-${name}`,
    level === null ? 'Guard from above' : `Guard of level ${name} from above`,
    [
      ...(isAtHouse ? houseWalls(design) : []),
      ...edges,
      // what is written in the stairs stands on the framing plan; here the posts' marks do
      ...planStairs({ ...design, stairs: down }).filter(
        ({ kind }) => kind !== 'text' && kind !== 'dimension',
      ),
      ...planGuard(design),
      ...guard.stretches.flatMap(placesOf),
      ...stairMarks(guard, down),
      ...origins,
    ],
    inches(14),
    level === null,
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

/** Marks of the posts beside stairs, on the treads, where no running figure stands: their places stand in the table. */
function stairMarks({ members, stairs: guards }: GuardPlan, stairs: Design['stairs']): readonly Primitive[] {
  const flights = stairs.flatMap((one) => one.flights)
  return members
    .filter(({ id }) => id.startsWith('stair-guard-post-'))
    .map(({ id, mark, box }): Primitive => {
      const own = guards.find(({ number }) => id.startsWith(`stair-guard-post-${number}-`))
      const flight = flights.find(({ number }) => number === own?.flight)
      const inward =
        own === undefined || flight === undefined ? 0 : own.across > flight.width / 2 ? -ON_TREADS : ON_TREADS
      return {
        kind: 'text',
        id,
        layer: 'guard',
        x: (box.x0 + box.x1) / 2 + inward * (flight?.across.x ?? 0),
        y: (box.y0 + box.y1) / 2 + inward * (flight?.across.y ?? 0),
        text: mark,
        anchor: 'middle',
        size: 'small',
      }
    })
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
