import type { Design } from '../../estimate-types.ts'
import type { Box, Member } from '../../frame/index.ts'
import { isInside } from '../../geometry/index.ts'
import { groundAt } from '../../layout/index.ts'
import { inches } from '../../units/index.ts'
import type { Drawing, Layer, Primitive } from '../types.ts'
import { beyondNames, sectionNames } from './section-names.ts'
import { drawingOf, levelDimension, uprightDimension } from './shapes.ts'
import { stairsReach, stairsUnder, uprightStairs } from './upright-extras.ts'
import { uprightGuard } from './upright-guard.ts'
import { up, type View } from './upright-shapes.ts'

const BEYOND = inches(20)
const WALL_UP = inches(20)
const WALL_BESIDE = inches(8)
const FIRST = inches(26)
const NEXT = inches(14)
/** from the footings to the dimension under them */
const UNDER = inches(14)

type Footings = Design['frame']['footings']

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
  const place = sectionPlace(design, at, cut)
  // a beam that is not cut is seen beyond, on its posts, as far as the wall does not hide it
  const seenBeyond = frame.members
    .filter((member) => member.role === 'beam ply' && !cut.includes(member) && member.box.y1 > place.from)
    .filter((member) => !cut.some((other) => other.role === 'beam ply' && hides(other, member)))
    .map((member) => ({ ...member, box: { ...member.box, y0: Math.max(member.box.y0, place.from) } }))
  const beyond = seenBeyond.map((member) => rect('section', member, { fill: 'wood', weight: 'fine' }))
  return view(design, 'section', 'Section square to the house', place, [
    ...beyond,
    ...wood,
    ...sectionNames(design, cut, place.from),
    ...beyondNames(design, seenBeyond),
  ])
}

/** Whether what is cut stands before all of another: nothing of it is seen then. */
function hides({ box: before }: Member, { box: behind }: Member): boolean {
  return before.y0 <= behind.y0 && before.y1 >= behind.y1 && before.z0 <= behind.z0 && before.z1 >= behind.z1
}

/** What a view shows along its base line, ticks: from the wall, or the frame's rear, to the frame's front; or its sides. */
interface Place {
  readonly from: number
  readonly to: number
  /** of a section, along the wall */
  readonly at: number | null
}

/** A section's wall stands where its ledger does: beside a wall that steps back, not on the job's axis. */
function sectionPlace({ frame, job, layout }: Design, at: number, cut: readonly Member[]): Place {
  const ledger = cut.find(({ role }) => role === 'ledger')
  const framed = cut.filter(({ role }) => role === 'joist' || role === 'rim' || role === 'ledger')
  const boxes = (framed.length === 0 ? frame.members : framed).map(({ box }) => box)
  const attached = job.site.attachment === 'ledger'
  const [first] = layout.levels
  const front = Math.max(...(first?.outline ?? []).map(({ y }) => y))
  return {
    at,
    from: attached && ledger !== undefined ? ledger.box.y0 : Math.min(...boxes.map(({ y0 }) => y0)),
    to: Math.min(front, Math.max(...boxes.map(({ y1 }) => y1))),
  }
}

/** All levels from side to side, or from the first wall to the farthest front. */
function elevationPlace({ layout }: Design, side: 'front' | 'side'): Place {
  const along = layout.levels.flatMap(({ outline }) => outline.map(({ x, y }) => (side === 'front' ? x : y)))
  return { at: null, from: Math.min(...along), to: Math.max(...along) }
}

/** The deck as it is seen from the yard, or from its left side. */
export function deckElevation(design: Design, side: 'front' | 'side'): Drawing {
  const shown = design.frame.members.filter(({ role }) => role !== 'post' && role !== 'blocking')
  const depthOf = ({ box }: Member): number => (side === 'front' ? box.y1 : -box.x0)
  const wood = [...shown]
    .sort((a, b) => depthOf(a) - depthOf(b))
    .map((member) => rect(side, member, { fill: 'wood', weight: 'fine' }))
  const title = side === 'front' ? 'Elevation from the yard' : 'Elevation from the left'
  return view(design, side, title, elevationPlace(design, side), wood)
}

function off({ box }: Member, middle: number): number {
  return Math.abs((box.x0 + box.x1) / 2 - middle)
}

