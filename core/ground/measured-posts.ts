import { type CutPlan, type LpEngine, planCuts } from '../cutting/index.ts'
import type { Estimate, Planned } from '../estimate-types.ts'
import { postList } from '../job/index.ts'
import { type PriceBook, productKey } from '../pricing/index.ts'
import { type Cents, cents, printLength, printMoney, type Ticks, ticks, toFeet } from '../units/index.ts'

export interface MeasuredPost {
  readonly post: number
  readonly drawn: Ticks
  readonly measured: Ticks
  /** measured less drawn */
  readonly off: Ticks
}

/** A board that posts are cut from, and whether it is bought beyond the order. */
export interface PostBoard {
  readonly length: Ticks
  readonly more: boolean
  readonly posts: readonly { readonly mark: string; readonly length: Ticks }[]
}

export interface MeasuredPosts {
  readonly posts: readonly MeasuredPost[]
  /** the posts that were ordered are long enough for all, measured or not */
  readonly enough: boolean
  /** from which board each post is cut now; empty where no stock that is sold is long enough */
  readonly boards: readonly PostBoard[]
  /** what is bought beyond the order costs */
  readonly cost: Cents
  readonly message: string
}

/**
 * Lengths taken at the piers against the posts that were ordered: the same boards cut anew, the measured posts to
 * their measure, the others as drawn with their extra length; where they are not enough, with the least that is bought
 * beside them. Nothing where no post was measured or none is planned.
 */
export function measuredPosts(estimate: Estimate, book: PriceBook, engine: LpEngine): MeasuredPosts | null {
  const { job, frame } = estimate
  const planned = estimate.plans.find(({ product }) => product.size === job.frame.postSize)
  const posts = postList(job.ground.measured).flatMap(({ post, length }): readonly MeasuredPost[] => {
    const drawn = frame.posts.find(({ number }) => number === post)?.length
    return drawn === undefined ? [] : [{ post, drawn, measured: length, off: ticks(length - drawn) }]
  })
  if (posts.length === 0 || planned === undefined) return null
  const again = cutAgain(estimate, planned, book, engine, posts)
  if (again === null) {
    const longest = posts.reduce((a, b) => (b.measured > a.measured ? b : a))
    return {
      posts,
      enough: false,
      boards: [],
      cost: cents(0),
      message: `Post ${longest.post} measures ${printLength(longest.measured)}, and no post that long is sold: have it measured again.`,
    }
  }
  const { plan, ordered } = again
  const boards = plan.boards.map(({ stockId, length, cuts }) => ({
    length,
    more: !ordered(stockId),
    posts: cuts.map((cut) => ({ mark: cut.mark, length: cut.length })),
  }))
  const bought = plan.order.filter(({ stockId }) => !ordered(stockId))
  const buy = bought.map(({ count, length }) => `${count} × ${toFeet(length)} ft`).join(', ')
  return {
    posts,
    enough: bought.length === 0,
    boards,
    cost: plan.cost,
    message:
      bought.length === 0
        ? 'The posts that were ordered are long enough for every measure.'
        : `The posts that were ordered are not enough for these measures. Buy ${buy} more, ${printMoney(plan.cost)}, before any is cut.`,
  }
}

const ORDERED = 'ordered: '

/** The boards of the order, paid for, and beside them what the book sells; null where neither is long enough. */
function cutAgain(
  { job, frame, takeoff }: Estimate,
  { product, plan }: Planned,
  book: PriceBook,
  engine: LpEngine,
  posts: readonly MeasuredPost[],
): { readonly plan: CutPlan; readonly ordered: (stockId: string) => boolean } | null {
  const measured = new Map(
    frame.posts.map(({ id, number }) => [id, posts.find(({ post }) => post === number)?.measured]),
  )
  const pieces = takeoff.pieces
    .filter((piece) => productKey(piece.product) === productKey(product))
    .map(({ id, mark, memberId, length }) => ({ id, mark, length: measured.get(memberId) ?? length }))
  const sold = book.lumber.find((entry) => productKey(entry.product) === productKey(product))?.stock ?? []
  const planned = planCuts(
    {
      id: 'posts as measured',
      label: 'Posts as measured',
      kerf: job.cutting.kerf,
      endTrim: job.cutting.endTrim,
      stock: [
        ...plan.order.map(({ stockId, length, count }) => ({
          id: `${ORDERED}${stockId}`,
          length,
          price: cents(0),
          supply: count,
          offcut: false,
        })),
        ...sold.map(({ code, length, price }) => ({ id: code, length, price, supply: null, offcut: false })),
      ],
      pieces,
      runs: [],
      handling: job.cutting.handling,
      perCut: cents(0),
      keep: null,
      objectives: ['least cost'],
    },
    engine,
  )
  if (!planned.ok) return null
  return { plan: planned.value, ordered: (stockId) => stockId.startsWith(ORDERED) }
}
