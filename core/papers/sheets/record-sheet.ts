import { type Costing, costJob, heldAgainst, isBegun } from '../../costing/index.ts'
import type { Job } from '../../job/index.ts'
import { printMoney, printShare } from '../../units/index.ts'
import type { Block, Sheet } from '../sheet-types.ts'
import type { PaperSource } from '../source.ts'
import {
  boardsTable,
  costingSums,
  costingTable,
  purchasesTable,
  workedTable,
} from '../tables/costing-tables.ts'
import { hoursTable } from '../tables/hours-table.ts'
import { orderTable } from '../tables/order-table.ts'
import type { PaperTable } from '../types.ts'

/**
 * What the job really took: as it was written down, or, where nothing was yet, to be filled in by hand. The next
 * estimate learns from it.
 */
export function recordSheet(source: PaperSource): Sheet {
  const { job } = source.estimate
  const blocks = isBegun(job) ? writtenDown(source) : toFill(source)
  const facts = blocks.findIndex(({ kind }) => kind === 'facts')
  return {
    id: 'record',
    title: 'Job record',
    audience: 'office',
    across: true,
    blocks: [
      ...blocks.slice(0, facts + 1),
      // before the tables: after them it would often stand on a page of its own
      {
        kind: 'heading',
        together: 'otherwise',
        text: 'What was otherwise than drawn, and what we do next time',
      },
      { kind: 'signatures', together: 'otherwise', lines: ['', '', ''] },
      ...blocks.slice(facts + 1),
    ],
  }
}

/** What an office keeps beside the figures. */
const KEPT: readonly (readonly [string, string])[] = [
  ['Who', '____________________________________________'],
  [
    'Photos',
    'name them by stage and number: footings-1, ledger-2; where they are kept: ______________________',
  ],
]

function writtenDown({ estimate, book }: PaperSource): readonly Block[] {
  const { job } = estimate
  const costing = costJob(job, heldAgainst(estimate, book))
  return [
    { kind: 'caution', text: 'Internal: shows cost and what the price leaves. Not for the customer.' },
    {
      kind: 'facts',
      rows: [
        ['Begun, ended', `${job.costing.begun || '____________'}, ${job.costing.finished || 'under way'}`],
        ...KEPT,
        ['Unusable boards', unusableWords(job, costing)],
      ],
    },
    ...untouchedWords(costing),
    { kind: 'table', table: costingTable(costing), strong: costingSums(costing), empty: 'No lines.' },
    { kind: 'table', table: boardsTable(costing), empty: 'No boards.' },
    { kind: 'table', table: purchasesTable(job, costing), empty: 'Nothing was bought yet.' },
    { kind: 'table', table: workedTable(job, costing), empty: 'No hours were written down yet.' },
  ]
}

/** A finished job that has nothing written down for a line looks cheaper than it was. */
function untouchedWords({ finished, untouched: { count, estimated } }: Costing): readonly Block[] {
  if (!finished || count === 0) return []
  const lines = count === 1 ? '1 line of the estimate has' : `${count} lines of the estimate have`
  return [
    {
      kind: 'caution',
      text: `${lines} nothing written down, ${printMoney(estimated)}: they count as nothing paid.`,
    },
  ]
}

function unusableWords({ cutting }: Job, { boards }: Costing): string {
  const { bought, unusable, unusableShare } = boards
  const really =
    unusableShare === null
      ? `${unusable}, and no boards are written down as bought`
      : `${unusable} of ${bought}, ${printShare(unusableShare)}`
  return `taken to be ${printShare(cutting.unusableShare)}; really: ${really}; left over: ${boards.left}`
}

function toFill({ estimate }: PaperSource): readonly Block[] {
  const { job } = estimate
  return [
    {
      kind: 'facts',
      rows: [
        ['Begun, ended', '______________________   ______________________'],
        ...KEPT,
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
  ]
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
