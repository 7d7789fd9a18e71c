import { cents, printMoney, printMoneyChange } from '../../units/index.ts'
import { daysAfter } from '../date.ts'
import { customerFacts, TO_FILL } from '../quote/customer-facts.ts'
import { bothSign, letterhead } from '../quote/firm-blocks.ts'
import { scopeWords } from '../quote/scope-words.ts'
import { stageAmounts } from '../quote/stage-amounts.ts'
import type { Block, Sheet } from '../sheet-types.ts'
import { NO_QUOTE, type PaperSource, type QuoteContext } from '../source.ts'
import { twoColumns } from '../tables/two-columns.ts'

/** For the customer: what is built, what is and is not in the price, the price, when it is paid, how long it holds. */
export function quoteSheet(source: PaperSource): Sheet {
  const owner = source.estimate.pricing.totals.method === 'none'
  return {
    id: 'quote',
    title: 'Quote',
    audience: 'customer',
    across: false,
    blocks: owner ? [NOT_FOR_OWNERS] : quoteBlocks(source),
  }
}

const NOT_FOR_OWNERS: Block = {
  kind: 'text',
  text: 'The job says that its owner builds: there is no price to quote. Set “Who builds” to a contractor for one.',
}

function quoteBlocks(source: PaperSource): readonly Block[] {
  const { estimate, firm, quote = NO_QUOTE } = source
  return [
    ...letterhead(firm),
    { kind: 'facts', rows: facts(source) },
    { kind: 'heading', text: 'What we build' },
    ...scopeWords(estimate).map((text): Block => ({ kind: 'text', text })),
    { kind: 'heading', text: 'In the price' },
    { kind: 'text', text: sentence(topics(source, 'priced')) },
    ...allowances(source),
    { kind: 'heading', text: 'Not in the price' },
    {
      kind: 'text',
      text: sentence([
        ...topics(source, 'not included'),
        'rock, old footings, water in the holes, rot behind the siding and anything else that cannot be seen before work begins',
      ]),
    },
    ...guardBlocks(source),
    ...openBlocks(source),
    {
      kind: 'table',
      columns: 'money',
      table: twoColumns('price', 'Price', priceRows(source)),
      strong: [priceRows(source).length - 1],
      empty: '',
    },
    ...stageBlocks(source),
    ...optionBlocks(quote),
    ...changeBlocks(quote),
    ...(firm.terms.length === 0
      ? []
      : [
          { kind: 'heading', text: 'Terms' } as const,
          ...firm.terms.map((text): Block => ({ kind: 'text', foreign: true, text })),
        ]),
    {
      kind: 'text',
      tone: 'soft',
      text: 'Subject to the building permit. Changes are agreed in writing, with their price, before they are built.',
    },
    bothSign(firm),
  ]
}

function facts(source: PaperSource): readonly (readonly [string, string])[] {
  const { estimate, firm, date, quote = NO_QUOTE } = source
  const until = daysAfter(date, firm.validDays)
  const { number, revision, change } = quote
  const state =
    number === null || revision === null
      ? `revision ${source.revision}, a draft: not numbered yet`
      : `${number}, revision ${revision}${change === null ? '' : `; it takes the place of revision ${change.from.revision ?? ''} of ${change.from.date}`}`
  return [
    ['Quote', state],
    ['Job', estimate.job.name],
    ...customerFacts(estimate.job),
    ['Date', date === '' ? TO_FILL : date],
    ['Holds', until === '' ? `${firm.validDays} days from the date to be filled in above` : `until ${until}`],
  ]
}

const WORDS: { readonly [topic in PaperSource['estimate']['scope'][number]['topic']]: string } = {
  stairs: 'stairs to the ground',
  guard: 'a guard around the deck',
  'taking away': 'taking away an old deck, slab or planting',
  hauling: 'hauling away what is left over',
  delivery: 'delivery of the material',
  permit: 'the building permit’s fee',
  marking: 'having buried pipes and cables marked before digging',
  flashing: 'flashing and membrane',
  fasteners: 'all fasteners and connectors',
  hire: 'hire of tools and machines',
  'clean-up': 'clearing up when the work is done',
}

function topics({ estimate }: PaperSource, state: 'priced' | 'not included'): readonly string[] {
  return estimate.scope
    .filter((one) => one.state === state)
    .map(({ topic }) =>
      topic === 'permit' && state === 'not included'
        ? 'the building permit: its drawings and its fee'
        : WORDS[topic],
    )
}

function sentence(items: readonly string[]): string {
  const words = items.length === 0 ? 'nothing' : items.join('; ')
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}.`
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

/** A guard that the code asks for and the price has not: whoever signs is told that it must come from elsewhere. */
function guardBlocks({ estimate }: PaperSource): readonly Block[] {
  const left = estimate.scope.some(({ topic, state }) => topic === 'guard' && state === 'not included')
  const open = estimate.checks.some(({ id, status }) => id === 'guard' && status === 'outside scope')
  if (!left || !open) return []
  return [
    {
      kind: 'text',
      text: 'The building code asks for a guard here, for the deck lies more than 30 in above the ground. It is not in this price, and must stand before the deck is used, whoever builds it.',
    },
  ]
}

/** What is not settled about the structure: whoever signs knows that it may change, and who pays for that. */
function openBlocks({ estimate }: PaperSource): readonly Block[] {
  const open = estimate.checks.filter(
    ({ id, status }) => id !== 'guard' && status !== 'passes' && status !== 'near',
  )
  if (open.length === 0) return []
  const titles = [...new Set(open.map(({ title }) => title.toLowerCase()))].join(', ')
  return [
    {
      kind: 'text',
      text: `To be settled with the building official or a licensed designer before work begins, as no table of the code passes it as drawn: ${titles}. A designer’s fee, and what changes for it, are not in this price.`,
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

/** Each option against the deck as it stands: two together may cost another sum than the two sums. */
function optionBlocks({ options }: QuoteContext): readonly Block[] {
  if (options.length === 0) return []
  const rows = options.map(({ name, changes, price }) => ({
    what: `${name} (${changes.join('; ')})`,
    amount: price === null ? 'to be agreed' : printMoneyChange(price),
  }))
  return [
    { kind: 'table', table: twoColumns('options', 'Options, if you tick them', rows), tick: true, empty: '' },
    {
      kind: 'text',
      tone: 'soft',
      text: 'Each is against the price above, by itself. For more than one together we give you a new price.',
    },
  ]
}

function stageBlocks({ firm, estimate }: PaperSource): readonly Block[] {
  const { stages } = firm
  // terms of the firm's own may say it
  if (stages.length === 0 && firm.terms.length === 0)
    return [
      {
        kind: 'text',
        text: 'When it is paid is not stated here: agree on it in writing before work begins.',
      },
    ]
  if (stages.length === 0) return []
  const amounts = stageAmounts(stages, estimate.pricing.totals.priceWithTax)
  const rows = stages.map(({ label }, i) => ({ what: label, amount: printMoney(amounts[i] ?? cents(0)) }))
  return [{ kind: 'table', columns: 'money', table: twoColumns('stages', 'Payment', rows), empty: '' }]
}

function changeBlocks({ change }: QuoteContext): readonly Block[] {
  if (change === null || change.lines.length === 0) return []
  const rows = change.lines.map(({ what, amount }) => ({ what, amount: printMoneyChange(amount) }))
  return [
    {
      kind: 'table',
      table: twoColumns(
        'changed',
        `Changed since revision ${change.from.revision ?? ''} of ${change.from.date}, ${printMoney(change.from.price)}`,
        rows,
      ),
      empty: '',
    },
  ]
}
