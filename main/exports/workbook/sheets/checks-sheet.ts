import type { Check, CheckStatus, Finding, Quantity } from '../../../../core/checks/index.ts'
import { type Cell, empty, formula, number, text } from '../cell.ts'
import { type Sheet, SheetBuilder } from '../sheet.ts'
import type { Source } from '../source.ts'

export const STATUS_MARKS: { readonly [status in CheckStatus]: string } = {
  passes: '● passes',
  near: '◐ near its limit',
  fails: '▲ fails',
  'calculated only': '◇ calculated only',
  'outside scope': '◇ outside scope',
}

/** Every rule by table and by calculation, side by side, with clause, demand, capacity and how far it is verified. */
export function checksSheet({ estimate }: Source): Sheet {
  const { job } = estimate
  const sheet = new SheetBuilder('Checks', [26, 17, 30, 11, 11, 8, 8, 50, 20], true)
  sheet.title('Checks')
  sheet.note(
    `By ${job.code.edition}; the ${job.code.governs === 'prescriptive' ? 'code’s tables decide' : 'calculation decides'} ` +
      'and the other answer stands beside it. This is an aid, not a permit: local code and the building official govern, ' +
      'and what is calculated only or outside the tables needs their word or a licensed designer.',
  )
  sheet.gap()
  sheet.header([
    'Check',
    'Result',
    'By',
    '>Demand',
    '>Limit',
    'Unit',
    '>Used',
    'How, and what to do',
    'How far verified',
  ])
  for (const check of estimate.checks) writeCheck(sheet, check)
  return sheet.done()
}

function writeCheck(sheet: SheetBuilder, check: Check): void {
  const said = [check.message, check.remedy].filter((words) => words !== '').join(' ')
  sheet.row([
    text(check.title, { bold: true, wrap: true, rule: 'thin' }),
    text(STATUS_MARKS[check.status], { bold: true, wrap: true }),
    text(said, { wrap: true, span: 7 }),
  ])
  for (const finding of check.findings)
    writeFinding(sheet, finding, finding === check.governing ? check.basis : '')
}

/** @param basis what decides, where this finding does; else empty */
function writeFinding(sheet: SheetBuilder, finding: Finding, basis: string): void {
  const row = sheet.next
  const { demand, capacity, ratio } = finding
  sheet.row([
    empty,
    text(basis === '' ? '' : 'decides', { soft: true }),
    text(`${finding.document} ${finding.edition}, ${finding.clause}`, { wrap: true }),
    figure(demand),
    capacity === null ? empty : figure(capacity),
    text(unitOf(demand), { soft: true }),
    capacity === null || ratio === null || capacity.value === 0
      ? empty
      : formula(`D${row}/E${row}`, shown(demand) / shown(capacity), 'ratio'),
    text(`${finding.method === 'prescriptive' ? 'Table' : 'Calculated'}: ${finding.lookup}`, {
      wrap: true,
      soft: true,
    }),
    text(basis === '' ? finding.confidence : basis, { wrap: true, soft: true }),
  ])
}

function figure(quantity: Quantity): Cell {
  return number(shown(quantity), quantity.unit === 'ticks' ? 'inches' : 'decimal')
}

function shown({ unit, value }: Quantity): number {
  return unit === 'ticks' ? value / 32 : value
}

function unitOf({ unit }: Quantity): string {
  if (unit === 'ticks') return 'in'
  return unit === 'count' ? '' : unit
}
