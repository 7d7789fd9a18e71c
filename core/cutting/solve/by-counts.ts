import { scaleFor } from '../bound/dual-bound.ts'
import type { LpColumn, LpEngine } from '../lp-port.ts'
import type { Costs } from '../model/costs.ts'
import type { Problem } from '../model/problem.ts'
import { branch } from './branch.ts'
import type { IntegerQuestion } from './integer.ts'
import { type MasterRows, masterRows, pricesFrom } from './master.ts'
import { type Program, programOf } from './program.ts'
import type { Solution } from './solution.ts'
import type { Work } from './work.ts'

/** Orders looked at for one question at most: each is a number of boards of each stock type. */
const MOST_ORDERS = 50_000
/** Relaxations solved for one question at most; where orders are refuted at all, a few refute thousands. */
const MOST_RELAXATIONS = 60
/** Nodes that one order is searched by: where it holds the pieces, a plan is mostly found in some twenty. */
const NODES_OF_AN_ORDER = 300

/** So many boards of each stock type, and what they cost. */
interface Order {
  readonly boards: readonly number[]
  readonly cost: number
}

export interface ByCounts {
  /** no plan of the given patterns costs less */
  readonly least: number
  /** one that costs as much, where it was found */
  readonly solution: Solution | null
}

/** What whole-numbered prices prove of every order that holds the pieces: its boards are worth at least the pieces. */
interface Cut {
  /** per stock type, the best worth of one board */
  readonly worth: readonly number[]
  readonly least: number
}

/**
 * The least that a plan made of the given patterns can cost, by the orders that money can buy: between the bound and the
 * best plan there are few, and most hold the pieces not even where boards may be cut by fractions. Prices that refute
 * one refute most of its neighbours; they are whole numbers, so a refutation is exact. What is left is searched order by
 * order, the cheapest first. `least` is `question.below` where no order is left, and `question.enough` where this has no
 * say: it speaks of pieces without runs, whose boards cost the same however they are cut.
 */
export function byCounts(
  problem: Problem,
  costs: Costs,
  engine: LpEngine,
  question: IntegerQuestion,
  work: Work,
): ByCounts {
  const orders = applies(problem, costs) ? ordersBetween(problem, costs, question) : null
  if (orders === null) return { least: question.enough, solution: null }
  const rows = masterRows(problem)
  const program = programOf(problem, costs, question)
  const model = engine.create(program.rows, freeOrder(problem, costs, program))
  try {
    const cuts: Cut[] = []
    let solved = 0
    for (const { boards, cost } of orders) {
      if (cuts.some((cut) => refutes(cut, boards))) continue
      const unknown: ByCounts = { least: cost, solution: null }
      if (solved === MOST_RELAXATIONS || work.stopped()) return unknown
      boards.forEach((count, s) => {
        model.setBounds(program.sums + s, 0, count)
      })
      solved++
      work.nodes++
      const { status, duals } = model.solve()
      if (status !== 'optimal') return unknown
      const cut = cutFrom(problem, costs, question, rows, duals)
      if (refutes(cut, boards)) {
        cuts.unshift(cut)
        continue
      }
      const of = { ...question, boards, enough: cost, nodes: Math.min(NODES_OF_AN_ORDER, question.nodes) }
      const answer = branch(problem, costs, engine, of, work)
      if (answer.solution !== null || !answer.proven) return { least: cost, solution: answer.solution }
    }
    return { least: question.below, solution: null }
  } finally {
    model.dispose()
  }
}

/** Boards of an order are free and more of them cost their price: what is spent shows that the order is too small. */
function freeOrder(problem: Problem, costs: Costs, program: Program): LpColumn[] {
  const extra = problem.stocks.map((_, s): LpColumn => {
    const rows = program.lp[program.sums + s]?.rows ?? []
    return { cost: 0, lower: 0, upper: Number.POSITIVE_INFINITY, rows, values: [-1] }
  })
  const columns = program.lp.map((column, c): LpColumn => {
    const master = program.columns[c]
    if (master?.kind === 'pattern') return { ...column, cost: costs.board[master.pattern.stock] ?? 0 }
    const price = costs.board[c - program.sums]
    return price === undefined ? column : { ...column, cost: -price, upper: 0 }
  })
  return [...columns, ...extra]
}

function applies(problem: Problem, costs: Costs): boolean {
  const { stocks, runs } = problem
  return (
    stocks.length > 1 &&
    runs.length === 0 &&
    costs.savings === 0 &&
    stocks.every((stock, s) => stock.counts === null && (costs.board[s] ?? 0) > 0)
  )
}

/** Every order that costs less than is asked for and no less than is proven, the cheapest first; null: too many. */
function ordersBetween(
  problem: Problem,
  costs: Costs,
  { patterns, enough, below }: IntegerQuestion,
): Order[] | null {
  const pieces = problem.items.reduce((sum, item) => sum + item.demand, 0)
  const used = [...new Set(patterns.map(({ stock }) => stock))].sort((a, b) => a - b)
  const boards = problem.stocks.map(() => 0)
  const orders: Order[] = []
  let steps = 0
  /** false: too many */
  const go = (k: number, cost: number): boolean => {
    const s = used[k]
    if (s === undefined) {
      if (cost >= enough) orders.push({ boards: [...boards], cost })
      return steps <= MOST_ORDERS
    }
    const price = costs.board[s] ?? 0
    const supply = problem.stocks[s]?.supply ?? 0
    const first = k === used.length - 1 ? Math.max(0, Math.ceil((enough - cost) / price)) : 0
    for (let count = first; count <= supply && cost + count * price < below; count++) {
      steps++
      boards[s] = count
      if (!go(k + 1, cost + count * price)) return false
    }
    boards[s] = 0
    return true
  }
  const listed = go(0, costs.constant + pieces * costs.perPiece)
  return listed ? orders.sort((a, b) => a.cost - b.cost) : null
}

/** What the prices of a relaxation prove, in whole numbers: no board of a type is worth more than its best pattern. */
function cutFrom(
  problem: Problem,
  costs: Costs,
  { patterns, below }: IntegerQuestion,
  rows: MasterRows,
  duals: ArrayLike<number>,
): Cut {
  const { items } = pricesFrom(problem, costs, rows, duals, scaleFor(below))
  const worth = problem.stocks.map(() => 0)
  for (const { stock, items: held, counts } of patterns) {
    const value = held.reduce((sum, item, k) => sum + (counts[k] ?? 0) * (items[item] ?? 0), 0)
    worth[stock] = Math.max(worth[stock] ?? 0, value)
  }
  return { worth, least: problem.items.reduce((sum, item, i) => sum + item.demand * (items[i] ?? 0), 0) }
}

function refutes({ worth, least }: Cut, boards: readonly number[]): boolean {
  return boards.reduce((sum, count, s) => sum + count * (worth[s] ?? 0), 0) < least
}
