import { printLength, printMoney, printShare, sumCents, toFeet } from '../../units/index.ts'
import type { Block, Sheet } from '../sheet-types.ts'
import type { PaperSource } from '../source.ts'
import { hardwareTable } from '../tables/hardware-table.ts'
import { orderTable } from '../tables/order-table.ts'

/** To be filled in by hand. */
const BLANK = '_'.repeat(40)

/** What the yard is asked for: lumber by product and length, then goods, weight, longest piece, how to load it. */
export function orderSheet(source: PaperSource): Sheet {
  const { estimate, book } = source
  const { spares, takeoff } = estimate
  const sum = sumCents(
    estimate.pricing.lines
      .filter(({ part, group }) => part === 'material' && group !== 'joints')
      .map(({ amount }) => amount),
  )
  return {
    id: 'order',
    title: 'Order for the yard',
    audience: 'yard',
    across: true,
    blocks: [
      {
        kind: 'facts',
        rows: [
          ['To', book.supplier === '' ? 'the yard' : book.supplier],
          [
            'Prices',
            `your list ${book.name} of ${book.date}${book.invented ? '; invented for a demonstration' : ''}. Please confirm, and say until when they hold.`,
          ],
          ['Deliver to', BLANK],
          ['On, and who to call', BLANK],
          ['Longest piece', `${toFeet(longestOf(source))} ft`],
          [
            'Weight of the lumber',
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
      { kind: 'table', table: orderTable(estimate), tick: true, empty: 'No lumber is bought.' },
      ...spareBlocks(spares),
      { kind: 'table', table: hardwareTable(estimate), tick: true, empty: 'No hardware is bought.' },
      { kind: 'text', tone: 'strong', text: `All of it by this list, before tax: ${printMoney(sum)}` },
      {
        kind: 'caution',
        text: 'Hangers, ties, bases, nails and bolts in treated wood: hot-dip galvanised or stainless, metal and nails of the same kind.',
      },
      { kind: 'heading', text: 'As text, to paste into a message' },
      { kind: 'text', text: orderMessage(source) },
    ],
  }
}

/** The order as lines of plain text. */
export function orderMessage({ estimate, book }: PaperSource): string {
  const { job } = estimate
  const rows = orderTable(estimate).rows.filter(({ code }) => code !== 'on hand')
  const goods = hardwareTable(estimate).rows
  return [
    `Order for ${job.name}; list ${book.name} of ${book.date}`,
    ...rows.map(
      ({ count, product, length, use, code }) =>
        `${count} ${count === '1' ? 'pc' : 'pcs'} ${[product, length, use].filter((words) => words !== '').join(', ')} (${code})`,
    ),
    ...goods.map(({ bought, unit, label, code }) => `${bought} ${unit} ${label} (${code})`),
  ].join('\n')
}

function longestOf({ estimate }: PaperSource): number {
  return Math.max(0, ...estimate.plans.flatMap(({ plan }) => plan.order.map(({ length }) => length)))
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
