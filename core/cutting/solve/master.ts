import type { Prices } from '../bound/dual-bound.ts'
import type { LpColumn, LpEngine, LpModel, LpRow, LpSolution } from '../lp-port.ts'
import { heldBy, patternKey } from '../model/board-cost.ts'
import type { Costs } from '../model/costs.ts'
import { costIn } from '../model/costs.ts'
import type { Pattern, Problem } from '../model/problem.ts'

const ENDLESS = Number.POSITIVE_INFINITY

export type MasterColumn =
  | { readonly kind: 'pattern'; readonly pattern: Pattern }
  | { readonly kind: 'arc'; readonly run: number; readonly arc: number }
  | { readonly kind: 'excess'; readonly run: number; readonly cap: number }
  | { readonly kind: 'count'; readonly stock: number; readonly choice: number }
  /** a way out that costs more than any plan: what it stands for could not be had */
  | { readonly kind: 'missing item'; readonly item: number }
  | { readonly kind: 'missing run'; readonly run: number }
  /** one piece by itself at a price just above its share of a board; only while the first duals settle */
  | { readonly kind: 'ceiling'; readonly item: number; readonly price: number }

/** Which row of the program says what. */
export interface MasterRows {
  readonly rows: readonly LpRow[]
  readonly flow: readonly number[]
  readonly caps: readonly (readonly number[])[]
  /** −1: endless */
  readonly supply: readonly number[]
  readonly chosen: readonly number[]
}

export function masterRows(problem: Problem): MasterRows {
  const rows: LpRow[] = problem.items.map((item) => ({ lower: item.demand, upper: ENDLESS }))
  const flow: number[] = []
  const caps: number[][] = []
  for (const run of problem.runs) {
    flow.push(rows.length)
    rows.push({ lower: run.members, upper: run.members })
    for (let node = 2; node < run.nodes; node++) rows.push({ lower: 0, upper: 0 })
    caps.push(
      run.caps.map((cap) => {
        rows.push({ lower: -ENDLESS, upper: cap.cap })
        return rows.length - 1
      }),
    )
  }
  const supply: number[] = []
  const chosen: number[] = []
  for (const stock of problem.stocks) {
    const limited = stock.counts !== null || stock.supply !== ENDLESS
    supply.push(limited ? rows.length : -1)
    if (limited) rows.push({ lower: -ENDLESS, upper: stock.counts === null ? stock.supply : 0 })
    chosen.push(stock.counts === null ? -1 : rows.length)
    if (stock.counts !== null) rows.push({ lower: -ENDLESS, upper: 1 })
  }
  return { rows, flow, caps, supply, chosen }
}

/** Row of a run's node: the start's row says how many members there are, an inner node's that what comes in goes out. */
function nodeRow(rows: MasterRows, run: number, node: number): number {
  const first = rows.flow[run] ?? 0
  return node === 0 ? first : first + node - 1
}

export function lpColumn(
  problem: Problem,
  costs: Costs,
  rows: MasterRows,
  column: MasterColumn,
  dear: number,
): LpColumn {
  const entry = (cost: number, at: number[], values: number[], upper: number = ENDLESS): LpColumn => ({
    cost,
    lower: 0,
    upper,
    rows: at,
    values,
  })
  switch (column.kind) {
    case 'pattern': {
      const { pattern } = column
      const at = [...pattern.items]
      const values = [...pattern.counts]
      const supply = rows.supply[pattern.stock] ?? -1
      if (supply >= 0) {
        at.push(supply)
        values.push(1)
      }
      return entry(costIn(problem, costs, pattern), at, values)
    }
    case 'arc': {
      const run = problem.runs[column.run]
      const arc = run?.arcs[column.arc]
      if (run === undefined || arc === undefined) throw new RangeError('no such arc')
      const at = [arc.item, nodeRow(rows, column.run, arc.from)]
      const values = [-1, arc.from === 0 ? 1 : -1]
      if (arc.to !== 1) {
        at.push(nodeRow(rows, column.run, arc.to))
        values.push(1)
      }
      run.caps.forEach((cap, c) => {
        if (cap.points.includes(arc.point)) {
          at.push(rows.caps[column.run]?.[c] ?? 0)
          values.push(1)
        }
      })
      return entry(costs.arcs[column.run]?.[column.arc] ?? 0, at, values, arc.most)
    }
    case 'excess':
      return entry(
        costs.excess[column.run]?.[column.cap] ?? 0,
        [rows.caps[column.run]?.[column.cap] ?? 0],
        [-1],
      )
    case 'count': {
      const count = problem.stocks[column.stock]?.counts?.[column.choice]?.count ?? 0
      const at = [rows.supply[column.stock] ?? 0, rows.chosen[column.stock] ?? 0]
      return entry(costs.counts[column.stock]?.[column.choice] ?? 0, at, [-count, 1], 1)
    }
    case 'ceiling':
      return entry(column.price, [column.item], [1])
    case 'missing item':
      return entry(dear, [column.item], [1])
    case 'missing run':
      return entry(dear, [nodeRow(rows, column.run, 0)], [1])
  }
}

/** Everything but patterns: arcs, excesses, count choices, and ways out where something may be lacking. */
export function fixedColumns(problem: Problem, costs: Costs): MasterColumn[] {
  const columns: MasterColumn[] = []
  problem.runs.forEach((run, r) => {
    run.arcs.forEach((_, a) => {
      columns.push({ kind: 'arc', run: r, arc: a })
    })
    run.caps.forEach((_, c) => {
      if (costs.excess[r]?.[c] !== null) columns.push({ kind: 'excess', run: r, cap: c })
    })
  })
  problem.stocks.forEach((stock, s) => {
    stock.counts?.forEach((_, c) => {
      columns.push({ kind: 'count', stock: s, choice: c })
    })
  })
  return columns
}

