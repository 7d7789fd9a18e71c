import { cents, printLength, printMoney, share, shareOf, sumCents } from '../../units/index.ts'
import { daysAfter } from '../date.ts'
import type { Block, Sheet } from '../sheet-types.ts'
import type { Firm, PaperSource } from '../source.ts'
import type { PaperTable } from '../types.ts'

/** For the customer: what is built, what is and is not in the price, the price, when it is paid, how long it holds. */
export function quoteSheet(source: PaperSource): Sheet {
  const { estimate, firm, date, revision } = source
  const { totals } = estimate.pricing
  const until = daysAfter(date, firm.validDays)
  const owner = totals.method === 'none'
  const blocks: readonly Block[] = owner
    ? [
        {
          kind: 'text',
          text: 'The job says that its owner builds: there is no price to quote. Set “Who builds” to a contractor for one.',
        },
      ]
    : [
        ...(firm.name === ''
          ? []
          : [{ kind: 'text', tone: 'strong', text: [firm.name, ...firm.lines].join('\n') } as const]),
        {
          kind: 'facts',
          rows: [
            ['Quote', `${estimate.job.name}, revision ${revision}`],
            ['Date', date === '' ? 'not stated' : date],
            ['Holds', until === '' ? `${firm.validDays} days from its date` : `until ${until}`],
          ],
        },
        { kind: 'heading', text: 'What we build' },
        ...scopeWords(source).map((text): Block => ({ kind: 'text', text })),
        { kind: 'heading', text: 'In the price' },
        {
          kind: 'text',
          text: listOf(
            estimate.scope.filter(({ state }) => state === 'priced').map(({ topic }) => WORDS[topic]),
          ),
        },
        ...allowances(source),
        { kind: 'heading', text: 'Not in the price' },
        {
          kind: 'text',
          text: listOf([
            ...estimate.scope
              .filter(({ state }) => state === 'not included')
              .map(({ topic }) => WORDS[topic]),
            'rock, old footings, water in the holes, rot behind the siding and anything else that cannot be seen before work begins',
          ]),
        },
        { kind: 'table', table: priceTable(source), strong: [priceRows(source).length - 1], empty: '' },
        ...stageBlocks(firm, totals.priceWithTax),
        ...(firm.terms.length === 0
          ? []
          : [
              { kind: 'heading', text: 'Terms' } as const,
              ...firm.terms.map((text): Block => ({ kind: 'text', text })),
            ]),
        {
          kind: 'text',
          tone: 'soft',
          text: 'Subject to the building permit. Changes are agreed in writing, with their price, before they are built.',
        },
        {
          kind: 'signatures',
          lines: [`For ${firm.name === '' ? 'the firm' : firm.name}, and date`, 'The customer, and date'],
        },
      ]
  return { id: 'quote', title: 'Quote', audience: 'customer', across: false, blocks }
}

const WORDS: { readonly [topic in PaperSource['estimate']['scope'][number]['topic']]: string } = {
  stairs: 'stairs to the ground',
  guard: 'a guard around the deck',
  'taking away': 'taking away an old deck, slab or planting',
  hauling: 'hauling away what is left over',
  delivery: 'delivery of the material',
  permit: 'the building permit’s fee',
  flashing: 'flashing and membrane',
  fasteners: 'all fasteners and connectors',
  hire: 'hire of tools and machines',
  'clean-up': 'clearing up when the work is done',
}

function listOf(items: readonly string[]): string {
  return items.length === 0 ? 'nothing' : `${items.join('; ')}.`
}

function scopeWords({ estimate }: PaperSource): readonly string[] {
  const { job, frame } = estimate
  const { size, site, decking } = job
  const stands = site.attachment === 'ledger' ? 'fastened to the house' : 'freestanding beside the house'
  return [
    `A deck ${printLength(size.width)} along the house and ${printLength(size.depth)} away from it, its top ${printLength(size.height)} above the ground at the house, ${stands}.`,
    `A frame of ${job.frame.treatment === 'treated' ? 'pressure-treated' : job.frame.treatment} ${estimate.plans.find(({ product }) => product.size === job.frame.joists.size) === undefined ? 'lumber' : `${job.frame.joists.size} lumber`} on ${frame.posts.length} posts, each on its own concrete footing below the frost line.`,
    `Decking of ${decking.size} boards.`,
  ]
}

/** Sums that were set aside and not counted: the customer is told that they are, without our figures. */
function allowances({ estimate }: PaperSource): readonly Block[] {
  const set = estimate.scope.filter(
    ({ topic, state }) => state === 'priced' && estimate.job.scope[topic].allowance > 0,
  )
  if (set.length === 0) return []
  return [
    {
      kind: 'text',
      tone: 'soft',
      text: `Of these, a sum was set aside and not counted for: ${set.map(({ topic }) => WORDS[topic]).join('; ')}. Where your choice costs more or less, the price follows.`,
    },
  ]
}

function priceRows({ estimate }: PaperSource): readonly { readonly what: string; readonly amount: string }[] {
  const { totals } = estimate.pricing
  return totals.priceTax === 0
    ? [{ what: 'Price', amount: printMoney(totals.priceWithTax) }]
    : [
        { what: 'Price before tax', amount: printMoney(totals.price) },
        { what: 'Tax', amount: printMoney(totals.priceTax) },
        { what: 'Price', amount: printMoney(totals.priceWithTax) },
      ]
}

function priceTable(source: PaperSource): PaperTable {
  return twoColumns('price', 'Price', priceRows(source))
}

/** The stages' sums come to the price to the cent: the last one takes what rounding left. */
export function stageAmounts(
  stages: Firm['stages'],
  price: PaperSource['estimate']['pricing']['totals']['price'],
) {
  const sums = stages.slice(0, -1).map(({ share: part }) => shareOf(price, share(part)))
  return [...sums, cents(price - sumCents(sums))]
}

function stageBlocks(
  { stages }: Firm,
  price: PaperSource['estimate']['pricing']['totals']['price'],
): readonly Block[] {
  if (stages.length === 0) return []
  const amounts = stageAmounts(stages, price)
  const rows = stages.map(({ label }, i) => ({ what: label, amount: printMoney(amounts[i] ?? cents(0)) }))
  return [{ kind: 'table', table: twoColumns('stages', 'Payment', rows), empty: '' }]
}

function twoColumns(
  id: string,
  title: string,
  rows: readonly { readonly what: string; readonly amount: string }[],
): PaperTable {
  return {
    id,
    title,
    columns: [
      { key: 'what', label: 'What', align: 'left' },
      { key: 'amount', label: 'Amount', align: 'right' },
    ],
    rows,
  }
}
