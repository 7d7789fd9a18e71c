import type { Design } from '../../estimate-types.ts'
import type { Box, Member } from '../../frame/index.ts'
import { groundAt } from '../../layout/index.ts'
import { inches, printInches } from '../../units/index.ts'
import type { Drawing, Layer, Primitive } from '../types.ts'
import { drawingOf, levelDimension, uprightDimension } from './shapes.ts'
import { stairsReach, uprightGuard, uprightStairs } from './upright-extras.ts'

const BEYOND = inches(20)
const WALL_UP = inches(30)
const WALL_BESIDE = inches(8)
const FIRST = inches(26)
const NEXT = inches(14)

/** Heights are drawn upward: a page counts down, so z turns its sign. */
const up = (z: number): number => (z === 0 ? 0 : -z)

type View = 'section' | 'front' | 'side'

/** A box as it is seen: across the house along y, or from the yard along x. */
function seen(view: View, { x0, x1, y0, y1, z0, z1 }: Box): { x: number; y: number; w: number; h: number } {
  const [low, high] = view === 'front' ? [x0, x1] : [y0, y1]
  return { x: low, y: up(z1), w: high - low, h: z1 - z0 }
}

/** A member stands on the layer of what it is on the plan, so that each can be shown alone. */
function layerOf(role: Member['role']): Layer {
  if (role === 'beam ply') return 'beams'
  if (role === 'post') return 'posts'
  return role === 'decking' ? 'decking' : 'joists'
}

function rect(
  view: View,
  member: Pick<Member, 'id' | 'box' | 'role'>,
  look: {
    readonly fill: 'wood' | 'none'
    readonly weight: 'heavy' | 'medium' | 'fine'
    readonly hidden?: boolean
  },
): Primitive {
  return {
    kind: 'rect',
    id: member.id,
    layer: layerOf(member.role),
    ...seen(view, member.box),
    weight: look.weight,
    stroke: look.hidden === true ? 'hidden' : 'solid',
    fill: look.fill,
  }
}

/**
 * A section square to the house through the joist nearest the middle: what is cut stands heavy, what lies behind it
 * light, down to the bottom of the footings, with heights from the ground at the wall's left end.
 */
export function deckSection(design: Design): Drawing {
  const { frame, job } = design
  const middle = job.size.width / 2
  const joists = frame.members.filter(({ role }) => role === 'joist')
  const [joist] = [...joists].sort((a, b) => off(a, middle) - off(b, middle))
  const at = joist === undefined ? middle : (joist.box.x0 + joist.box.x1) / 2
  // the joist that goes on from this one over a middle beam stands beside its line
  const beside = joist === undefined ? 0 : joist.box.x1 - joist.box.x0
  const cut = frame.members.filter(({ box, role }) => {
    const room = role === 'joist' && beside < inches(2) ? beside : 0
    return role !== 'post' && role !== 'blocking' && box.x0 - room <= at && box.x1 + room >= at
  })
  const wood = cut.map((member) =>
    rect('section', member, {
      fill: 'wood',
      weight: member === joist || member.role === 'joist' ? 'medium' : 'heavy',
    }),
  )
  return view(design, 'section', 'Section square to the house', at, [...wood, ...names(design, cut)])
}

/** What each thing that is cut is, beside it: a person who holds only this sheet need not look it up. */
function names({ job, frame }: Design, cut: readonly Member[]): readonly Primitive[] {
  const say = (
    id: string,
    x: number,
    z: number,
    text: string,
    anchor: 'start' | 'middle' | 'end',
  ): Primitive => ({
    kind: 'text',
    id,
    layer: 'marks',
    x,
    y: up(z),
    text,
    anchor,
    size: 'small',
  })
  const beside = inches(5)
  const joist = frame.members.find(({ role }) => role === 'joist')
  // at its left no other post stands where the words do
  const [footing] = [...frame.footings].sort((a, b) => a.y - b.y)
  const ledger = frame.members.find(({ role }) => role === 'ledger')
  const { joists, postSize } = job.frame
  return [
    ...(joist === undefined
      ? []
      : [
          say(
            joist.id,
            (joist.box.y0 + joist.box.y1) / 2,
            (joist.box.z0 + joist.box.z1) / 2,
            `joists ${joists.size} at ${printInches(joists.spacing)} o.c.`,
            'middle',
          ),
        ]),
    ...(ledger === undefined
      ? []
      : [
          say(
            ledger.id,
            ledger.box.y1 + beside,
            ledger.box.z0 - inches(4),
            `ledger ${ledger.product.size}, flashed`,
            'start',
          ),
        ]),
    ...frame.beams.flatMap((beam) => {
      const ply = cut.find(({ id }) => beam.plyIds.includes(id))
      return ply === undefined
        ? []
        : [
            say(
              beam.id,
              ply.box.y0 - beside,
              (ply.box.z0 + ply.box.z1) / 2,
              `${beam.mark}: ${beam.plies}-${beam.size}`,
              'end',
            ),
          ]
    }),
    ...(footing === undefined
      ? []
      : [
          say(
            footing.id,
            footing.y - footing.tube / 2 - beside,
            footing.topOfConcrete + inches(6),
            `post ${postSize} on a base with stand-off`,
            'end',
          ),
          say(
            footing.id,
            footing.y - footing.holeDiameter / 2 - beside,
            footing.ground - footing.depth * 0.6,
            `tube ${printInches(footing.tube)}`,
            'end',
          ),
          ...(footing.base > 0
            ? [
                say(
                  footing.id,
                  footing.y - footing.holeDiameter / 2 - beside,
                  footing.ground - footing.depth + footing.baseThickness / 2,
                  `base ${printInches(footing.base)} × ${printInches(footing.baseThickness)}`,
                  'end',
                ),
              ]
            : []),
        ]),
  ]
}

