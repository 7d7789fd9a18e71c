import { type CostedLine, type CostedSum, type Costing, stagesOf } from '../../costing/index.ts'
import type { Job } from '../../job/index.ts'
import { type Cents, printMoney, printMoneyChange, printShare } from '../../units/index.ts'
import type { PaperTable } from '../types.ts'
import { quantity, tableOf } from './table.ts'

/** What each line was estimated at and what it took, by group, and in all; sums are the last rows. */
export function costingTable(costing: Costing): PaperTable {
  return tableOf(
    'costing',
    'Estimated and actual',
    [
      ['what', 'Line', 'left'],
      ['planned', 'Quantity', 'right'],
      ['took', 'Taken', 'right'],
      ['unit', 'Unit', 'left'],
      ['estimated', 'Estimated', 'right'],
      ['actual', 'Actual', 'right'],
      ['difference', 'Difference', 'right'],
      ['share', 'Share', 'right'],
      ['open', 'Still open', 'right'],
    ],
    [
      ...costing.groups.flatMap(({ group, lines, ...sum }) => [
        ...lines.map(lineRow),
        sumRow(`${group.charAt(0).toUpperCase()}${group.slice(1)}, together`, sum),
      ]),
      ...closingRows(costing),
    ],
  )
}

/** Places of the sums in that table: of each group, and all closing rows. */
export function costingSums(costing: Costing): readonly number[] {
  let row = -1
  const groups = costing.groups.map(({ lines }) => {
    row += lines.length + 1
    return row
  })
  return [...groups, ...closingRows(costing).map((_, i) => row + 1 + i)]
}

/** What was bought, as it was written down. */
export function purchasesTable({ costing }: Job, held: Costing): PaperTable {
  const words = wordsOf(held)
  return tableOf(
    'bought',
    'Bought',
    [
      ['date', 'Day', 'left'],
      ['supplier', 'Supplier', 'left'],
      ['what', 'What', 'left'],
      ['quantity', 'Quantity', 'right'],
      ['amount', 'Amount', 'right'],
      ['receipt', 'Receipt', 'left'],
    ],
    costing.bought.map(({ date, supplier, line, what, thousandths, amount, receipt }) => ({
      date,
      supplier,
      what: entryWords(words, line, what),
      quantity: thousandths === null ? '' : quantity(thousandths),
      amount: printMoney(amount),
      receipt,
    })),
  )
}

/** Hours as they were written down. */
export function workedTable({ costing }: Job, held: Costing): PaperTable {
  const words = wordsOf(held)
  return tableOf(
    'worked',
    'Worked',
    [
      ['date', 'Day', 'left'],
      ['what', 'Work', 'left'],
      ['who', 'Who', 'left'],
      ['hours', 'Worker hours', 'right'],
    ],
    costing.worked.map(({ date, line, what, who, thousandths }) => ({
      date,
      what: entryWords(words, line, what),
      who,
      hours: quantity(thousandths),
    })),
  )
}

/** Boards by line: ordered, bought, unusable and left. */
export function boardsTable({ groups }: Costing): PaperTable {
  const lines = groups
    .flatMap((group) => group.lines)
    .filter(({ line, unusable, left }) => isBoard(line.group) || unusable + left > 0)
  return tableOf(
    'boards-taken',
    'Boards',
    [
      ['what', 'Board', 'left'],
      ['planned', 'Ordered', 'right'],
      ['bought', 'Bought', 'right'],
      ['unusable', 'Unusable', 'right'],
      ['left', 'Left', 'right'],
    ],
    lines.map(({ line, bought, unusable, left }) => ({
      what: line.what,
      planned: quantity(line.thousandths),
      bought: bought === null ? 'not said' : quantity(bought),
      unusable: `${unusable}`,
      left: `${left}`,
    })),
  )
}

function isBoard(group: string): boolean {
  return group === 'lumber' || group === 'decking' || group === 'spares'
}

function lineRow(costed: CostedLine) {
  const { line, bought, worked } = costed
  const work = line.part === 'labour'
  return {
    what: `${line.what}${costed.done && costed.planned ? ', done' : ''}`,
    planned: costed.planned ? quantity(work ? line.hours : line.thousandths) : '',
    took: work ? quantity(worked) : bought === null ? 'not said' : costed.planned ? quantity(bought) : '',
    unit: work ? 'worker hour' : line.unit,
    ...sumCells(costed),
  }
}

function sumRow(
  what: string,
  sum: Pick<CostedSum, 'estimated' | 'actual' | 'difference' | 'share' | 'open'>,
) {
  return { what, planned: '', took: '', unit: '', ...sumCells(sum) }
}

function sumCells({
  estimated,
  actual,
  difference,
  share,
  open,
}: Pick<CostedSum, 'estimated' | 'actual' | 'difference' | 'share' | 'open'>) {
  return {
    estimated: printMoney(estimated),
    actual: printMoney(actual),
    difference: printMoneyChange(difference),
    share: share === null ? '' : `${share > 0 ? '+' : ''}${printShare(share)}`,
    open: printMoney(open),
  }
}

function closingRows({ direct, tax, hours, left }: Costing) {
  const sum = (what: string, estimated: Cents, likely: Cents) => ({
    what,
    planned: '',
    took: '',
    unit: '',
    estimated: printMoney(estimated),
    actual: '',
    difference: '',
    share: '',
    open: printMoney(likely),
  })
  return [
    ...(tax.estimated === 0 && tax.likely === 0 ? [] : [sumRow('Sales tax on material', tax)]),
    {
      ...sumRow('Direct cost', direct),
      planned: quantity(hours.estimated),
      took: quantity(hours.worked),
      unit: 'worker hour',
    },
    sum('Direct cost as it will likely be, in the last column', direct.estimated, direct.likely),
    ...(left === null
      ? []
      : [
          sum(
            `Left of the price of ${printMoney(left.price)} for overhead and profit, likely in the last column`,
            left.estimated,
            left.likely,
          ),
        ]),
  ]
}

/** What entries may name: lines, and all work of a stage. */
function wordsOf({ groups }: Costing): ReadonlyMap<string, string> {
  const lines = groups.flatMap((group) => group.lines.map(({ line }) => line))
  return new Map([...lines, ...stagesOf(lines)].map(({ line, what }) => [line, what]))
}

/** An entry in its own words, with those of its line where both are there. */
function entryWords(words: ReadonlyMap<string, string>, line: string, what: string): string {
  const named = words.get(line) ?? line
  return what === '' || named === what ? named || what : named === '' ? what : `${named}: ${what}`
}
