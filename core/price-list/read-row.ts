import type { SheetRow } from '../cut-list/index.ts'
import { excerpt, nearestName } from '../job/index.ts'
import { type GoodPrice, type LumberProduct, productName } from '../pricing/index.ts'
import {
  fail,
  isDate,
  ok,
  parseLength,
  parseUnitPrice,
  printLength,
  type Result,
  type Ticks,
  type UnitPrice,
} from '../units/index.ts'
import type { PriceColumns } from './find-columns.ts'
import type { KnownItem, KnownItems } from './known-items.ts'
import type { PriceMeaning } from './meanings.ts'
import type { PriceListFault, PriceListRequest } from './types.ts'

/** A row that was read whole. */
export interface PricedRow {
  readonly kind: 'priced'
  readonly row: SheetRow
  readonly of:
    | { readonly kind: 'good'; readonly good: GoodPrice }
    | { readonly kind: 'stock'; readonly product: LumberProduct; readonly length: Ticks }
  /** the yard's code as the list has it, '' where it has none */
  readonly code: string
  readonly price: UnitPrice
  readonly date: string
  readonly supplier: string
}

type Read =
  | PricedRow
  /** names nothing of the book */
  | { readonly kind: 'unknown'; readonly name: string; readonly faults: readonly PriceListFault[] }
  | { readonly kind: 'faulty'; readonly faults: readonly PriceListFault[] }

type Wrong = { readonly message: string; readonly fix: string }

const LONGEST_CELL = 200

/** Reads one row of a price list: what it is of, what it costs, of which day and whose the price is. */
export function readPriceRow(
  row: SheetRow,
  { heading, at }: Pick<PriceColumns, 'heading' | 'at'>,
  known: KnownItems,
  request: Pick<PriceListRequest, 'date' | 'supplier'>,
): Read {
  const faults: PriceListFault[] = []
  const cell = (meaning: PriceMeaning) => row.cells[at.get(meaning) ?? -1] ?? ''
  const wrong = (meaning: PriceMeaning, { message, fix }: Wrong) => {
    const index = at.get(meaning) ?? -1
    const head = heading?.cells[index] ?? ''
    faults.push({ row: row.number, line: row.line, column: index + 1, heading: head, message, fix })
  }
  const read = <T>(meaning: PriceMeaning, result: Result<T, Wrong>): T | null => {
    if (result.ok) return result.value
    wrong(meaning, result.error)
    return null
  }
  for (const meaning of at.keys())
    if (cell(meaning).length > LONGEST_CELL)
      wrong(meaning, {
        message: `this has ${cell(meaning).length} characters`,
        fix: `use at most ${LONGEST_CELL}`,
      })
  if (faults.length > 0) return { kind: 'faulty', faults }

  const supplier = cell('supplier') === '' ? request.supplier.trim() : cell('supplier')
  const [code, name] = [cell('code'), cell('item')]
  const [byCode, byName] = [
    code === '' ? null : known.byCode(code, supplier),
    name === '' ? null : known.byName(name),
  ]
  const item = byCode ?? byName
  if (item === null) {
    const meaning = code === '' ? 'item' : 'code'
    wrong(meaning, unknown(code === '' ? name : code, meaning === 'code' ? known.codes : known.names))
    return { kind: 'unknown', name: name === '' ? code : name, faults }
  }
  if (byCode !== null && byName !== null && !isSame(byCode, byName)) {
    wrong('item', {
      message: `the code is that of ${nameOf(byCode)}, and the name that of ${nameOf(byName)}`,
      fix: 'mend one of the two',
    })
  }
  const of = read('length', ofRow(item, cell('length')))
  const price = read('price', readPrice(cell('price'), item))
  const unit = cell('unit')
  if (unit !== '' && !isUnit(unit, item))
    wrong('unit', {
      message: `the price is per ${excerpt(unit)}, and the book counts ${nameOf(item)} per ${unitOf(item)}`,
      fix: `give the price per ${unitOf(item)}`,
    })
  const date = read('date', readDay(cell('date'), request.date, at.has('date')))
  if (faults.length > 0 || of === null || price === null || date === null) return { kind: 'faulty', faults }
  return { kind: 'priced', row, of, code, price, date, supplier }
}

