import { type Line, type SupplierOrder, supplierOrders } from '../../pricing/index.ts'
import { type Cents, cents, printMoney, sumCents } from '../../units/index.ts'
import type { PaperSource } from '../source.ts'
import { billOf } from '../tables/joint-goods.ts'
import { type HeldPart, partOf } from './held-lines.ts'

/** What one supplier is asked for. */
export interface Asked {
  readonly supplier: string
  /** ids of its lines; null: everything that is bought */
  readonly lines: ReadonlySet<string> | null
  readonly delivery: string
  /** of so many orders */
  readonly of: number
}

/** One order for each supplier who brings anything, in the order in which the price book names them. */
export function askedOf({ estimate, book }: PaperSource): readonly Asked[] {
  const whole = {
    supplier: book.supplier === '' ? 'the yard' : book.supplier,
    lines: null,
    delivery: '',
    of: 1,
  }
  if (book.suppliers.length === 0) return [whole]
  const orders = supplierOrders(estimate.pricing.lines, book)
  return orders.map((order, at) => ({
    supplier: order.supplier,
    // what lies on the rack, and what comes by other trucks, stands on the first
    lines:
      orders.length === 1
        ? null
        : new Set([
            ...order.lines.map(({ id }) => id),
            ...(at === 0 ? unbrought(estimate.pricing.lines, orders) : []),
          ]),
    delivery: deliveryOf(order),
    of: orders.length,
  }))
}

function unbrought(lines: readonly Line[], orders: readonly SupplierOrder[]): readonly Line['id'][] {
  const brought = new Set(orders.flatMap((order) => order.lines.map(({ id }) => id)))
  return lines.filter(({ id }) => !brought.has(id)).map(({ id }) => id)
}

function deliveryOf({ fee, freeFrom, delivery }: SupplierOrder): string {
  if (fee === null) return 'please say what it costs'
  const free = freeFrom === null ? '' : `, free from ${printMoney(freeFrom)} before tax`
  return `${printMoney(delivery)} by your terms${free}`
}

export function isAsked({ lines }: Asked, id: Line['id']): boolean {
  return lines === null || lines.has(id)
}

/** What the asked lines come to by their prices, all of them or the part that is free or held. */
export function sumOf({ estimate }: PaperSource, asked: Asked, only: HeldPart | null = null): Cents {
  return sumCents(
    estimate.pricing.lines
      .filter(({ id, part }) => part === 'material' && isAsked(asked, id))
      .flatMap((line) => (only === null ? [line.amount] : (partOf(line, only)?.amount ?? []))),
  )
}

/** What the yard will bill where that is another sum: joints are priced by the joint, their goods come out of packs. */
export function billedWords(source: PaperSource, asked: Asked): readonly string[] {
  const { estimate, book } = source
  const joints = estimate.pricing.lines.filter(
    ({ id, group, part }) => part === 'material' && group === 'joints' && isAsked(asked, id),
  )
  const priced = sumCents(joints.map(({ amount }) => amount))
  const billed = sumCents(joints.map((line) => billOf(line, estimate, book.goods)))
  const more = priced - billed
  if (more === 0) return []
  const bill = printMoney(cents(sumOf(source, asked) - more))
  return [
    `The yard bills ${bill}: what joints take is priced here by the joint, ${printMoney(priced)} in all, and bought in packs that ${billed === 0 ? 'stand above' : `stand above or for ${printMoney(billed)} more`}.`,
  ]
}

/** Of which days the prices of an order are. */
export function pricesOf({ estimate, book }: PaperSource, { supplier, lines }: Asked): string {
  const days = estimate.pricing.lines
    .filter(({ id, source }) => lines?.has(id) === true && (source?.supplier ?? book.supplier) === supplier)
    .map(({ source }) => source?.date ?? book.date)
    .toSorted()
  const [first = book.date] = days
  const last = days.at(-1) ?? first
  return first === last ? `of ${first}` : `of ${first} to ${last}`
}

/** In ticks; offcuts on hand are not asked for. */
export function longestOf({ estimate }: PaperSource, asked: Asked): number {
  const lengths = estimate.plans.flatMap(({ plan, onHand }) =>
    plan.order.flatMap(({ stockId, length }) =>
      isAsked(asked, `lumber-${stockId}`) && !onHand.includes(stockId) ? [length] : [],
    ),
  )
  return Math.max(0, ...lengths)
}
