import type { Design } from '../../estimate-types.ts'
import type { Beam } from '../../frame/index.ts'
import { inches } from '../../units/index.ts'
import type { Primitive } from '../types.ts'
import type { Side } from './outline-sides.ts'
import { levelDimension, uprightDimension } from './shapes.ts'

/** A chain inside the deck stands so far off the footings; a dimension there keeps so much off the joists. */
const OFF_FOOTINGS = inches(6)
const OFF_JOISTS = inches(2)

/** Posts of the beams along a side, measured from its ends, outside it. */
export function chainOutside({ number, edge: { from, to }, beams }: Side, out: number): readonly Primitive[] {
  const isLevel = from.y === to.y
  const [start, end] = isLevel ? [from.x, to.x] : [from.y, to.y]
  const ends = [Math.min(start, end), Math.max(start, end)]
  const posts = beams.flatMap(postPlaces)
  const stops = [...new Set([...ends, ...posts])].sort((a, b) => a - b)
  return chain(`edge-${number}`, stops, isLevel, isLevel ? from.y : from.x, out)
}

/** Posts of a beam that follows no side, beside the beam's own line and clear of its footings. */
export function chainBeside(beam: Beam, { footings }: Design['frame']): readonly Primitive[] {
  const { line, length, id } = beam
  const [from, to] = line
  const isLevel = from.y === to.y
  if (!isLevel && from.x !== to.x) return []
  const start = isLevel ? from.x : from.y
  const stops = [...new Set([start, ...postPlaces(beam), start + length])].sort((a, b) => a - b)
  const widest = Math.max(
    0,
    ...footings
      .filter(({ postId }) => beam.postIds.includes(postId))
      .map(({ base, tube }) => Math.max(base, tube)),
  )
  // the posts' numbers stand on the other side
  const way = beam.beam === 'front' ? -1 : 1
  return chain(id, stops, isLevel, isLevel ? from.y : from.x, way * (widest / 2 + OFF_FOOTINGS))
}

/** How far a beam lies behind the side that it follows, between its first two posts and clear of the joists. */
export function placeBehind({ edge: { from } }: Side, beam: Beam, { members }: Design['frame']): Primitive {
  const [first] = beam.line
  const isLevel = beam.line[0].y === beam.line[1].y
  const posts = postPlaces(beam)
  // clear of the beam's mark, which stands nearer its first post, and of the rim's in the middle
  const [start = 0, second = start] = posts
  const middle = start + 0.65 * (second - start)
  const joists = members.filter(({ role }) => role === 'joist' || role === 'end joist')
  const isClear = (at: number): boolean =>
    joists.every(({ box }) => {
      const [low, high] = isLevel ? [box.x0, box.x1] : [box.y0, box.y1]
      return at < low - OFF_JOISTS || at > high + OFF_JOISTS
    })
  const at = [0, 4, -4, 8, -8].map((by) => middle + inches(by)).find(isClear) ?? middle
  const id = `beam-place-${beam.id}`
  return isLevel
    ? uprightDimension(id, Math.min(first.y, from.y), Math.max(first.y, from.y), at, 0)
    : levelDimension(id, Math.min(first.x, from.x), Math.max(first.x, from.x), at, 0)
}

/** Where a beam's posts stand on the axis that it lies along. */
function postPlaces({ line: [from, to], postsAt }: Beam): readonly number[] {
  const start = from.y === to.y ? from.x : from.y
  return postsAt.map((at) => start + at)
}

function chain(
  id: string,
  stops: readonly number[],
  isLevel: boolean,
  on: number,
  offset: number,
): readonly Primitive[] {
  return stops.slice(1).map((stop, i) => {
    const name = `post-spacing-${id}-${i + 1}`
    const before = stops[i] ?? stop
    return isLevel
      ? levelDimension(name, before, stop, on, offset)
      : uprightDimension(name, before, stop, on, offset)
  })
}
