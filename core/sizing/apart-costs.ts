import type { LumberSize } from '../data/index.ts'
import type { FramedJob } from '../design.ts'
import { type Frame, footingUnder } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import type { PriceBook } from '../pricing/index.ts'
import { feet, type Ticks, ticks } from '../units/index.ts'
import { footingKey } from './catalogue.ts'
import { withChoice } from './choice.ts'
import { type LeastCents, leastCost } from './least-cost.ts'
import { memo } from './memo.ts'
import type { Choice, FootingChoice } from './types.ts'

/** Least costs of what stands under the beams, wherever they lie. */
export interface ApartCosts {
  readonly footing: (footing: FootingChoice) => LeastCents
  readonly post: (size: LumberSize) => PostCost | null
}

/** One post: what it costs whatever its length, and what each tick of it costs. */
interface PostCost {
  readonly fixed: number
  readonly perTick: number
}

/** So many of a thing that what is rounded up to a thousandth does not matter for one. */
const COPIES = 20

/** @param first the start, framed */
export function apartCosts(
  job: Job,
  book: PriceBook,
  start: Choice,
  first: Frame,
  framed: (choice: Choice) => FramedJob | null,
): ApartCosts {
  const [post] = first.posts
  if (post === undefined) throw new Error('a deck stands on posts')
  const under = (footing: FootingChoice, count: number): LeastCents => {
    const sized = withChoice(job, { ...start, footing })
    const one = footingUnder(sized, post)
    return leastCost(sized, book, { ...bareGround(first), footings: copies(one, count) })
  }
  // what is done once for all footings stands in the cost of none
  const once = under(start.footing, 1) - (under(start.footing, COPIES + 1) - under(start.footing, 1)) / COPIES
  return {
    footing: memo(footingKey, (one: FootingChoice) => (under(one, COPIES) - once) / COPIES),
    post: memo(
      (size: LumberSize) => size,
      (postSize: LumberSize) => {
        // a narrow post takes few plies
        for (const plies of [3, 2, 1]) {
          const rear = start.rear === null ? null : { ...start.rear, plies }
          const made = framed({ ...start, front: { ...start.front, plies }, rear, postSize })
          if (made !== null) return postCost(made, book)
        }
        return null
      },
    ),
  }
}

/** The frame without its posts, their metal and what braces them. */
export function barePosts(frame: Frame): Frame {
  return {
    ...frame,
    posts: [],
    members: frame.members.filter(({ role }) => role !== 'post' && role !== 'knee brace'),
    connectors: frame.connectors.filter(({ kind }) => !OF_POSTS.includes(kind)),
  }
}

const OF_POSTS: readonly string[] = ['post base', 'post cap', 'brace bolt']

function postCost({ job, frame }: FramedJob, book: PriceBook): PostCost | null {
  const [post] = frame.posts
  const stick = frame.members.find((member) => member.id === post?.id)
  if (post === undefined || stick === undefined) return null
  const alone = (length: Ticks): Frame => ({
    ...barePosts(frame),
    members: copies({ ...stick, length }),
    beams: [],
    runs: [],
    posts: copies({ ...post, length }),
    connectors: frame.connectors
      .filter(({ kind }) => kind === 'post base' || kind === 'post cap')
      .map((metal) => ({ ...metal, count: COPIES, at: [post.id] })),
  })
  const none: Frame = { ...alone(ticks(0)), members: [], posts: [], connectors: [] }
  const at = (length: Ticks) => (leastCost(job, book, alone(length)) - leastCost(job, book, none)) / COPIES
  const [short, long] = [feet(1), feet(101)]
  const perTick = (at(long) - at(short)) / (long - short)
  return { fixed: at(short) - perTick * short, perTick }
}

function bareGround(frame: Frame): Frame {
  return { ...barePosts(frame), members: [], beams: [], runs: [], connectors: [] }
}

function copies<Thing>(thing: Thing, count = COPIES): readonly Thing[] {
  return Array.from({ length: count }, () => thing)
}
