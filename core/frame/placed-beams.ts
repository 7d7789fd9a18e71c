import type { PlanePoint } from '../geometry/index.ts'
import type { Job } from '../job/index.ts'
import type { Layout, SupportLine } from '../layout/index.ts'
import type { Ticks } from '../units/index.ts'
import { type Dimensions, dimensionsOf } from './dimensions.ts'
import { type PlacedPost, type PostOnBeam, placeAlong, placePosts, postPlaces } from './posts.ts'

/** Levels of height by the number of their platform. */
export type LevelDimensions = (level: number) => Dimensions

export function levelDimensions(job: Job, { levels }: Pick<Layout, 'levels'>): LevelDimensions {
  const found = new Map(
    levels.map(({ number, deckTop }) => [
      number,
      dimensionsOf({ ...job, size: { ...job.size, height: deckTop } }),
    ]),
  )
  return (level) => found.get(level) ?? dimensionsOf(job)
}

/** A beam with its posts, none of them cut to length yet. */
export interface PlacedBeam {
  readonly line: SupportLine
  readonly level: number
  readonly d: Dimensions
  readonly spec: 'front' | 'rear'
  readonly posts: readonly PostOnBeam<PlacedPost>[]
  /** posts that no beam before it stands on */
  readonly own: readonly PlacedPost[]
}

/** Each beam of a layout once, its posts numbered through the deck. */
export function placeAllPosts(
  job: Job,
  layout: Layout,
  levels = levelDimensions(job, layout),
): readonly PlacedBeam[] {
  const lines = beamsOnce(layout)
  const places = placesApart(job, lines)
  const placed: PlacedBeam[] = []
  let nextNumber = 1
  for (const { line, level, spec } of lines) {
    const joints = [jointAt(line, 0, placed), jointAt(line, 1, placed)] as const
    const d = levels(level)
    const posts = placePosts(job, d, line, spec, places.get(line.id) ?? [], nextNumber, joints)
    const own = posts.map(({ post }) => post).filter((post) => !joints.includes(post))
    nextNumber += own.length
    placed.push({ line, level, d, spec, posts, own })
  }
  return placed
}

interface BeamOfLevel {
  readonly line: SupportLine
  readonly level: number
  readonly spec: 'front' | 'rear'
}

/** Each beam once, from left to right, as its zone names it. */
function beamsOnce({ zones }: Layout): readonly BeamOfLevel[] {
  const found = new Map<string, BeamOfLevel>()
  for (const { level, supports } of zones)
    for (const line of supports)
      if (line.beam !== null && line.ofHigher !== true && !found.has(line.id))
        found.set(line.id, { line, level, spec: line.beam })
  return [...found.values()]
}

/**
 * Places of the posts along each beam. End posts give way to those of the beams before theirs; where that leaves some too
 * near each other, to those of the beams after it, so that a deck that can stand can in the mirror too.
 */
function placesApart(job: Job, beams: readonly BeamOfLevel[]): ReadonlyMap<string, readonly Ticks[]> {
  const forth = placesInTurn(job, beams)
  if (forth.apart) return forth.places
  const back = placesInTurn(job, beams.toReversed())
  return back.apart ? back.places : forth.places
}

/** The same where each beam's posts give way to those before it, and whether all footings then stand apart. */
function placesInTurn(job: Job, beams: readonly BeamOfLevel[]) {
  const footing = Math.max(job.ground.tube, job.ground.base)
  const places = new Map<string, readonly Ticks[]>()
  const standing: { readonly beam: string; readonly place: PlanePoint }[] = []
  let apart = true
  for (const { line, spec } of beams) {
    const joints = line.cuts.flatMap((cut, end) => {
      const there = end === 0 ? line.line.from : line.line.to
      const off = ({ place: { x, y } }: (typeof standing)[number]) => Math.hypot(x - there.x, y - there.y)
      return standing
        .filter(({ beam }) => beam === cut?.meets)
        .toSorted((a, b) => off(a) - off(b))
        .slice(0, 1)
    })
    const others = standing.filter((one) => !joints.includes(one)).map(({ place }) => place)
    const along = postPlaces(job, line, job.frame.beams[spec], others)
    places.set(line.id, along)
    const own = along.map((at) => placeAlong(line, at))
    own.forEach((place, i) => {
      const atJoint =
        (i === 0 || i === own.length - 1) && (line.cuts[i === 0 ? 0 : 1]?.meets ?? null) !== null
      const before = [...(atJoint ? [] : others), ...own.slice(0, i)]
      if (before.some(({ x, y }) => Math.hypot(x - place.x, y - place.y) < footing)) apart = false
    })
    standing.push(...own.map((place) => ({ beam: line.id, place })))
  }
  return { places, apart }
}

/** The post of a beam placed before on which this one's end stands too, at the mitre of the two. */
function jointAt(line: SupportLine, end: 0 | 1, placed: readonly PlacedBeam[]): PlacedPost | null {
  const before = placed.find((one) => one.line.id === line.cuts[end]?.meets)
  if (before === undefined) return null
  const place = end === 0 ? line.line.from : line.line.to
  const off = ({ x, y }: PlacedPost) => Math.hypot(x - place.x, y - place.y)
  const nearest = before.posts.map(({ post }) => post).toSorted((a, b) => off(a) - off(b))
  return nearest[0] ?? null
}
