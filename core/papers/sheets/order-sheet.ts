import { type Line, type SupplierOrder, supplierOrders } from '../../pricing/index.ts'
import { printLength, printMoney, printShare, sumCents, toFeet } from '../../units/index.ts'
import type { Block, Sheet } from '../sheet-types.ts'
import type { PaperSource } from '../source.ts'
import { hardwareTable } from '../tables/hardware-table.ts'
import { orderTable } from '../tables/order-table.ts'

/** To be filled in by hand. */
const BLANK = '_'.repeat(40)

/** What one supplier is asked for. */
interface Asked {
  readonly supplier: string
  /** ids of its lines; null: everything that is bought */
  readonly lines: ReadonlySet<string> | null
  readonly delivery: string
  /** of so many orders */
  readonly of: number
}

/** One order for each supplier who brings anything, in the order in which the price book names them. */
export function orderSheets(source: PaperSource): readonly Sheet[] {
  return askedOf(source).map((asked, at) => orderSheet(source, asked, at))
}

function askedOf({ estimate, book }: PaperSource): readonly Asked[] {
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

/** Lumber by product and length, then goods, weight, longest piece, how to load it. */
function orderSheet(source: PaperSource, asked: Asked, at: number): Sheet {
  const { estimate, book } = source
  const { spares, takeoff } = estimate
  const sum = sumOf(source, asked)
  return {
    id: 'order',
    ...(asked.of === 1 ? {} : { name: `order ${at + 1}` }),
    title: asked.of === 1 ? 'Order for the yard' : `Order ${at + 1} of ${asked.of}: ${asked.supplier}`,
    audience: 'yard',
    across: true,
    blocks: [
      {
        kind: 'facts',
        rows: [
          ['To', asked.supplier],
          [
            'Prices',
            `${asked.lines === null ? `your list ${book.name} of ${book.date}` : `as told us, ${pricesOf(source, asked)}`}${book.invented ? '; invented for a demonstration' : ''}. Please confirm, and say until when they hold.`,
          ],
          ['Deliver to', BLANK],
          ['On, and who to call', BLANK],
          ...(asked.delivery === '' ? [] : [['Delivery', asked.delivery] as const]),
          ['Longest piece', `${toFeet(longestOf(source, asked))} ft`],
          [
            asked.lines === null ? 'Weight of the lumber' : 'Weight of all lumber of the job',
            `${grouped(takeoff.weight.seasoned)} lb seasoned, up to ${grouped(takeoff.weight.freshlyTreated)} lb fresh from treatment`,
          ],
          [
            'Load and drop',
            'joists lowest, then rims and ledger, posts and beams on top; decking apart, flat and covered',
          ],
          [
            'Please no',
            'change of length, size, grade or treatment without a call, but for what stands under “Or instead”',
          ],
        ],
      },
      { kind: 'table', table: orderTable(estimate, asked.lines), tick: true, empty: 'No lumber is bought.' },
      ...(asked.lines === null || at === 0 ? spareBlocks(spares) : []),
      {
        kind: 'table',
        table: hardwareTable(estimate, asked.lines),
        tick: true,
        empty: 'No hardware is bought.',
      },
      { kind: 'text', tone: 'strong', text: `All of it by this list, before tax: ${printMoney(sum)}` },
      {
        kind: 'caution',
        text: 'Hangers, ties, bases, nails and bolts in treated wood: hot-dip galvanised or stainless, metal and nails of the same kind.',
      },
      { kind: 'heading', columns: 'message', text: 'As text, to paste into a message' },
      { kind: 'text', columns: 'message', text: messageTo(source, asked) },
    ],
  }
}

/** Each supplier's order as lines of plain text, for a file of that name. */
export function orderMessages(
  source: PaperSource,
): readonly { readonly name: string; readonly text: string }[] {
  return askedOf(source).map((asked, at) => ({
    name: asked.of === 1 ? 'order' : `order ${at + 1}`,
    text: messageTo(source, asked),
  }))
}

function messageTo(source: PaperSource, asked: Asked): string {
  const { estimate, book } = source
  const { job } = estimate
  const rows = orderTable(estimate, asked.lines).rows.filter(({ code }) => code !== 'on hand')
  const boards = rows.reduce((sum, { count }) => sum + Number(count), 0)
  const { seasoned, freshlyTreated } = estimate.takeoff.weight
  const goods = hardwareTable(estimate, asked.lines).rows
  return [
    asked.of === 1
      ? `Order for ${job.name}; list ${book.name} of ${book.date}`
      : `Order for ${job.name} to ${asked.supplier}; prices ${pricesOf(source, asked)}`,
    ...rows.map(
      ({ count, product, length, use, code, instead }) =>
        `${count} ${count === '1' ? 'pc' : 'pcs'} ${[product, length, use].filter((words) => words !== '').join(', ')} (${code})${instead ? `; or instead ${instead}` : ''}`,
    ),
    `Lumber: ${grouped(boards)} ${boards === 1 ? 'piece' : 'pieces'}, the longest ${toFeet(longestOf(source, asked))} ft; all lumber of the job ${grouped(seasoned)} lb seasoned, up to ${grouped(freshlyTreated)} lb fresh from treatment`,
    ...goods.map(
      ({ bought, unit, label, code }) => `${bought} ${unit} ${label}${code === '' ? '' : ` (${code})`}`,
    ),
    `All of it by this list, before tax: ${printMoney(sumOf(source, asked))}`,
    'No change of length, size, grade or treatment without a call, but for what stands after “or instead”.',
  ].join('\n')
}

/** What the asked lines come to by their prices. */
function sumOf({ estimate }: PaperSource, asked: Asked) {
  return sumCents(
    estimate.pricing.lines
      .filter(({ id, part }) => part === 'material' && isAsked(asked, id))
      .map(({ amount }) => amount),
  )
}

function isAsked({ lines }: Asked, id: Line['id']): boolean {
  return lines === null || lines.has(id)
}

/** Of which days the prices of an order are. */
function pricesOf({ estimate, book }: PaperSource, { supplier, lines }: Asked): string {
  const days = estimate.pricing.lines
    .filter(({ id, source }) => lines?.has(id) === true && (source?.supplier ?? book.supplier) === supplier)
    .map(({ source }) => source?.date ?? book.date)
    .toSorted()
  const [first = book.date] = days
  const last = days.at(-1) ?? first
  return first === last ? `of ${first}` : `of ${first} to ${last}`
}

function longestOf({ estimate }: PaperSource, asked: Asked): number {
  const lengths = estimate.plans.flatMap(({ plan }) =>
    plan.order.flatMap(({ stockId, length }) => (isAsked(asked, `lumber-${stockId}`) ? [length] : [])),
  )
  return Math.max(0, ...lengths)
}

function spareBlocks(spares: PaperSource['estimate']['spares']): readonly Block[] {
  if (spares === null) return []
  const boards = spares.lines.map(({ count, length }) => `${count} × ${printLength(length)}`).join(', ')
  return [
    {
      kind: 'text',
      text: `Spares in this order: ${boards}. With them no second trip is needed ${printShare(spares.probability)} of the time, without them ${printShare(spares.without)}. Uncut and dry they can go back; ask for how long.`,
    },
  ]
}

function grouped(n: number): string {
  return `${n}`.replace(/\B(?=(?:\d{3})+$)/g, ',')
}
