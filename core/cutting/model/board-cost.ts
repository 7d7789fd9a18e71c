import { TICKS_PER_FOOT } from '../../units/index.ts'
import type { Pattern, Problem } from './problem.ts'

/**
 * What is taken off a board's base cost when `used` of its capacity is cut: the value of an offcut worth keeping
 * (never more than the board's own price; none for boards bought by the pack or at a break, whose price is no single board's) and the saw cut that a board used to its end does not need.
 */
export function savingOf(problem: Problem, stock: number, used: number): number {
  const type = problem.stocks[stock]
  if (type === undefined) return 0
  const { job } = problem
  let saving = 0
  if (job.perCut > 0 && trimOf(problem, stock) === 0 && used * problem.unit === type.usable + job.kerf)
    saving += job.perCut
  if (job.keep !== null && type.counts === null) {
    const left = type.usable - used * problem.unit
    if (left >= job.keep.from && left > 0) {
      saving += Math.min(Math.floor((left * job.keep.centsPerFoot) / TICKS_PER_FOOT), type.option.price)
    }
  }
  return saving
}

/** Trim at each end: bought boards only; an offcut on hand has its good ends already. */
export function trimOf(problem: Problem, stock: number): number {
  return problem.stocks[stock]?.option.offcut === true ? 0 : problem.job.endTrim
}

export function patternOf(
  problem: Problem,
  stock: number,
  items: readonly number[],
  counts: readonly number[],
): Pattern {
  let used = 0
  let pieces = 0
  for (let k = 0; k < items.length; k++) {
    const count = counts[k] ?? 0
    used += (problem.items[items[k] ?? 0]?.width ?? 0) * count
    pieces += count
  }
  used += heldBy(problem, items, counts)
  const base = problem.stocks[stock]?.base ?? 0
  const cost = base + pieces * problem.perPiece - (problem.savings ? savingOf(problem, stock, used) : 0)
  return { stock, items, counts, used, cost }
}

/** What a board with these pieces loses for ends that share no cut. */
export function heldBy(problem: Problem, items: readonly number[], counts: readonly number[]): number {
  const { mix } = problem.measure
  if (mix === null) return 0
  let state = 0
  items.forEach((item, k) => {
    const kind = problem.items[item]?.kind ?? 0
    for (let copy = 0; copy < (counts[k] ?? 0); copy++)
      state = mix.after[state * mix.kinds.length + kind] ?? 0
  })
  return mix.held[state] ?? 0
}

/** The pattern of a board of the first stock that holds these pieces, each named as often as it is there. */
export function patternFrom(problem: Problem, parts: readonly number[]): Pattern {
  const items = [...new Set(parts)].sort((a, b) => a - b)
  return patternOf(
    problem,
    0,
    items,
    items.map((item) => parts.filter((part) => part === item).length),
  )
}

export function patternKey(pattern: Pattern): string {
  return `${pattern.stock}:${pattern.items.join(',')}:${pattern.counts.join(',')}`
}
