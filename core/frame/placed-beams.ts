import type { Job } from '../job/index.ts'
import type { Layout, SupportLine } from '../layout/index.ts'
import { type Dimensions, dimensionsOf } from './dimensions.ts'
import { type PlacedPost, type PostOnBeam, placePosts } from './posts.ts'

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
  const placed: PlacedBeam[] = []
  let nextNumber = 1
  const lines = layout.zones.flatMap(({ level, supports }) => supports.map((line) => ({ line, level })))
  for (const { line, level } of lines) {
    if (line.beam === null || placed.some((one) => one.line.id === line.id)) continue
    const joints = [jointAt(line, 0, placed), jointAt(line, 1, placed)] as const
    const others = placed.flatMap((one) => one.own)
    const d = levels(level)
    const posts = placePosts(job, d, line, line.beam, nextNumber, joints, others)
    const own = posts.map(({ post }) => post).filter((post) => !joints.includes(post))
    nextNumber += own.length
    placed.push({ line, level, d, spec: line.beam, posts, own })
  }
  return placed
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
