import type { StockOption } from '../types.ts'
import type { CountChoice } from './problem.ts'

/** Longest list of counts offered for one stock option; beyond it only whole packs and the turns of its price. */
const MOST_CHOICES = 400

/** Price of `count` boards bought together, in cents: the last break reached holds for all of them. */
export function priceOfCount(option: StockOption, count: number): number {
  let price: number = option.price
  let reached = 0
  for (const step of option.breaks ?? []) {
    if (count >= step.from && step.from >= reached) {
      price = step.price
      reached = step.from
    }
  }
  return price * count
}

/**
 * The counts in which a stock option with a pack, a minimum or a price break can be bought, with what each costs;
 * null for plain stock. A count that costs as much as a greater one is left out.
 */
export function countChoices(option: StockOption, supply: number, pieces: number): CountChoice[] | null {
  const pack = Math.max(1, option.pack ?? 1)
  const minimum = Math.max(1, option.minimum ?? 1)
  if (pack === 1 && minimum === 1 && (option.breaks ?? []).length === 0) return null
  const turns = (option.breaks ?? []).map((step) => step.from)
  const most = Math.max(pieces, minimum, ...turns) + pack
  const counts = new Set<number>()
  const step = pack * Math.max(1, Math.ceil(most / pack / MOST_CHOICES))
  for (let count = Math.ceil(minimum / pack) * pack; count <= most; count += step) counts.add(count)
  for (const turn of turns) counts.add(Math.ceil(Math.max(turn, minimum) / pack) * pack)
  const sorted = [...counts].filter((count) => count <= supply).sort((a, b) => b - a)
  const kept: CountChoice[] = []
  for (const count of sorted) {
    const cost = priceOfCount(option, count)
    if (kept.every((choice) => choice.cost > cost)) kept.push({ count, cost })
  }
  return kept.reverse()
}
