import type { Meaning } from './types.ts'

/** Unit of the bare numbers of a column. */
export type ColumnUnit = 'in' | 'ft' | 'metric'

export interface Heading {
  readonly meaning: Meaning
  /** unit stated in the heading, or null */
  readonly unit: ColumnUnit | null
}

/** Words by which people head a column, the plainest first. */
const WORDS: { readonly [meaning in Exclude<Meaning, 'nothing'>]: readonly string[] } = {
  length: ['length', 'len', 'lengths', 'cut length', 'piece length', 'stock length', 'finished length'],
  quantity: [
    'quantity',
    'qty',
    'count',
    'pieces',
    'pcs',
    'how many',
    '#',
    'no',
    'number',
    'number of pieces',
  ],
  wild: ['runs wild', 'wild', 'run wild', 'cut in place', 'cut off in place', 'extra length'],
  mark: ['mark', 'label', 'piece', 'part', 'tag', 'name', 'id', 'item', 'description', 'use'],
  product: ['product', 'size', 'section', 'material', 'lumber', 'nominal', 'profile', 'board'],
  kind: ['kind', 'type', 'row'],
  price: ['price', 'price each', 'unit price', 'each', 'cost', 'cost each', '$'],
  supply: ['supply', 'available', 'in stock', 'on hand', 'stock', 'have', 'most'],
  pack: ['pack', 'pack size', 'bundle', 'bundle size', 'per pack', 'sold by', 'sold in'],
  minimum: ['minimum', 'min', 'minimum count', 'minimum quantity', 'min qty', 'at least'],
  'break from': [
    'break from',
    'price break from',
    'break quantity',
    'break qty',
    'from count',
    'price break',
  ],
  'break price': ['break price', 'price from there', 'price at break', 'bulk price', 'quantity price'],
  code: ['code', 'item code', 'yard code', 'order code'],
}

const MEANINGS: ReadonlyMap<string, Meaning> = new Map(
  Object.entries(WORDS).flatMap(([meaning, words]) =>
    words.map((word): [string, Meaning] => [word, meaning as Meaning]),
  ),
)

const UNITS: ReadonlyMap<string, ColumnUnit> = new Map([
  ...(['in', 'inch', 'inches'] as const).map((word): [string, ColumnUnit] => [word, 'in']),
  ...(['ft', 'foot', 'feet'] as const).map((word): [string, ColumnUnit] => [word, 'ft']),
  ...(['mm', 'cm', 'm', 'millimeters', 'millimetres', 'meters', 'metres'] as const).map(
    (word): [string, ColumnUnit] => [word, 'metric'],
  ),
])

/** What a heading such as "Length (ft)" or "QTY" says, or null where it says nothing known. */
export function readHeading(text: string): Heading | null {
  const words = text.toLowerCase().match(/[a-z]+|[#$]/g) ?? []
  const whole = MEANINGS.get(words.join(' '))
  if (whole !== undefined) return { meaning: whole, unit: null }
  const units = words.flatMap((word) => UNITS.get(word) ?? [])
  const rest = words.filter((word) => !UNITS.has(word) && word !== '$').join(' ')
  const unit = units.at(-1) ?? null
  if (rest === '') return unit === null ? null : { meaning: 'length', unit }
  const meaning = MEANINGS.get(rest)
  return meaning === undefined
    ? null
    : { meaning, unit: meaning === 'length' || meaning === 'wild' ? unit : null }
}

/** Headings that would have been understood, for a fault's sentence. */
export function headingsFor(meaning: Exclude<Meaning, 'nothing'>): string {
  return WORDS[meaning].slice(0, 3).join(', ')
}

/** A column's letters as in a spreadsheet, from its number from 1: 1 is A, 27 is AA. */
export function columnLetters(column: number): string {
  return column <= 26
    ? String.fromCharCode(64 + column)
    : columnLetters(Math.floor((column - 1) / 26)) + columnLetters(((column - 1) % 26) + 1)
}
