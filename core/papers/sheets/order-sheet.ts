import { printLength, printMoney, printShare, toFeet } from '../../units/index.ts'
import { type Asked, askedOf, billedWords, longestOf, pricesOf, sumOf } from '../order/asked.ts'
import { grouped } from '../order/grouped.ts'
import { type Held, heldHere, heldOf } from '../order/held-lines.ts'
import { messageTo } from '../order/order-message.ts'
import { waitingBoards, waitingWith } from '../order/waiting-boards.ts'
import { waitingHoles, waitingWords } from '../order/waiting-holes.ts'
import type { Block, Sheet } from '../sheet-types.ts'
import type { PaperSource } from '../source.ts'
import { hardwareTable } from '../tables/hardware-table.ts'
import { orderTable } from '../tables/order-table.ts'
import { tableOf } from '../tables/table.ts'

/** The caution, the sum and a word on it after the goods, points. */
const AFTER_GOODS = 60
/** To be filled in by hand. */
const BLANK = '_'.repeat(40)

/** One order for each supplier who brings anything, in the order in which the price book names them. */
export function orderSheets(source: PaperSource): readonly Sheet[] {
  const held = heldOf(source.estimate)
  return askedOf(source).map((asked, at) => orderSheet(source, asked, at, held))
}

/** Each supplier's order as lines of plain text, for a file of that name. */
export function orderMessages(
  source: PaperSource,
): readonly { readonly name: string; readonly text: string }[] {
  const held = heldOf(source.estimate)
  return askedOf(source).map((asked, at) => ({
    name: asked.of === 1 ? 'order' : `order ${at + 1}`,
    text: messageTo(source, asked, held),
  }))
}

/** Lumber by product and length, then goods, weight, longest piece, how to load it; what is on hold after all of that. */
function orderSheet(source: PaperSource, asked: Asked, at: number, held: Held): Sheet {
  const { estimate, book } = source
  const isHeld = heldHere(held, asked.lines).length > 0
  const free = { held, part: 'free' } as const
  return {
    id: 'order',
    ...(asked.of === 1 ? {} : { name: `order ${at + 1}` }),
    title: asked.of === 1 ? 'Order for the yard' : `Order ${at + 1} of ${asked.of}: ${asked.supplier}`,
    audience: 'yard',
    across: true,
    blocks: [
      { kind: 'facts', rows: facts(source, asked) },
      ...(isHeld
        ? [
            {
              kind: 'caution',
              text: 'In two parts: what can be bought now, and what is on hold. Nothing on hold is loaded or cut before we say so.',
            } satisfies Block,
            { kind: 'heading', text: 'To be bought now' } satisfies Block,
          ]
        : []),
      {
        kind: 'table',
        table: orderTable(estimate, asked.lines, free, book),
        tick: true,
        empty: isHeld ? 'No lumber is free to be bought.' : 'No lumber is bought.',
      },
      ...(asked.lines === null || at === 0 ? spareBlocks(estimate.spares) : []),
      {
        kind: 'table',
        table: hardwareTable(estimate, book.goods, asked.lines, free),
        tick: true,
        follows: AFTER_GOODS,
        empty: isHeld ? 'No hardware is free to be bought.' : 'No hardware is bought.',
      },
      {
        kind: 'caution',
        text: 'Hangers, ties, bases, nails and bolts in treated wood: hot-dip galvanised or stainless, metal and nails of the same kind.',
      },
      ...(isHeld ? holdBlocks(source, asked, held) : []),
      {
        kind: 'text',
        tone: 'strong',
        text: `All of it by this list, before tax: ${printMoney(sumOf(source, asked))}`,
      },
      ...billedWords(source, asked).map((text) => ({ kind: 'text', text }) as const),
    ],
  }
}

function facts(source: PaperSource, asked: Asked): readonly (readonly [string, string])[] {
  const { estimate, book } = source
  const { weight } = estimate.takeoff
  const address = estimate.job.customer.address.trim()
  return [
    ['To', asked.supplier],
    [
      'Prices',
      `${asked.lines === null ? `your list ${book.name} of ${book.date}` : `as told us, ${pricesOf(source, asked)}`}${book.invented ? '; invented for a demonstration' : ''}. Please confirm, and say until when they hold.`,
    ],
    ['Deliver to', address === '' ? BLANK : address],
    ['On, and who to call', BLANK],
    ...(asked.delivery === '' ? [] : [['Delivery', asked.delivery] as const]),
    ['Longest piece', `${toFeet(longestOf(source, asked))} ft`],
    [
      asked.lines === null ? 'Weight of the lumber' : 'Weight of all lumber of the job',
      `${grouped(weight.seasoned)} lb seasoned, up to ${grouped(weight.freshlyTreated)} lb fresh from treatment`,
    ],
    [
      'Load and drop',
      'joists lowest, then rims and ledger, posts and beams on top; decking apart, flat and covered',
    ],
    [
      'Please no',
      'change of length, size, grade or treatment without a call, but for what stands under “Or instead”',
    ],
  ]
}

/** What somebody must settle first: why, who, and which boards and goods wait for it. */
function holdBlocks(source: PaperSource, asked: Asked, held: Held): readonly Block[] {
  const { estimate, book } = source
  const kept = { held, part: 'held' } as const
  const boards = waitingBoards(estimate, held.holds)
  const here = new Set(heldHere(held, asked.lines).map(({ name }) => name))
  const sum = (part: 'free' | 'held') => printMoney(sumOf(source, asked, { held, part }))
  return [
    { kind: 'text', tone: 'strong', text: `To be bought now, before tax: ${sum('free')}` },
    { kind: 'page break' },
    { kind: 'heading', text: 'On hold: not to be bought before it is settled' },
    {
      kind: 'table',
      table: tableOf(
        'holds',
        '',
        [
          ['name', 'Hold', 'left'],
          ['what', 'What is open', 'left'],
          ['until', 'Not to be bought before', 'left'],
          ['also', 'Waits with it, sawn from the same boards', 'left'],
        ],
        heldHere(held, asked.lines).map((hold) => ({
          name: hold.name,
          what: hold.what,
          until: hold.until,
          also: waitingWith(estimate, hold, boards),
        })),
      ),
      empty: '',
    },
    {
      kind: 'text',
      text: 'Held are the boards from which a piece in doubt is sawn, and the metal at it; sizes, lengths and counts may come out otherwise. The yard may price them.',
    },
    {
      kind: 'table',
      table: orderTable(estimate, asked.lines, kept, book),
      tick: true,
      empty: 'No lumber waits.',
    },
    {
      kind: 'table',
      table: hardwareTable(estimate, book.goods, asked.lines, kept),
      tick: true,
      empty: 'No hardware waits.',
    },
    ...waitingWords(waitingHoles(estimate).filter(({ hold }) => here.has(hold.name))).map(
      (text) => ({ kind: 'caution', text }) as const,
    ),
    { kind: 'text', tone: 'strong', text: `On hold, before tax: ${sum('held')}` },
  ]
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
