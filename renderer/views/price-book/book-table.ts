import {
  type BookField,
  type BookRow,
  goodOffers,
  type PriceBook,
  type PriceSource,
  productKey,
  productName,
  sourceOf,
  stockOffers,
  suppliersOf,
} from '../../../core/pricing/index.ts'
import { printLength, printMoney, printUnitPrice } from '../../../core/units/index.ts'
import type { BookPart } from '../../state/book-look.ts'

export const PART_NAMES: { readonly [part in BookPart]: string } = {
  boards: 'Boards',
  goods: 'Goods',
  suppliers: 'Suppliers',
  hours: 'Hours',
  joints: 'Joints',
}

export interface BookColumn {
  readonly heading: string
  /** null: told, and not written over here */
  readonly field: BookField | null
  readonly figures: boolean
}

export interface BookLine {
  readonly key: string
  readonly row: BookRow
  /** the row in words, for names of its cells */
  readonly label: string
  /** text of each column */
  readonly cells: readonly string[]
  readonly supplier: string
  /** day of the price; null where the row has none */
  readonly source: PriceSource | null
  readonly removable: boolean
}

export interface BookTable {
  readonly columns: readonly BookColumn[]
  readonly lines: readonly BookLine[]
}

const column = (heading: string, field: BookField | null = null, figures = field !== null): BookColumn => ({
  heading,
  field,
  figures,
})

/** One part of the book, a line for each price: a thing that several sell has as many. */
export function bookTable(book: PriceBook, part: BookPart): BookTable {
  switch (part) {
    case 'boards':
      return { columns: BOARD_COLUMNS, lines: boardLines(book) }
    case 'goods':
      return { columns: GOOD_COLUMNS, lines: goodLines(book) }
    case 'suppliers':
      return { columns: SUPPLIER_COLUMNS, lines: supplierLines(book) }
    case 'hours':
      return { columns: RATE_COLUMNS, lines: rateLines(book) }
    case 'joints':
      return { columns: JOINT_COLUMNS, lines: jointLines(book) }
  }
}

const BOARD_COLUMNS = [
  column('Board'),
  column('Supplier'),
  column('Price', 'price'),
  column('Of', 'date', false),
  column('Code', 'code', false),
  column('Sold by', 'pack'),
  column('At least', 'minimum'),
  column('Supply', 'supply'),
  column('Price breaks', 'breaks', false),
]

function boardLines(book: PriceBook): readonly BookLine[] {
  return book.lumber.flatMap(({ product, stock }) =>
    stock.flatMap((entry) =>
      stockOffers(entry, book).map((offer): BookLine => {
        const { supplier, price, code, pack, minimum, supply, breaks = [] } = offer
        const row = { of: 'board', product: productKey(product), length: entry.length, supplier } as const
        const source = sourceOf(book, offer)
        const name = `${productName(product)}, ${printLength(entry.length)}`
        const steps = breaks.map((step) => `${step.from}: ${printMoney(step.price)}`).join('; ')
        return {
          key: JSON.stringify(row),
          row,
          label: `${name}, ${supplier}`,
          cells: [
            name,
            supplier,
            printMoney(price),
            source.date,
            code,
            said(pack),
            said(minimum),
            said(supply),
            steps,
          ],
          supplier,
          source,
          removable: true,
        }
      }),
    ),
  )
}

const GOOD_COLUMNS = [
  column('Good'),
  column('Supplier'),
  column('Price', 'price'),
  column('Per'),
  column('Of', 'date', false),
  column('Code', 'code', false),
  column('Sold by', 'pack'),
]

function goodLines(book: PriceBook): readonly BookLine[] {
  return book.goods.flatMap((good) => {
    const offers = goodOffers(good, book)
    return offers.map((offer): BookLine => {
      const { supplier, price, code, pack } = offer
      const row = { of: 'good', sku: good.sku, supplier } as const
      const source = sourceOf(book, offer)
      return {
        key: JSON.stringify(row),
        row,
        label: `${good.label}, ${supplier}`,
        cells: [good.label, supplier, printUnitPrice(price), good.unit, source.date, code, `${pack / 1000}`],
        supplier,
        source,
        removable: offers.length > 1,
      }
    })
  })
}

