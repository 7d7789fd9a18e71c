import { KnapsackTable } from '../bound/knapsack-table.ts'
import type { LpEngine } from '../lp-port.ts'
import { fillsAbove } from './pair-fill.ts'
import { breaksPair, type Fill, keptApart, type PairNode, putTogether } from './pair-node.ts'
import { packNode } from './pair-round.ts'
import type { Work } from './work.ts'

/** Whole-numbered prices per board. */
const SCALE = 1e9
/** What a price may be above a board's worth and still count as none, in 1/SCALE of a board. */
const ROOM = 100
/** New columns from one exact search. */
const MOST_FILLS = 40
/** Columns handed down to a node's children, per piece. */
const HANDED = 8

export interface PairAnswer {
  /** boards by the problem's items; null: none found */
  readonly boards: readonly (readonly number[])[] | null
  /** true: no plan with so few boards exists */
  readonly refuted: boolean
}

/**
 * Is there a plan with at most `target` equal boards? Branches on pairs of pieces: together on some board, or apart
 * on all (Ryan and Foster). A node is left as soon as whole-numbered prices prove that it needs more boards.
 */
export function askPairs(
  root: PairNode,
  capacity: number,
  target: number,
  engine: LpEngine,
  work: Work,
  mostNodes: number,
): PairAnswer {
  const open: PairNode[] = [root]
  let exhaustive = true
  for (let nodes = 0; open.length > 0; nodes++) {
    if (nodes >= mostNodes || work.stopped()) return { boards: null, refuted: false }
    const node = open.pop() as PairNode
    work.nodes++
    const outcome = relax(node, capacity, target, engine, work)
    if (outcome.kind === 'pruned') continue
    if (outcome.kind === 'found') return { boards: outcome.boards, refuted: false }
    const { pair } = outcome
    if (pair === null) {
      exhaustive = false
      continue
    }
    const slim = { ...node, fills: outcome.fills }
    const together = putTogether(slim, pair[0], pair[1], capacity)
    open.push(keptApart(slim, pair[0], pair[1]))
    if (together !== null) open.push(together)
  }
  return { boards: null, refuted: exhaustive }
}

type NodeOutcome =
  | { readonly kind: 'pruned' }
  | { readonly kind: 'found'; readonly boards: number[][] }
  | { readonly kind: 'open'; readonly pair: readonly [number, number] | null; readonly fills: Fill[] }

function relax(node: PairNode, capacity: number, target: number, engine: LpEngine, work: Work): NodeOutcome {
  const n = node.widths.length
  const fills: Fill[] = [...node.fills]
  const known = new Set(fills.map(keyOf))
  for (let piece = 0; piece < n; piece++) {
    const single = { pieces: [piece], counts: [1] }
    if (!known.has(keyOf(single))) {
      known.add(keyOf(single))
      fills.push(single)
    }
  }
  const rows = node.demands.map((demand) => ({ lower: demand, upper: Number.POSITIVE_INFINITY }))
  const column = (fill: Fill) => ({
    cost: 1,
    lower: 0,
    upper: Number.POSITIVE_INFINITY,
    rows: fill.pieces,
    values: fill.counts,
  })
  const model = engine.create(rows, fills.map(column))
  const limits = node.demands.map((demand, k) => (node.apart[k]?.has(k) === true ? 1 : demand))
  const table = new KnapsackTable(node.widths, limits, capacity)
  const size = capacity + 1
  const completion = new Float64Array((n + 1) * size)
  try {
    for (let round = 0; ; round++) {
      const solution = model.solve()
      if (solution.status !== 'optimal') return { kind: 'open', pair: null, fills }
      const profits = Float64Array.from({ length: n }, (_, k) =>
        Math.max(0, Math.round((solution.duals[k] ?? 0) * SCALE)),
      )
      const worth = node.demands.reduce((sum, demand, k) => sum + demand * (profits[k] ?? 0), 0)
      const added: Fill[] = []
      const take = (fill: Fill): void => {
        const key = keyOf(fill)
        if (known.has(key) || breaksPair(node, fill)) return
        known.add(key)
        added.push(fill)
      }
      const candidates: { piece: number; used: number }[] = []
      table.fill(profits, false, (piece) => {
        completion.set(table.value, (piece + 1) * size)
        const width = node.widths[piece] ?? 0
        const value = (profits[piece] ?? 0) + (table.value[capacity - width] ?? 0)
        if (value > SCALE + ROOM) candidates.push({ piece, used: capacity - width })
      })
      completion.set(table.value, 0)
      const freest = Math.max(SCALE, table.value[capacity] ?? 0)
      if (worth > target * freest) return { kind: 'pruned' }
      for (const { piece, used } of candidates) {
        const rest = table.trace(piece + 1, used)
        take({ pieces: [piece, ...rest.items], counts: [1, ...rest.counts] })
      }
      if (added.length === 0 && freest > SCALE + ROOM) {
        const found = fillsAbove(node, profits, completion, capacity, SCALE + ROOM, MOST_FILLS)
        for (const fill of found.fills) take(fill)
        if (found.complete && worth > target * (SCALE + ROOM)) return { kind: 'pruned' }
      }
      const boards =
        round % 6 === 0 || added.length === 0 ? packNode(node, capacity, target, fills, solution.x) : null
      if (boards !== null) return { kind: 'found', boards }
      if (added.length === 0 || work.stopped()) {
        return {
          kind: 'open',
          pair: pairOf(node, fills, solution.x, capacity),
          fills: handDown(fills, profits, n),
        }
      }
      work.columns += added.length
      fills.push(...added)
      model.addColumns(added.map(column))
    }
  } finally {
    model.dispose()
  }
}

function keyOf(fill: Fill): string {
  return `${fill.pieces.join(',')}:${fill.counts.join(',')}`
}

/** The columns nearest to being used, a few for each piece. */
function handDown(fills: readonly Fill[], profits: ArrayLike<number>, n: number): Fill[] {
  const worth = (fill: Fill): number =>
    fill.pieces.reduce((sum, piece, k) => sum + (profits[piece] ?? 0) * (fill.counts[k] ?? 0), 0)
  return fills
    .map((fill, at) => ({ fill, at, worth: worth(fill) }))
    .sort((a, b) => b.worth - a.worth || a.at - b.at)
    .slice(0, HANDED * n)
    .map((entry) => entry.fill)
}

/** The pair whose share of boards is nearest one half; among equals the longer pieces. null: no pair is fractional. */
function pairOf(
  node: PairNode,
  fills: readonly Fill[],
  x: ArrayLike<number>,
  capacity: number,
): readonly [number, number] | null {
  const n = node.widths.length
  const share = new Map<number, number>()
  fills.forEach((fill, c) => {
    const value = x[c] ?? 0
    if (value < 1e-7) return
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
    const wide = ((node.widths[i] ?? 0) + (node.widths[j] ?? 0)) / capacity
    const score = distance + 0.001 * wide + 1e-9 * (n - i)
    if (score > bestScore) {
      bestScore = score
      best = [i, j]
    }
  }
  return best
}
