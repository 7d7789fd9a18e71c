import { KnapsackTable } from '../bound/knapsack-table.ts'
import type { LpEngine } from '../lp-port.ts'
import { fillsAbove } from './pair-fill.ts'
import { PairMaster } from './pair-master.ts'
import { breaksPair, type Fill, keptApart, needsRow, type PairNode, putTogether } from './pair-node.ts'
import { packNode } from './pair-round.ts'
import type { Work } from './work.ts'

/** Whole-numbered prices per board. */
const SCALE = 1e9
/** What a price may be above a board's worth and still count as none, in 1/SCALE of a board. */
const ROOM = 100
/** New columns from one exact search. */
const MOST_FILLS = 40

export interface PairAnswer {
  /** boards by the problem's items; null: none found */
  readonly boards: readonly (readonly number[])[] | null
  /** true: no plan with so few boards exists */
  readonly refuted: boolean
}

type NodeOutcome =
  | { readonly kind: 'pruned' }
  | { readonly kind: 'found'; readonly boards: number[][] }
  | { readonly kind: 'open'; readonly pair: readonly [number, number] | null }

/**
 * Is there a plan with at most `target` equal boards? Branches on pairs of pieces: together on some board, or apart
 * on all (Ryan and Foster). A node is left as soon as whole-numbered prices prove that it needs more boards. The tree
 * is kept between calls, which go on where the last one ended.
 */
export class PairTree {
  readonly target: number
  readonly #capacity: number
  readonly #work: Work
  readonly #master: PairMaster
  readonly #open: PairNode[]
  #joined: number
  #exhaustive = true
  /** completion of the node at hand, kept to save its memory */
  #completion = new Float64Array(0)

  constructor(
    root: PairNode,
    fills: readonly Fill[],
    capacity: number,
    target: number,
    engine: LpEngine,
    work: Work,
  ) {
    this.target = target
    this.#capacity = capacity
    this.#work = work
    this.#open = [root]
    this.#joined = root.pieces.length
    this.#master = new PairMaster(engine, root, fills)
  }

