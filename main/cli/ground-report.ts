import type { Estimate } from '../../core/estimate-types.ts'
import type { GroundReport } from '../../core/ground/index.ts'
import { placeWords } from '../../core/job/index.ts'
import {
  concreteTable,
  diggingTable,
  footingScheduleTable,
  foundTable,
  groundVolumesTable,
  layoutChecksTable,
  layoutCornersTable,
  layoutHolesTable,
  layoutStringsTable,
  measuredPostsTable,
  type PaperTable,
  postBoardsTable,
  tubesTable,
} from '../../core/papers/index.ts'
import { printMoney } from '../../core/units/index.ts'
import { textTable, wrap } from './text-table.ts'

const WIDTH = 106

/** Everything in the ground as plain text: what is dug where, what goes in, how it is set out and what it costs. */
export function groundText(estimate: Estimate, ground: GroundReport): string {
  return [
    found(ground),
    posts(ground),
    ...sizes(footingScheduleTable(estimate)),
    textTable(layoutStringsTable(estimate)),
    textTable(layoutHolesTable(estimate)),
    ground.corners.length === 0 ? '' : textTable(layoutCornersTable(estimate)),
    textTable(layoutChecksTable(estimate)),
    textTable(groundVolumesTable(estimate)),
    textTable(concreteTable(ground.concrete)),
    breakEven(ground),
    ground.tubes === null ? '' : textTable(tubesTable(ground.tubes)),
    textTable(diggingTable(ground.digging)),
    textTable(linesTable(ground)),
    cautions(ground),
  ]
    .filter((part) => part !== '')
    .join('\n')
}

/** The schedule is wider than a terminal: places, loads, and what is dug and poured in a table each. */
function sizes(table: PaperTable): readonly string[] {
  const of = (title: string, keys: readonly string[]) =>
    textTable({ ...table, title, columns: table.columns.filter(({ key }) => keys.includes(key)) })
  return [
    of(table.title, ['number', 'along', 'away', 'post']),
    of('What they carry', ['number', 'load', 'worst', 'pressure', 'worstPressure', 'bearing']),
    of('What is dug and poured', [
      'number',
      'ground',
      'bottom',
      'depth',
      'hole',
      'tube',
      'base',
      'top',
      'concrete',
    ]),
  ]
}

function found({ found: asked }: GroundReport): string {
  if (asked === null) return ''
  const { at, options } = asked
  const where = placeWords(at).join(', ').replace('rock', 'its place barred')
  return `Hole ${at.post} was found ${where}\n${textTable(foundTable(options))}`
}

function posts({ measured }: GroundReport): string {
  if (measured === null) return ''
  return `${textTable(measuredPostsTable(measured))}\n${said(measured.message)}${textTable(postBoardsTable(measured))}`
}

function breakEven({ concrete }: GroundReport): string {
  const { readyMix, breakEven: from, cubicFeet } = concrete
  if (readyMix === null) return said('The price book has no ready-mix.')
  if (from === null) return said('At these prices bags are the cheaper up to more than a truck carries.')
  return said(
    `With waste ${(cubicFeet / 27).toFixed(2)} cu yd. A truck is the cheaper from ${(from / 27).toFixed(2)} cu yd on.`,
  )
}

function linesTable({ lines }: GroundReport): PaperTable {
  return {
    id: 'ground-lines',
    title: 'In the price',
    columns: [
      { key: 'label', label: 'Line', align: 'left' },
      { key: 'quantity', label: 'Quantity', align: 'right' },
      { key: 'unit', label: 'Unit', align: 'left' },
      { key: 'amount', label: 'Amount', align: 'right' },
    ],
    rows: lines.map(({ label, thousandths, unit, amount }) => ({
      label,
      quantity: `${thousandths / 1000}`,
      unit,
      amount: printMoney(amount),
    })),
  }
}

function cautions({ cautions: sentences }: GroundReport): string {
  return `In this soil\n${sentences.map(said).join('')}`
}

function said(sentence: string): string {
  return wrap(sentence, WIDTH)
    .map((line) => `  ${line}\n`)
    .join('')
}
