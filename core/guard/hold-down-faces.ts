import { sectionOf } from '../data/index.ts'
import { fromAbove, type Member } from '../frame/index.ts'
import { isInside, type Polygon } from '../geometry/index.ts'
import type { Job } from '../job/index.ts'
import { type DeckEdge, spotAt } from '../stairs/index.ts'
import { inches, TICKS_PER_INCH } from '../units/index.ts'
import { FRAME_WOOD } from './frame-wood.ts'
import type { Backing, GuardStretch, HoldDownFace } from './types.ts'

/** A hold-down's leg lies in line with the post's side; a shim may make up so much: common practice, no source. */
const SHIM = inches(0.5)

/** So much of a leg must lie on wood at least: common practice, no source; the hold-down's own sheet governs. */
export const LEAST_LEG = inches(3)

/** Wood this far behind a post is as good as any: legs are 7 in long, from memory. */
const LEG = inches(8)

const STEP = TICKS_PER_INCH / 4

/** A block that stands tight behind a post is a 2x on edge. */
const BLOCK = inches(1.5)

/** What is level with an edge's boards lies no further under its surface. */
const BOARDS = inches(2)

/**
 * What the leg of each post's hold-down is fixed to: a joist or a block whose side runs along the post's bolts, in line
 * with the post's side, behind what stands tight against the post. A block across the bolts has no such side.
 */
export function holdDownFaces(
  job: Job,
  stretches: readonly GuardStretch[],
  members: readonly Member[],
  backing: readonly Backing[],
): readonly HoldDownFace[] {
  const post = sectionOf(job.guard.postSize).thickness
  return stretches.flatMap(({ edge, behind, posts }) => {
    const wood = members
      .filter(isFrameWood)
      .filter(({ box }) => box.z1 <= edge.top && box.z1 > edge.top - BOARDS)
      .map((one): Wood => ({ id: one.id, shape: fromAbove(one) }))
    return posts.map(({ id, at }): HoldDownFace => {
      const blocks = backing.find((one) => one.post === id)?.blocks ?? []
      const inner = behind + post
      const tight = wood.some(
        (one) => blocks.includes(one.id) && isInside(one.shape, spotAt(edge, at, -(inner + STEP))),
      )
      const from = inner + (tight ? BLOCK : 0)
      const faces = [-1, 1].map((side) => faceBeside(edge, wood, { at, side, half: post / 2, from }))
      const [best] = faces.toSorted((a, b) => b.room - a.room)
      const found = best !== undefined && best.room >= LEAST_LEG ? best : null
      return {
        post: id,
        wood: found?.wood ?? null,
        room: found?.room ?? 0,
        clear: clearBehind(edge, wood, at, [behind, inner]),
      }
    })
  })
}

/** From the inner face of a post to the first wood straight behind its outer one; null beyond a leg's reach. */
function clearBehind(
  edge: DeckEdge,
  wood: readonly Wood[],
  at: number,
  [outer, inner]: readonly [number, number],
): number | null {
  for (let behind = outer; behind < inner + LEG; behind += STEP)
    if (woodAt(edge, wood, at, behind + STEP / 2) !== null) return behind - inner
  return null
}

interface Wood {
  readonly id: string
  readonly shape: Polygon
}

interface Beside {
  /** middle of the post along the edge, and which of its sides */
  readonly at: number
  readonly side: number
  readonly half: number
  /** where the leg begins, behind the edge */
  readonly from: number
}

/** The wood in line with one side of a post, and how far a leg runs along its side before something stands in its way. */
function faceBeside(
  edge: DeckEdge,
  wood: readonly Wood[],
  { at, side, half, from }: Beside,
): { readonly wood: string | null; readonly room: number } {
  const first = woodAt(edge, wood, at + side * (half + SHIM), from + STEP)
  if (first === null) return { wood: null, room: 0 }
  let room = 0
  while (
    room < LEG &&
    isInside(first.shape, spotAt(edge, at + side * (half + SHIM), -(from + room + STEP / 2))) &&
    woodAt(edge, wood, at, from + room + STEP / 2) === null &&
    woodAt(edge, wood, at + side * (half - SHIM), from + room + STEP / 2) === null
  )
    room += STEP
  return { wood: first.id, room }
}

function woodAt(edge: DeckEdge, wood: readonly Wood[], along: number, behind: number): Wood | null {
  const spot = spotAt(edge, along, -behind)
  return wood.find(({ shape }) => isInside(shape, spot)) ?? null
}

/** What carries a border is cut at posts. */
function isFrameWood({ role, cause }: Member): boolean {
  return role === 'guard blocking' || (FRAME_WOOD.has(role) && cause.fields[0] !== 'decking.border')
}
