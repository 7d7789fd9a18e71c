import { cents, printMoney, printMoneyChange } from '../../units/index.ts'
import { customerFacts } from '../quote/customer-facts.ts'
import { bothSign, letterhead } from '../quote/firm-blocks.ts'
import { stageAmounts } from '../quote/stage-amounts.ts'
import type { Sheet } from '../sheet-types.ts'
import { NO_QUOTE, type PaperSource, type QuoteState } from '../source.ts'
import { twoColumns } from '../tables/two-columns.ts'

/** What was agreed, what is changed, and what each change costs; to be signed before it is built. Null without a change. */
export function changeOrderSheet(source: PaperSource): Sheet | null {
  const { estimate, firm, quote = NO_QUOTE } = source
  const { change, number } = quote
  if (change === null || change.lines.length === 0) return null
  const { from, to, lines } = change
  const difference = cents(to.price - from.price)
  const rows = [
    { what: `Price of ${stateWords(from)}`, amount: printMoney(from.price) },
    ...lines.map(({ what, amount }) => ({ what, amount: printMoneyChange(amount) })),
    { what: 'All changes together', amount: printMoneyChange(difference) },
    { what: 'New price', amount: printMoney(to.price) },
  ]
  const before = stageAmounts(firm.stages, from.price)
  const after = stageAmounts(firm.stages, to.price)
  return {
    id: 'change',
    title: 'Change order',
    audience: 'customer',
    across: false,
    blocks: [
      ...letterhead(firm),
      {
        kind: 'facts',
        rows: [
          ['Job', `${estimate.job.name}${number === null ? '' : `, quote ${number}`}`],
          ...customerFacts(estimate.job),
          ['Changes', stateWords(from)],
          ['Into', stateWords(to)],
        ],
      },
      {
        kind: 'table',
        table: twoColumns('change', 'What changes, and what it costs', rows),
        strong: [0, rows.length - 2, rows.length - 1],
        empty: '',
      },
      ...(firm.stages.length === 0
        ? []
        : [
            {
              kind: 'table',
              table: {
                id: 'change-stages',
                title: 'Payment',
                columns: [
                  { key: 'what', label: 'What', align: 'left' },
                  { key: 'before', label: 'Formerly', align: 'right' },
                  { key: 'after', label: 'Now', align: 'right' },
                ],
                rows: firm.stages.map(({ label }, i) => ({
                  what: label,
                  before: printMoney(before[i] ?? cents(0)),
                  after: printMoney(after[i] ?? cents(0)),
                })),
              },
              empty: '',
            } as const,
          ]),
      {
        kind: 'text',
        text: 'Each change is priced after those above it. What was paid already is counted against the stages as they stand now. Everything else of the quote holds.',
      },
      {
        kind: 'caution',
        text: 'Not to be built before both have signed. Where the permit was given for the deck as it was, the building office has to see the change too.',
      },
      bothSign(firm),
    ],
  }
}

function stateWords({ revision, date }: QuoteState): string {
  const name = revision === null ? 'the present state, not sent yet' : `revision ${revision}`
  return date === '' ? name : `${name}, ${date}`
}