/** The deck as it is seen from the yard, or from its left side. */
export function deckElevation(design: Design, side: 'front' | 'side'): Drawing {
  const shown = design.frame.members.filter(({ role }) => role !== 'post' && role !== 'blocking')
  const depthOf = ({ box }: Member): number => (side === 'front' ? box.y1 : -box.x0)
  const wood = [...shown]
    .sort((a, b) => depthOf(a) - depthOf(b))
    .map((member) => rect(side, member, { fill: 'wood', weight: 'fine' }))
  const title = side === 'front' ? 'Elevation from the yard' : 'Elevation from the left'
  return view(design, side, title, side === 'front' ? null : 0, wood)
}

function off({ box }: Member, middle: number): number {
  return Math.abs((box.x0 + box.x1) / 2 - middle)
}

function view(
  design: Design,
  is: View,
  title: string,
  at: number | null,
  wood: readonly Primitive[],
): Drawing {
  const primitives = [
    ...houseWall(design, is),
    ...ground(design, is, at),
    ...footings(design, is),
    ...posts(design, is),
    ...wood,
    ...uprightGuard(design, is),
    ...uprightStairs(design, is),
    ...heights(design, is),
  ]
  return drawingOf(`deck-${is}`, title, primitives, inches(8))
}

function houseWall({ job, layout, frame }: Design, is: View): readonly Primitive[] {
  if (job.site.attachment === 'freestanding') return []
  const low = Math.min(...frame.footings.map(({ ground: level }) => level), 0) - inches(12)
  const top = up(layout.deckTop + WALL_UP)
  const wall = (x: number, w: number): Primitive => ({
    kind: 'rect',
    id: 'house-wall',
    layer: 'house',
    x,
    y: top,
    w,
    h: up(low) - top,
    weight: 'medium',
    stroke: 'solid',
    fill: 'ground',
  })
  return is === 'front'
    ? [wall(-WALL_BESIDE, job.size.width + 2 * WALL_BESIDE)]
    : [wall(-inches(8), inches(8))]
}

/** The ground's line, read at so many places that a fall or spot heights are seen. */
function ground(design: Design, is: View, at: number | null): readonly Primitive[] {
  const { job } = design
  const long = Math.max(is === 'front' ? job.size.width : job.size.depth, stairsReach(design, is))
  const from = is === 'front' || job.site.attachment === 'freestanding' ? -BEYOND : 0
  const parts = 24
  const level = (along: number): number =>
    is === 'front' ? groundAt(job, along, job.size.depth) : groundAt(job, at ?? 0, along)
  const stops = Array.from({ length: parts + 1 }, (_, i) => from + ((long + BEYOND - from) * i) / parts)
  return stops.slice(1).map((x2, i): Primitive => {
    const x1 = stops[i] ?? from
    return {
      kind: 'line',
      id: 'ground',
      layer: 'footings',
      x1,
      y1: up(level(x1)),
      x2,
      y2: up(level(x2)),
      weight: 'heavy',
      stroke: 'solid',
    }
  })
}

function footings({ frame }: Design, is: View): readonly Primitive[] {
  return frame.footings.flatMap((footing): readonly Primitive[] => {
    const centre = is === 'front' ? footing.x : footing.y
    const bottom = footing.ground - footing.depth
    const part = (across: number, z0: number, z1: number): Primitive => ({
      kind: 'rect',
      id: footing.id,
      layer: 'footings',
      x: centre - across / 2,
      y: up(z1),
      w: across,
      h: z1 - z0,
      weight: 'fine',
      stroke: 'hidden',
      fill: 'none',
    })
    const base = footing.base > 0 ? footing.baseThickness : 0
    return [
      part(footing.tube, bottom + base, footing.topOfConcrete),
      ...(base > 0 ? [part(footing.base, bottom, bottom + base)] : []),
    ]
  })
}

function posts({ frame }: Design, is: View): readonly Primitive[] {
  return frame.members
    .filter(({ role }) => role === 'post')
    .map((member) => rect(is, member, { fill: 'wood', weight: 'medium' }))
}

/** Heights at the right: top of decking over the ground there, depth of the footing, and what stands between. */
function heights(design: Design, is: View): readonly Primitive[] {
  const { frame, job, layout } = design
  const last = frame.footings.reduce((a, b) => ((is === 'front' ? b.x > a.x : b.y > a.y) ? b : a))
  const across = is === 'front' ? job.size.width : job.size.depth
  const right = Math.max(across + job.decking.overhang, stairsReach(design, is))
  const bottom = last.ground - last.depth
  const post = frame.members.find(({ id }) => id === last.postId)
  const stops = [layout.deckTop, post?.box.z1 ?? layout.deckTop, post?.box.z0 ?? 0, last.ground, bottom]
  const chain = [...new Set(stops)].sort((a, b) => b - a)
  return [
    ...chain
      .slice(1)
      .map((z, i) => uprightDimension(`${is}-height-${i + 1}`, up(chain[i] ?? z), up(z), right, FIRST)),
    uprightDimension(`${is}-height`, up(layout.deckTop), up(last.ground), right, FIRST + NEXT),
    levelDimension(`${is}-across`, 0, across, up(bottom), FIRST),
  ]
}