const SUPPLIER_COLUMNS = [
  column('Supplier', 'name', false),
  column('One delivery', 'delivery'),
  column('Free from', 'freeFrom'),
  column('Prices', null, true),
]

function supplierLines(book: PriceBook): readonly BookLine[] {
  const priced = [
    ...book.lumber.flatMap(({ stock }) => stock.flatMap((entry) => stockOffers(entry, book))),
    ...book.goods.flatMap((good) => goodOffers(good, book)),
  ]
  return suppliersOf(book).map((name): BookLine => {
    const stated = book.suppliers.find((one) => one.name === name)
    const money = (amount: Parameters<typeof printMoney>[0] | null | undefined) =>
      amount === null || amount === undefined ? '' : printMoney(amount)
    return {
      key: name,
      row: { of: 'supplier', name },
      label: name,
      cells: [
        name,
        money(stated?.delivery),
        money(stated?.freeFrom),
        `${priced.filter(({ supplier }) => supplier === name).length}`,
      ],
      supplier: name,
      source: null,
      removable: name !== book.supplier,
    }
  })
}

const RATE_COLUMNS = [
  column('Work'),
  column('Crew hours', 'crewHours'),
  column('Per'),
  column('Workers', 'workers'),
  column('Basis'),
]

function rateLines(book: PriceBook): readonly BookLine[] {
  const whole = (key: string, label: string, field: string, cells: readonly string[]): BookLine => ({
    key,
    row: { of: 'book' },
    label: `${label}${field}`,
    cells,
    supplier: '',
    source: null,
    removable: false,
  })
  return [
    whole('labourRate', 'Loaded rate', '', [
      'Loaded rate of a worker, dollars an hour',
      printMoney(book.labourRate),
      'worker hour',
      '',
      '',
    ]),
    whole('crewSize', 'Crew', '', ['Crew', '', '', `${book.crewSize}`, '']),
    ...book.rates.map(
      ({ id, label, crewHours, unit, workers, confidence }): BookLine => ({
        key: id,
        row: { of: 'rate', id },
        label,
        cells: [label, `${crewHours / 100_000}`, unit, `${workers}`, confidence],
        supplier: '',
        source: null,
        removable: false,
      }),
    ),
  ]
}

const JOINT_COLUMNS = [column('Joint'), column('Material', 'material'), column('Worker minutes', 'minutes')]

function jointLines(book: PriceBook): readonly BookLine[] {
  return book.joints.map(({ kind, label, material, minutes }) => ({
    key: kind,
    row: { of: 'joint', kind },
    label,
    cells: [label, printMoney(material), `${minutes}`],
    supplier: '',
    source: null,
    removable: false,
  }))
}

function said(count: number | undefined): string {
  return count === undefined ? '' : `${count}`
}

/** The field that a cell writes: rate and crew stand in the columns of the hours. */
export function fieldOf({ key, row }: BookLine, { field }: BookColumn): BookField | null {
  if (row.of !== 'book') return field
  if (key === 'labourRate') return field === 'crewHours' ? 'labourRate' : null
  return field === 'workers' ? 'crewSize' : null
}

/** The line of a row; null where it is not among them. */
export function lineAt(lines: readonly BookLine[], row: BookRow | null): BookLine | null {
  const key = JSON.stringify(row)
  return lines.find((line) => JSON.stringify(line.row) === key) ?? null
}

/** The lines that hold every word sought, of one supplier where one is chosen. */
export function linesWith(lines: readonly BookLine[], sought: string, supplier: string): readonly BookLine[] {
  const words = sought
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '')
  return lines.filter((line) => {
    const text = line.cells.join(' ').toLowerCase()
    return (supplier === '' || line.supplier === supplier) && words.every((word) => text.includes(word))
  })
}