export function waysOut(problem: Problem): MasterColumn[] {
  const columns: MasterColumn[] = []
  const endless = problem.stocks
    .filter((stock) => stock.counts === null && stock.supply === ENDLESS)
    .reduce((most, stock) => Math.max(most, stock.capacity), 0)
  problem.items.forEach((item, i) => {
    if (item.width + heldBy(problem, [i], [1]) > endless) columns.push({ kind: 'missing item', item: i })
  })
  problem.runs.forEach((run, r) => {
    if (run.caps.some((cap) => cap.excess === null)) columns.push({ kind: 'missing run', run: r })
  })
  return columns
}

/** The master program: items, runs, caps and supplies as rows; patterns and arcs as columns. */
export class Master {
  readonly problem: Problem
  readonly costs: Costs
  readonly rows: MasterRows
  readonly columns: MasterColumn[] = []
  readonly #keys = new Set<string>()
  /** a price above what any plan could save by a way out */
  readonly #dear: number
  readonly #model: LpModel
  /** bounds that differ from those a column came with, so that the engine is told only what changes */
  readonly #bounds = new Map<number, { lower: number; upper: number }>()

  #ceilings = false

  /** @param ceilings prices that no piece should be worth more than at first; absent: none */
  constructor(
    problem: Problem,
    costs: Costs,
    engine: LpEngine,
    patterns: readonly Pattern[],
    ceilings: readonly number[] = [],
  ) {
    this.problem = problem
    this.costs = costs
    this.rows = masterRows(problem)
    this.#dear = 1000 * (1 + Math.max(...costs.board, ...problem.stocks.map((stock) => stock.option.price)))
    this.columns = [...fixedColumns(problem, costs), ...waysOut(problem)]
    ceilings.forEach((price, item) => {
      this.columns.push({ kind: 'ceiling', item, price })
    })
    this.#ceilings = ceilings.length > 0
    for (const pattern of patterns) {
      const key = patternKey(pattern)
      if (this.#keys.has(key)) continue
      this.#keys.add(key)
      this.columns.push({ kind: 'pattern', pattern })
    }
    this.#model = engine.create(this.rows.rows, this.lpColumns())
  }

  lpColumns(): LpColumn[] {
    return this.columns.map((column) => lpColumn(this.problem, this.costs, this.rows, column, this.#dear))
  }

  /** Adds the patterns that are new; says how many were. */
  add(patterns: readonly Pattern[]): number {
    const added: MasterColumn[] = []
    for (const pattern of patterns) {
      const key = patternKey(pattern)
      if (this.#keys.has(key)) continue
      this.#keys.add(key)
      added.push({ kind: 'pattern', pattern })
    }
    if (added.length === 0) return 0
    this.columns.push(...added)
    this.#model.addColumns(
      added.map((column) => lpColumn(this.problem, this.costs, this.rows, column, this.#dear)),
    )
    return added.length
  }

  /** true while pieces may still be had by themselves */
  get ceilings(): boolean {
    return this.#ceilings
  }

  dropCeilings(): void {
    this.columns.forEach((column, c) => {
      if (column.kind === 'ceiling') this.#model.setBounds(c, 0, 0)
    })
    this.#ceilings = false
  }

  setBounds(column: number, lower: number, upper: number): void {
    const now = this.#bounds.get(column) ?? { lower: 0, upper: this.mostOf(column) }
    if (now.lower === lower && now.upper === upper) return
    if (lower === 0 && upper === this.mostOf(column)) this.#bounds.delete(column)
    else this.#bounds.set(column, { lower, upper })
    this.#model.setBounds(column, lower, upper)
  }

  /** Every column as it came. */
  freeAll(): void {
    for (const column of [...this.#bounds.keys()]) this.setBounds(column, 0, this.mostOf(column))
  }

  /** The upper bound that a column comes with. */
  mostOf(column: number): number {
    const entry = this.columns[column]
    if (entry?.kind === 'arc') return this.problem.runs[entry.run]?.arcs[entry.arc]?.most ?? 0
    return entry?.kind === 'count' ? 1 : ENDLESS
  }

  solve(): LpSolution {
    return this.#model.solve()
  }

  patterns(): Pattern[] {
    return this.columns.flatMap((column) => (column.kind === 'pattern' ? [column.pattern] : []))
  }

  dispose(): void {
    this.#model.dispose()
  }
}

/** Prices of items and caps from the duals, on the 1/scale-cent grid, rounded towards the safe side. */
export function pricesFrom(
  problem: Problem,
  costs: Costs,
  rows: MasterRows,
  duals: ArrayLike<number>,
  scale: number,
): Prices {
  const items = new Float64Array(problem.items.length)
  for (let i = 0; i < items.length; i++) items[i] = Math.max(0, Math.floor((duals[i] ?? 0) * scale + 1e-3))
  const caps = problem.runs.map((run, r) =>
    Float64Array.from(run.caps, (_, c) => {
      const excess = costs.excess[r]?.[c] ?? null
      const dual = Math.min(0, Math.round((duals[rows.caps[r]?.[c] ?? 0] ?? 0) * scale))
      return excess === null ? dual : Math.max(dual, -excess * scale)
    }),
  )
  return { scale, items, caps }
}
