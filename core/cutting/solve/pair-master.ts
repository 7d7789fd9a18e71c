import type { LpEngine, LpModel, LpSolution } from '../lp-port.ts'
import { breaksPair, type Fill, type PairNode } from './pair-node.ts'

const ENDLESS = Number.POSITIVE_INFINITY

/** A column: what it counts for in each row. It belongs to every node that can read it as pieces of its own. */
interface Column {
  readonly rows: readonly number[]
  readonly values: readonly number[]
}

/**
 * A joined piece is asked for exactly, or more of it than the node wants would stand in for loose copies of its parts;
 * so is the item of which no loose copy is left.
 */
type Ask = 'nothing' | 'at least' | 'exactly'

/**
 * The program of all nodes of a pair tree, one model for the whole tree: rows say how many of each item are wanted,
 * and how many of each joined piece that the items' rows do not say. Going to a node closes the columns that break
 * its pairs and opens the others, so that the engine goes on from its last basis.
 */
export class PairMaster {
  /** rows that ask for items; those after them ask for one joined piece each */
  readonly #items: number
  readonly #demands: readonly number[]
  readonly #model: LpModel
  readonly #columns: Column[] = []
  readonly #keys = new Set<string>()
  readonly #open: boolean[] = []
  /** what the rows ask for at the node gone to */
  readonly #asks: Ask[] = []
  #fills: (Fill | null)[] = []
  #node: PairNode
  #place = new Map<number, number>()

  /** @param root whose pieces are the problem's items, one row each */
  constructor(engine: LpEngine, root: PairNode, fills: readonly Fill[]) {
    this.#items = root.pieces.length
    this.#demands = root.pieces.map((piece) => piece.demand)
    this.#node = root
    this.#place = placesOf(root)
    for (const fill of fills) this.#take(fill)
    this.#model = engine.create(
      root.pieces.map((piece) => ({ lower: piece.demand, upper: ENDLESS })),
      this.#columns.map((column) => ({ cost: 1, lower: 0, upper: ENDLESS, ...column })),
    )
    for (let row = 0; row < this.#items; row++) this.#asks.push('at least')
  }

  /** the columns as fills of the node gone to; null: closed there */
  get fills(): readonly (Fill | null)[] {
    return this.#fills
  }

  /** True where one piece more than the node wants would be wrong, so that the row's price may be less than nothing. */
  exactly(row: number): boolean {
    return this.#asks[row] === 'exactly'
  }

  /** rows made so far, items first */
  get rows(): number {
    return this.#asks.length
  }

  /** A row for a joined piece; it counts only in nodes that hold the piece. */
  addRow(): number {
    this.#model.addRow(Number.NEGATIVE_INFINITY, ENDLESS)
    this.#asks.push('nothing')
    return this.#asks.length - 1
  }

  goTo(node: PairNode): void {
    this.#node = node
    this.#place = placesOf(node)
    const exact = new Set(
      node.merges.flatMap((merge) =>
        merge.row >= 0 ? [merge.row] : merge.usedUp < this.#items ? [merge.usedUp] : [],
      ),
    )
    for (let row = 0; row < this.#asks.length; row++) {
      const ask: Ask = exact.has(row) ? 'exactly' : row < this.#items ? 'at least' : 'nothing'
      if (ask === this.#asks[row]) continue
      this.#asks[row] = ask
      const demand = this.#demands[row] ?? 1
      const lower = ask === 'nothing' ? Number.NEGATIVE_INFINITY : demand
      this.#model.setRowBounds(row, lower, ask === 'exactly' ? demand : ENDLESS)
    }
    this.#fills = this.#columns.map((column, c) => {
      const fill = this.#read(column)
      const open = fill !== null
      if (open !== this.#open[c]) {
        this.#open[c] = open
        this.#model.setBounds(c, 0, open ? ENDLESS : 0)
      }
      return fill
    })
  }

  /** Adds fills of the node gone to; says how many were new. */
  add(fills: readonly Fill[]): number {
    const from = this.#columns.length
    for (const fill of fills) this.#take(fill)
    const added = this.#columns.slice(from)
    if (added.length > 0)
      this.#model.addColumns(added.map((column) => ({ cost: 1, lower: 0, upper: ENDLESS, ...column })))
    return added.length
  }

  solve(): LpSolution {
    return this.#model.solve()
  }

  dispose(): void {
    this.#model.dispose()
  }

  #take(fill: Fill): void {
    const sum = new Map<number, number>()
    fill.pieces.forEach((piece, k) => {
      for (const [row, copies] of this.#node.pieces[piece]?.rows ?? [])
        sum.set(row, (sum.get(row) ?? 0) + copies * (fill.counts[k] ?? 0))
    })
    const entries = [...sum].sort(([a], [b]) => a - b)
    const column = { rows: entries.map(([row]) => row), values: entries.map(([, value]) => value) }
    const key = `${column.rows.join(',')}:${column.values.join(',')}`
    if (this.#keys.has(key)) return
    this.#keys.add(key)
    this.#columns.push(column)
    this.#open.push(true)
    this.#fills.push(fill)
  }

  /** The column as pieces of the node; null where it breaks a pair or holds more than the node wants. */
  #read(column: Column): Fill | null {
    const held = new Map<number, number>()
    const marks = new Map<number, number>()
    for (let k = 0; k < column.rows.length; k++) {
      const row = column.rows[k] as number
      ;(row < this.#items ? held : marks).set(row, column.values[k] as number)
    }
    for (const merge of this.#node.merges) {
      const a = held.get(merge.first) ?? 0
      const b = held.get(merge.second) ?? 0
      if (a === 0 && b === 0) continue
      const same = merge.first === merge.second
      const copies = merge.row >= 0 ? (marks.get(merge.row) ?? 0) : (held.get(merge.usedUp) ?? 0)
      const joined = merge.row < 0 && same ? Math.floor(copies / 2) : copies
      if (joined === 0) continue
      if (same ? a < 2 * joined : Math.min(a, b) < joined) return null
      held.set(merge.first, a - (same ? 2 : 1) * joined)
      if (!same) held.set(merge.second, b - joined)
      held.set(merge.joined, joined)
    }
    const found: [number, number][] = []
    for (const [id, count] of held) {
      if (count === 0) continue
      const place = this.#place.get(id)
      if (place === undefined || count > (this.#node.pieces[place]?.demand ?? 0)) return null
      found.push([place, count])
    }
    found.sort(([x], [y]) => x - y)
    const fill = { pieces: found.map(([place]) => place), counts: found.map(([, count]) => count) }
    return breaksPair(this.#node, fill) ? null : fill
  }
}

function placesOf(node: PairNode): Map<number, number> {
  return new Map(node.pieces.map((piece, k) => [piece.id, k]))
}
