import { printMoney, toFeet } from '../../units/index.ts'
import type { PaperSource } from '../source.ts'
import { hardwareTable } from '../tables/hardware-table.ts'
import { orderTable } from '../tables/order-table.ts'
import type { PaperTable } from '../types.ts'
import { type Asked, billedWords, longestOf, pricesOf, sumOf } from './asked.ts'
import { grouped } from './grouped.ts'
import { type Held, type HeldPart, heldHere } from './held-lines.ts'
import type { Hold } from './holds.ts'
import { waitingBoards, waitingWith } from './waiting-boards.ts'

/** The order of one supplier as lines of plain text, to be sent as a message. */
export function messageTo(source: PaperSource, asked: Asked, held: Held): string {
  const { estimate, book } = source
  const { job } = estimate
  const address = job.customer.address.trim()
  const free = { held, part: 'free' } as const
  const kept = { held, part: 'held' } as const
  const holds = heldHere(held, asked.lines)
  const waiting = waitingBoards(estimate, holds)
  const boards = orderTable(estimate, asked.lines).rows.reduce(
    (sum, { code, count }) => sum + (code === 'on hand' ? 0 : Number(count)),
    0,
  )
  const { seasoned, freshlyTreated } = estimate.takeoff.weight
  const all = `All of it by this list, before tax: ${printMoney(sumOf(source, asked))}`
  return [
    asked.of === 1
      ? `Order for ${job.name}; list ${book.name} of ${book.date}`
      : `Order for ${job.name} to ${asked.supplier}; prices ${pricesOf(source, asked)}`,
    ...(address === '' ? [] : [`Deliver to: ${address}`]),
    ...linesOf(source, asked, free),
    ...(holds.length === 0
      ? []
      : [
          `To be bought now, before tax: ${printMoney(sumOf(source, asked, free))}`,
          'ON HOLD. Please price these and do not load or cut them until we say so:',
          ...holds.map((hold) => holdLine(hold, waitingWith(estimate, hold, waiting))),
          ...linesOf(source, asked, kept),
          `On hold, before tax: ${printMoney(sumOf(source, asked, kept))}`,
        ]),
    `Lumber: ${grouped(boards)} ${boards === 1 ? 'piece' : 'pieces'}, the longest ${toFeet(longestOf(source, asked))} ft; all lumber of the job ${grouped(seasoned)} lb seasoned, up to ${grouped(freshlyTreated)} lb fresh from treatment`,
    all,
    ...billedWords(source, asked),
    'No change of length, size, grade or treatment without a call, but for what stands after “or instead”.',
  ].join('\n')
}

function holdLine({ name, what, until }: Hold, also: string): string {
  const mates = also === '' ? '' : ` Waits with it, sawn from the same boards: ${also}.`
  return `${name}: ${what}. Not to be bought before ${until}.${mates}`
}

type Row = PaperTable['rows'][number]

function linesOf({ estimate, book }: PaperSource, { lines }: Asked, only: HeldPart): readonly string[] {
  return [
    ...orderTable(estimate, lines, only, book)
      .rows.filter(({ code }) => code !== 'on hand')
      .map(boardLine),
    ...hardwareTable(estimate, book.goods, lines, only).rows.map(goodLine),
  ]
}

function boardLine({ count, product, length, use, code, instead, hold }: Row): string {
  const what = [product, length, use].filter((words) => words !== '').join(', ')
  return `${count} ${count === '1' ? 'pc' : 'pcs'} ${what} (${code})${instead ? `; or instead ${instead}` : ''}${holdOf(hold)}`
}

function goodLine({ bought, needed, unit, packs, label, code, hold }: Row): string {
  const name = `${label}${code === '' ? '' : ` (${code})`}${holdOf(hold)}`
  if (bought === '0' && packs) return `${needed} ${unit} ${packs}: ${name}`
  return packs
    ? `${packs}: ${name}, ${unit === 'each' ? bought : `${bought} ${unit}`} in all`
    : `${bought} ${unit} ${name}`
}

function holdOf(hold: string | undefined): string {
  return hold ? ` [${hold}]` : ''
}