function unknown(written: string, known: readonly string[]): Wrong {
  if (written === '') return { message: 'this row names nothing', fix: 'give its code or its name' }
  const nearest = nearestName(written, known)
  return {
    message: `the price book has no “${excerpt(written)}”`,
    fix:
      nearest === null
        ? 'mend the code or the name, or leave out what the book does not know'
        : `did you mean “${nearest}”? Else leave out what the book does not know`,
  }
}

/** A good, or a product at the length that the row or its code says. */
function ofRow(item: KnownItem, written: string): Result<PricedRow['of'], Wrong> {
  if (item.kind === 'good') return ok(item)
  // a bare number is feet, as a yard calls its lengths
  const feetOnly = /^\d{1,2}$/.test(written)
  const length = written === '' ? null : parseLength(feetOnly ? `${written} ft` : written)
  if (length?.ok === false)
    return fail({ message: `“${excerpt(written)}”: ${length.error.message}`, fix: length.error.fix })
  if (item.kind === 'product') {
    return length === null
      ? fail({ message: `no length of ${nameOf(item)} is named`, fix: 'give the length, such as 16 ft' })
      : ok({ kind: 'stock', product: item.product, length: length.value })
  }
  if (length === null || length.value === item.length) return ok(item)
  return fail({
    message: `the code is that of ${printLength(item.length)}, and the row says ${printLength(length.value)}`,
    fix: 'mend one of the two',
  })
}

function readPrice(written: string, item: KnownItem): Result<UnitPrice, Wrong> {
  const read = parseUnitPrice(written)
  if (!read.ok) return fail({ message: `“${excerpt(written)}”: ${read.error.message}`, fix: read.error.fix })
  if (read.value === 0)
    return fail({
      message: `“${excerpt(written)}” is no price`,
      fix: 'give what one costs, or leave the row out',
    })
  return item.kind === 'good' || read.value % 100 === 0
    ? read
    : fail({ message: 'a board costs whole cents', fix: 'round the price to the cent' })
}

/** The row's own day, ISO or as 11/1/2026, or the one that the list is of; a list of no day is one fault, not one a row. */
function readDay(written: string, otherwise: string, byRow: boolean): Result<string, Wrong> {
  if (written === '') {
    return isDate(otherwise) || !byRow
      ? ok(otherwise)
      : fail({ message: 'the price has no day', fix: 'give the day, such as 2026-11-01' })
  }
  const [, month = '', day = '', year = ''] = /^(\d{1,2})\/(\d{1,2})\/(\d{4})$/.exec(written) ?? []
  const iso = year === '' ? written : `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`
  return isDate(iso)
    ? ok(iso)
    : fail({ message: `“${excerpt(written)}” is no day`, fix: 'write it as 2026-11-01 or 11/1/2026' })
}

const UNITS: ReadonlyMap<string, string> = new Map([
  ...(['each', 'ea', 'pc', 'pcs', 'piece', 'pieces', 'board', 'boards', 'unit'] as const).map(
    (word): [string, string] => [word, 'each'],
  ),
  ...(['foot', 'feet', 'ft', 'lf', 'lin ft', 'linear foot'] as const).map((word): [string, string] => [
    word,
    'foot',
  ]),
  ...(['lb', 'lbs', 'pound', 'pounds'] as const).map((word): [string, string] => [word, 'lb']),
  ...(['bag', 'bags'] as const).map((word): [string, string] => [word, 'bag']),
])

function isUnit(written: string, item: KnownItem): boolean {
  const plain = written
    .toLowerCase()
    .replace(/[.\s]+/g, ' ')
    .trim()
  return (UNITS.get(plain) ?? plain) === unitOf(item)
}

function unitOf(item: KnownItem): string {
  return item.kind === 'good' ? item.good.unit : 'each'
}

function nameOf(item: KnownItem): string {
  return item.kind === 'good' ? item.good.label : productName(item.product.product)
}

function isSame(a: KnownItem, b: KnownItem): boolean {
  if (a.kind === 'good' || b.kind === 'good')
    return a.kind === 'good' && b.kind === 'good' && a.good.sku === b.good.sku
  return a.product === b.product
}
