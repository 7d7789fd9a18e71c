import type { Costed } from './cost-design.ts'
import {
  type BoughtFrom,
  goodOffers,
  goodThing,
  type Line,
  type PriceBook,
  stockOffers,
  stockThing,
  supplierOrders,
} from './pricing/index.ts'
import { priceOf } from './units/index.ts'

/** A line that another supplier could bring: what it would add to that order, and what it costs more. */
interface Move {
  readonly thing: string
  readonly adds: number
  readonly more: number
}

/**
 * Ways to buy some things from one supplier only, so that the order there comes to what is brought free: one for each supplier of an order whose delivery is paid and could be free, where moving lines costs less than the fee.
 * The lines that cost least for what they add are moved; no more is bought than is needed.
 */
export function waysToFreeDelivery(
  { pricing }: Pick<Costed, 'pricing'>,
  suppliers: readonly string[],
  book: PriceBook,
): readonly BoughtFrom[] {
  const orders = pricing === null ? [] : supplierOrders(pricing.lines, book)
  return orders.flatMap(({ supplier, material, freeFrom, delivery }) => {
    if (freeFrom === null || delivery === 0) return []
    const others = orders.filter((order) => order.supplier !== supplier).flatMap(({ lines }) => lines)
    const moved = leastMoves(movesTo(supplier, others, book), freeFrom - material)
    if (moved === null || moved.reduce((sum, { more }) => sum + more, 0) >= delivery) return []
    const kept = movesTo(supplier, orders.find((order) => order.supplier === supplier)?.lines ?? [], book)
    return [{ suppliers, only: [...kept, ...moved].map(({ thing }) => ({ thing, supplier })) }]
  })
}

function movesTo(supplier: string, lines: readonly Line[], book: PriceBook): readonly Move[] {
  const byId = new Map(lines.map((line) => [line.id, line]))
  const boards = book.lumber.flatMap(({ stock }) =>
    stock.flatMap((entry): readonly Move[] => {
      const offers = stockOffers(entry, book)
      const there = offers.find((offer) => offer.supplier === supplier)
      const bought = offers.map(({ id }) => byId.get(`lumber-${id}`)).find((line) => line !== undefined)
      if (there === undefined || bought === undefined) return []
      const adds = there.price * (bought.thousandths / 1000)
      return [{ thing: stockThing(entry.code), adds, more: adds - bought.amount }]
    }),
  )
  const goods = book.goods.flatMap((good): readonly Move[] => {
    const there = goodOffers(good, book).find((offer) => offer.supplier === supplier)
    const bought = byId.get(`good-${good.sku}`)
    if (there === undefined || bought === undefined) return []
    const adds = priceOf(Math.ceil(bought.thousandths / there.pack) * there.pack, there.price)
    return [{ thing: goodThing(good.sku), adds, more: adds - bought.amount }]
  })
  return [...boards, ...goods]
}

/** Lines that add up to what is missing, cheapest for what they add first, without those that are not needed after all. */
function leastMoves(moves: readonly Move[], missing: number): readonly Move[] | null {
  const taken: Move[] = []
  let sum = 0
  for (const move of moves.toSorted((a, b) => a.more * b.adds - b.more * a.adds)) {
    if (sum >= missing) break
    taken.push(move)
    sum += move.adds
  }
  if (sum < missing) return null
  return taken
    .toSorted((a, b) => b.more - a.more)
    .filter((move) => {
      if (move.more <= 0 || sum - move.adds < missing) return true
      sum -= move.adds
      return false
    })
}