  ask(mostNodes: number): PairAnswer {
    for (let nodes = 0; this.#open.length > 0; nodes++) {
      if (nodes >= mostNodes || this.#work.stopped()) return { boards: null, refuted: false }
      const node = this.#open.pop() as PairNode
      this.#work.nodes++
      const outcome = this.#relax(node)
      if (outcome.kind === 'pruned') continue
      if (outcome.kind === 'found') return { boards: outcome.boards, refuted: false }
      const { pair } = outcome
      if (pair === null) {
        this.#exhaustive = false
        continue
      }
      this.#open.push(keptApart(node, pair[0], pair[1]))
      const together = this.#together(node, pair[0], pair[1])
      if (together !== null) this.#open.push(together)
    }
    return { boards: null, refuted: this.#exhaustive }
  }

  dispose(): void {
    this.#master.dispose()
  }

  #together(node: PairNode, i: number, j: number): PairNode | null {
    const width = (node.pieces[i]?.width ?? 0) + (node.pieces[j]?.width ?? 0)
    if (width > this.#capacity || node.apart[i]?.has(j) === true) return null
    return putTogether(node, i, j, this.#joined++, needsRow(node, i, j) ? this.#master.addRow() : -1)
  }

  #relax(node: PairNode): NodeOutcome {
    const { target } = this
    const capacity = this.#capacity
    const master = this.#master
    const n = node.pieces.length
    master.goTo(node)
    master.add(node.pieces.map((_, piece) => ({ pieces: [piece], counts: [1] })))
    master.add(joinedFills(node, master.fills))
    const limits = node.pieces.map((piece, k) => (node.apart[k]?.has(k) === true ? 1 : piece.demand))
    const widths = node.pieces.map((piece) => piece.width)
    const table = new KnapsackTable(widths, limits, capacity)
    const size = capacity + 1
    if (this.#completion.length < (n + 1) * size) this.#completion = new Float64Array((n + 1) * size)
    const completion = this.#completion
    for (let round = 0; ; round++) {
      const solution = master.solve()
      if (solution.status !== 'optimal') return { kind: 'open', pair: null }
      const prices = Float64Array.from({ length: master.rows }, (_, row) =>
        Math.max(master.exactly(row) ? -SCALE : 0, Math.round((solution.duals[row] ?? 0) * SCALE)),
      )
      const worth = worthOf(node, prices)
      const profits = Float64Array.from(node.pieces, (piece) =>
        piece.rows.reduce((sum, [row, copies]) => sum + copies * (prices[row] ?? 0), 0),
      )
      const candidates: { piece: number; used: number }[] = []
      table.fill(profits, false, (piece) => {
        completion.set(table.value, (piece + 1) * size)
        const width = widths[piece] ?? 0
        const value = (profits[piece] ?? 0) + (table.value[capacity - width] ?? 0)
        if (value > SCALE + ROOM) candidates.push({ piece, used: capacity - width })
      })
      completion.set(table.value, 0)
      const freest = Math.max(SCALE, table.value[capacity] ?? 0)
      if (worth > target * freest) return { kind: 'pruned' }
      const fills = candidates.map(({ piece, used }): Fill => {
        const rest = table.trace(piece + 1, used)
        return { pieces: [piece, ...rest.items], counts: [1, ...rest.counts] }
      })
      const before = master.fills
      let added = master.add(fills.filter((fill) => !breaksPair(node, fill)))
      if (added === 0 && freest > SCALE + ROOM) {
        const found = fillsAbove(node, profits, completion, capacity, SCALE + ROOM, MOST_FILLS)
        added = master.add(found.fills)
        if (found.complete && worth > target * (SCALE + ROOM)) return { kind: 'pruned' }
      }
      this.#work.columns += added
      const boards =
        round % 6 === 0 || added === 0 ? packNode(node, capacity, target, before, solution.x) : null
      if (boards !== null) return { kind: 'found', boards }
      if (added === 0 || this.#work.stopped())
        return { kind: 'open', pair: pairOf(node, before, solution.x, capacity) }
    }
  }
}

/** What all that the node wants is worth under its rows' prices. */
function worthOf(node: PairNode, prices: Float64Array): number {
  let worth = 0
  for (const piece of node.pieces)
    for (const [row, copies] of piece.rows) worth += piece.demand * copies * (prices[row] ?? 0)
  return worth
}

/** The columns that hold both parts of the piece joined last, with the piece in their place, where that is another column. */
function joinedFills(node: PairNode, fills: readonly (Fill | null)[]): Fill[] {
  const merge = node.merges.at(-1)
  if (merge === undefined || merge.row < 0) return []
  const place = new Map(node.pieces.map((piece, k) => [piece.id, k]))
  const first = place.get(merge.first) ?? -1
  const second = place.get(merge.second) ?? -1
  const joined = place.get(merge.joined) ?? -1
  return fills.flatMap((fill) => {
    if (fill === null || fill.pieces.includes(joined)) return []
    const counts = new Map(fill.pieces.map((piece, k) => [piece, fill.counts[k] ?? 0]))
    counts.set(first, (counts.get(first) ?? 0) - 1)
    counts.set(second, (counts.get(second) ?? 0) - 1)
    if ((counts.get(first) ?? 0) < 0 || (counts.get(second) ?? 0) < 0) return []
    counts.set(joined, 1)
    const pieces = [...counts.keys()].filter((piece) => (counts.get(piece) ?? 0) > 0).sort((a, b) => a - b)
    return [{ pieces, counts: pieces.map((piece) => counts.get(piece) ?? 0) }]
  })
}

/** The pair whose share of boards is nearest one half; among equals the longer pieces. null: all boards are whole. */
function pairOf(
  node: PairNode,
  fills: readonly (Fill | null)[],
  x: ArrayLike<number>,
  capacity: number,
): readonly [number, number] | null {
  const n = node.pieces.length
  const share = new Map<number, number>()
  fills.forEach((fill, c) => {
    const value = x[c] ?? 0
    if (value < 1e-7 || fill === null) return
    for (let a = 0; a < fill.pieces.length; a++) {
      const i = fill.pieces[a] ?? 0
      if ((fill.counts[a] ?? 0) > 1) share.set(i * n + i, (share.get(i * n + i) ?? 0) + value)
      for (let b = a + 1; b < fill.pieces.length; b++) {
        const key = i * n + (fill.pieces[b] ?? 0)
        share.set(key, (share.get(key) ?? 0) + value)
      }
    }
  })
  let best: readonly [number, number] | null = null
  let bestScore = 0
  for (const [key, value] of share) {
    const fraction = value - Math.floor(value)
    const distance = Math.min(fraction, 1 - fraction)
    if (distance < 1e-5) continue
    const i = Math.floor(key / n)
    const j = key % n
    const wide = ((node.pieces[i]?.width ?? 0) + (node.pieces[j]?.width ?? 0)) / capacity
    const score = distance + 0.001 * wide + 1e-9 * (n - i)
    if (score > bestScore) {
      bestScore = score
      best = [i, j]
    }
  }
  return best ?? pairOfFraction(fills, x)
}

/** Where every pair is on a whole number of boards: the widest two pieces of the board nearest one half. */
function pairOfFraction(
  fills: readonly (Fill | null)[],
  x: ArrayLike<number>,
): readonly [number, number] | null {
  let best: readonly [number, number] | null = null
  let most = 1e-5
  fills.forEach((fill, c) => {
    const fraction = (x[c] ?? 0) % 1
    const distance = Math.min(fraction, 1 - fraction)
    const [first, second] = fill?.pieces ?? []
    const other = (fill?.counts[0] ?? 0) > 1 ? first : second
    if (first === undefined || other === undefined || distance <= most) return
    most = distance
    best = [first, other]
  })
  return best
}
