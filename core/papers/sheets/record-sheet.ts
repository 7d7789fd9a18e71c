import { printShare } from '../../units/index.ts'
import type { Sheet } from '../sheet-types.ts'
import type { PaperSource } from '../source.ts'
import { hoursTable } from '../tables/hours-table.ts'
import { orderTable } from '../tables/order-table.ts'
import type { PaperTable } from '../types.ts'

/** Filled in by hand as the job goes: what was bought and left, what hours it took; the next estimate learns from it. */
export function recordSheet({ estimate }: PaperSource): Sheet {
  const { job } = estimate
  return {
    id: 'record',
    title: 'Job record',
    audience: 'office',
    across: true,
    blocks: [
      {
        kind: 'facts',
        rows: [
          ['Begun, ended', '______________________   ______________________'],
          ['Who', '____________________________________________'],
          [
            'Photos',
            'name them by stage and number: footings-1, ledger-2; where they are kept: ______________________',
          ],
          [
            'Taken to be unusable',
            `${printShare(job.cutting.unusableShare)} of the boards; really: ______ of ______`,
          ],
        ],
      },
      {
        kind: 'table',
        table: withBlanks(orderTable(estimate), ['code', 'product', 'length', 'count'], 'Lumber', [
          'Bought',
          'Unusable',
          'Left, and where',
        ]),
        empty: 'No lumber.',
      },
      {
        kind: 'table',
        table: withBlanks(
          hoursTable(estimate),
          ['stage', 'label', 'quantity', 'unit', 'workerHours'],
          'Hours',
          ['Quantity really', 'Worker hours really', 'Why'],
        ),
        empty: 'No hours.',
      },
      { kind: 'heading', text: 'What was otherwise than drawn, and what we do next time' },
      { kind: 'signatures', lines: ['', '', '', ''] },
    ],
  }
}

/** Some columns of a table, and empty ones to write in. */
function withBlanks(
  table: PaperTable,
  keys: readonly string[],
  title: string,
  blanks: readonly string[],
): PaperTable {
  return {
    ...table,
    id: `${table.id}-record`,
    title,
    columns: [
      ...table.columns.filter(({ key }) => keys.includes(key)),
      ...blanks.map((label) => ({ key: label, label: `${label}            `, align: 'left' as const })),
    ],
  }
}