function view(design: Design, is: View, title: string, place: Place, wood: readonly Primitive[]): Drawing {
  // what stands behind the wall of a section is not seen
  const seenFrom = is === 'section' ? place.from : Number.NEGATIVE_INFINITY
  const standing = design.frame.footings.filter(({ y }) => y >= seenFrom)
  const primitives = [
    ...houseWall(design, is, place),
    ...ground(design, is, place),
    ...footings(standing, is),
    ...uprightStairs(design, is, 'behind the deck'),
    ...uprightGuard(design, is, 'behind the deck'),
    ...posts(design, standing, is),
    ...wood,
    ...uprightStairs(design, is, 'before it'),
    ...uprightGuard(design, is, 'before it'),
    ...heights(design, standing, is, place, Math.max(...wood.map(rightOf))),
  ]
  return drawingOf(`deck-${is}`, title, primitives, inches(8))
}

/** A section cuts the wall at its ledger; elevations show the house behind the deck from one end of its walls to the other. */
function houseWall({ job, layout, frame }: Design, is: View, place: Place): readonly Primitive[] {
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
  if (is === 'section') return [wall(place.from - WALL_BESIDE, WALL_BESIDE)]
  const [from, to] = wallReach({ layout }, is)
  return [wall(from, to - from)]
}

/** From one end of the house's walls to the other as they are seen; past the deck's own end the house goes on. */
function wallReach({ layout }: Pick<Design, 'layout'>, is: 'front' | 'side'): readonly [number, number] {
  const along = ({ x, y }: { readonly x: number; readonly y: number }): number => (is === 'front' ? x : y)
  const walls = layout.edges.filter(({ kind }) => kind === 'wall').flatMap(({ from, to }) => [from, to])
  const all = layout.outline.map(along)
  const [least, most] = [Math.min(...walls.map(along)), Math.max(...walls.map(along))]
  const from = least <= Math.min(...all) ? least - WALL_BESIDE : least
  const goesOn = is === 'front' && most >= Math.max(...all)
  return [from, goesOn ? most + WALL_BESIDE : most]
}

/** The ground's line, read at so many places that a fall or spot heights are seen. */
function ground(design: Design, is: View, place: Place): readonly Primitive[] {
  const { job } = design
  const long = Math.max(place.to, stairsReach(design, is))
  const from = is === 'front' || job.site.attachment === 'freestanding' ? place.from - BEYOND : place.from
  const parts = 24
  const level = (along: number): number =>
    is === 'front' ? groundAt(job, along, job.size.depth) : groundAt(job, place.at ?? 0, along)
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

function footings(standing: Footings, is: View): readonly Primitive[] {
  return standing.flatMap((footing): readonly Primitive[] => {
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

function posts({ frame }: Design, standing: Footings, is: View): readonly Primitive[] {
  const ids = new Set(standing.map(({ postId }) => postId))
  return frame.members
    .filter(({ id }) => ids.has(id))
    .map((member) => rect(is, member, { fill: 'wood', weight: 'medium' }))
}

/** How far right a part of the frame reaches as it is drawn. */
function rightOf(p: Primitive): number {
  return p.kind === 'rect' ? p.x + p.w : 0
}

/** Heights at the right: top of decking over the ground there, depth of the footing, and what stands between. */
function heights(
  design: Design,
  standing: Footings,
  is: View,
  place: Place,
  woodTo: number,
): readonly Primitive[] {
  const { frame, job, layout } = design
  const last = standing.reduce((a, b) => ((is === 'front' ? b.x > a.x : b.y > a.y) ? b : a))
  const right = Math.max(
    place.to + job.decking.overhang,
    woodTo,
    stairsReach(design, is),
    ...(is === 'section' || job.site.attachment === 'freestanding' ? [] : [wallReach(design, is)[1]]),
  )
  const bottom = last.ground - last.depth
  const post = frame.members.find(({ id }) => id === last.postId)
  const level = layout.levels.find(({ outline }) => isInside(outline, last))
  const deckTop = level?.deckTop ?? layout.deckTop
  const stops = [deckTop, post?.box.z1 ?? deckTop, post?.box.z0 ?? 0, last.ground, bottom]
  const chain = [...new Set(stops)].sort((a, b) => b - a)
  return [
    ...chain
      .slice(1)
      .map((z, i) => uprightDimension(`${is}-height-${i + 1}`, up(chain[i] ?? z), up(z), right, FIRST)),
    uprightDimension(`${is}-height`, up(deckTop), up(last.ground), right, FIRST + NEXT),
    ...(deckTop === layout.deckTop
      ? []
      : [
          uprightDimension(
            `${is}-height-first`,
            up(layout.deckTop),
            up(last.ground),
            right,
            FIRST + 2 * NEXT,
          ),
        ]),
    levelDimension(`${is}-across`, place.from, place.to, up(bottom), UNDER),
    ...stairsUnder(design, is, up(bottom), UNDER),
  ]
}
