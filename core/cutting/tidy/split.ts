import { heldBy } from '../model/board-cost.ts'
import type { Problem } from '../model/problem.ts'

/** Boards of one stock option that are cut alike: one set-up of the saw. */
export interface Kind {
  readonly key: string
  readonly stock: number
  /** item indices, ascending, one for each piece */
  readonly pieces: readonly number[]
  readonly used: number
  readonly copies: number
}

export function kindOf(problem: Problem, stock: number, pieces: readonly number[], copies: number): Kind {
  let used = heldBy(
    problem,
    pieces,
    pieces.map(() => 1),
  )
  for (const item of pieces) used += problem.items[item]?.width ?? 0
  return { key: `${stock}:${pieces.join(',')}`, stock, pieces, used, copies }
}

/** All kinds of a plan, to look new ones up among. */
export interface Known {
  readonly keys: ReadonlySet<string>
  /** stock and use of each: tells most new kinds from all others without spelling them out */
  readonly uses: ReadonlySet<number>
}

export function knownKinds(problem: Problem, kinds: readonly Kind[]): Known {
  return {
    keys: new Set(kinds.map((kind) => kind.key)),
    uses: new Set(kinds.map((kind) => stockAndUse(problem, kind.stock, kind.used))),
  }
}

function stockAndUse(problem: Problem, stock: number, used: number): number {
  return used * problem.stocks.length + stock
}

export interface Found {
  readonly split: readonly [Kind, Kind] | null
  readonly tried: number
}

/**
 * The best other way to share the pieces of two kinds of boards out between them: fewest set-ups, then the greatest
 * sum of squared offcuts. No split where none is better than what is.
 * @param saving cents that a board of a stock spares when so much of it is used; a split spares no less
 */
export function bestSplit(
  problem: Problem,
  known: Known,
  a: Kind,
  b: Kind,
  saving: (stock: number, used: number) => number,
): Found {
  const gone = (a.copies <= b.copies ? 1 : 0) + (b.copies <= a.copies ? 1 : 0)
  const stays = (key: string): boolean =>
    known.keys.has(key) &&
    !(a.copies <= b.copies && key === a.key) &&
    !(b.copies <= a.copies && key === b.key)
  const capacityOf = (stock: number): number => problem.stocks[stock]?.capacity ?? 0
  const offcut = (stock: number, used: number): number => Math.max(0, capacityOf(stock) - used) ** 2
  const crumbs = offcut(a.stock, a.used) + offcut(b.stock, b.used)
  const spared = saving(a.stock, a.used) + saving(b.stock, b.used)
  let best: { split: [Kind, Kind]; setUps: number; offcuts: number } | null = null
  let tried = 0
  const pool = poolOf(problem, [...a.pieces, ...b.pieces])
  const room = capacityOf(a.stock)
  const least = pool.used - capacityOf(b.stock)
  for (const take of subsets(pool)) {
    tried++
    const used = usedBy(pool, take)
    if (used > room || used < least || used === 0 || used === pool.used) continue
    const rest = pool.used - used
    const offcuts = offcut(a.stock, used) + offcut(b.stock, rest)
    const perhapsKnown =
      known.uses.has(stockAndUse(problem, a.stock, used)) ||
      known.uses.has(stockAndUse(problem, b.stock, rest)) ||
      (a.stock === b.stock && used === rest)
    if (!perhapsKnown && (gone < 2 || offcuts <= crumbs)) continue
    const one = kindOf(
      problem,
      a.stock,
      piecesOf(pool, (k) => take[k] ?? 0),
      1,
    )
    const other = kindOf(
      problem,
      b.stock,
      piecesOf(pool, (k) => (pool.counts[k] ?? 0) - (take[k] ?? 0)),
      1,
    )
    if (one.key === a.key || one.used > room || other.used > capacityOf(b.stock)) continue
    if (saving(a.stock, one.used) + saving(b.stock, other.used) < spared) continue
    const added = (stays(one.key) ? 0 : 1) + (stays(other.key) || other.key === one.key ? 0 : 1)
    const setUps = added - gone
    if (setUps > 0 || (setUps === 0 && offcuts <= crumbs)) continue
    if (best === null || setUps < best.setUps || (setUps === best.setUps && offcuts > best.offcuts))
      best = { split: [one, other], setUps, offcuts }
  }
  return { split: best?.split ?? null, tried }
}

/** Pieces of two boards together: their items, ascending, and how many there are of each. */
interface Pool {
  readonly items: readonly number[]
  readonly widths: readonly number[]
  readonly counts: readonly number[]
  readonly used: number
}

function poolOf(problem: Problem, pieces: readonly number[]): Pool {
  const items = [...new Set(pieces)].sort((x, y) => x - y)
  const counts = items.map((item) => pieces.filter((piece) => piece === item).length)
  const widths = items.map((item) => problem.items[item]?.width ?? 0)
  return { items, widths, counts, used: usedBy({ widths }, counts) }
}

function usedBy({ widths }: Pick<Pool, 'widths'>, take: readonly number[]): number {
  let used = 0
  for (let k = 0; k < widths.length; k++) used += (widths[k] ?? 0) * (take[k] ?? 0)
  return used
}

function piecesOf({ items }: Pool, times: (k: number) => number): number[] {
  return items.flatMap((item, k) => Array.from({ length: times(k) }, () => item))
}

/** Ways to take some of a pool, the same array each time; pieces of one length are alike. At most 500. */
function* subsets({ counts }: Pool): Iterable<readonly number[]> {
  const take = counts.map(() => 0)
  for (let way = 0; way < 500; way++) {
    yield take
    let k = 0
    while (k < take.length && take[k] === counts[k]) take[k++] = 0
    if (k === take.length) return
    take[k] = (take[k] ?? 0) + 1
  }
}
