import { splitWords } from '../../split-words.ts'
import { quoteWarnings } from '../quote/quote-warnings.ts'
import type { Block, Sheet } from '../sheet-types.ts'
import type { PaperSource } from '../source.ts'
import { costTable } from '../tables/cost-table.ts'
import { hoursTable } from '../tables/hours-table.ts'
import { scopeTable } from '../tables/scope-table.ts'
import { suppliersTable } from '../tables/suppliers-table.ts'

function supplierBlocks({ split }: PaperSource['estimate']): readonly Block[] {
  if (split === null) return []
  return [
    { kind: 'table', table: suppliersTable(split), empty: 'None.' },
    ...splitWords(split).map((text): Block => ({ kind: 'text', text })),
  ]
}

/** Every line from the yard's price to the customer's: for the office, not for the customer. */
export function costSheet(source: PaperSource): Sheet {
  const { estimate, book } = source
  const cost = costTable(estimate)
  const hours = hoursTable(estimate)
  const lines = estimate.pricing.lines.length
  return {
    id: 'cost',
    title: 'Cost breakdown, internal',
    audience: 'office',
    across: false,
    blocks: [
      { kind: 'caution', text: 'Internal: shows cost, overhead and margin. Not for the customer.' },
      {
        kind: 'text',
        tone: 'soft',
        text: `Prices: ${book.name}, ${book.date}, ${book.supplier}. Each line is rounded to the cent once; the lines sum to the totals.`,
      },
      ...supplierBlocks(estimate),
      ...estimate.pricing.idle.map(
        ({ message, fix }): Block => ({ kind: 'caution', text: `${message} ${fix}` }),
      ),
      {
        kind: 'table',
        table: cost,
        strong: cost.rows.map((_, i) => i).filter((i) => i >= lines),
        empty: 'No lines.',
      },
      { kind: 'table', table: hours, strong: [hours.rows.length - 1], empty: 'No hours.' },
      { kind: 'table', table: scopeTable(estimate), empty: 'Nothing to say.' },
      { kind: 'heading', text: 'Before a quote goes out' },
      {
        kind: 'checklist',
        items: [
          ...quoteWarnings(source),
          'What is “not included” above is said to the customer in words.',
          'Changes are written and signed before they are built: soil, rot behind the siding, substitutions.',
        ],
      },
    ],
  }
}
