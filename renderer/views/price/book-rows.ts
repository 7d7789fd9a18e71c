import { type PriceBook, type PriceSource, productName, sourceOf } from '../../../core/pricing/index.ts'
import { printLength, printMoney, printUnitPrice } from '../../../core/units/index.ts'

/** One entry of a price book as it is looked through. */
export interface BookRow {
  readonly key: string
  readonly code: string
  readonly item: string
  /** `$23.49 each`, or for a rate the hours that one takes */
  readonly price: string
  /** null: no price, but hours */
  readonly source: PriceSource | null
}

export interface BookGroup {
  readonly title: string
  readonly rows: readonly BookRow[]
}

/** Everything in a price book: boards by product and length, goods, joints and rates of work. */
export function bookGroups(book: PriceBook): readonly BookGroup[] {
  return [
    ...book.lumber.map(({ product, stock }) => ({
      title: productName(product),
      rows: stock.map((entry) => ({
        key: entry.code,
        code: entry.code,
        item: [
          printLength(entry.length),
          ...(entry.supply === undefined ? [] : [`${entry.supply} to be had`]),
          ...(entry.pack === undefined ? [] : [`sold by ${entry.pack}`]),
          ...(entry.minimum === undefined ? [] : [`at least ${entry.minimum}`]),
        ].join(', '),
        price: `${printMoney(entry.price)} each`,
        source: sourceOf(book, entry),
      })),
    })),
    {
      title: 'Goods',
      rows: book.goods.map((good) => ({
        key: good.sku,
        code: good.code,
        item: good.pack === 1000 ? good.label : `${good.label}, sold by ${good.pack / 1000} ${good.unit}`,
        price: `${printUnitPrice(good.price)} per ${good.unit}`,
        source: sourceOf(book, good),
      })),
    },
    {
      title: `Hours, paid at ${printMoney(book.labourRate)}`,
      rows: book.rates.map((rate) => ({
        key: rate.id,
        code: rate.id,
        item: `${rate.label} (${rate.confidence})`,
        price: `${rate.crewHours / 100_000} h per ${rate.unit}, ${rate.workers} working`,
        source: null,
      })),
    },
    {
      title: 'Joints',
      rows: book.joints.map((joint) => ({
        key: joint.sku,
        code: joint.sku,
        item: joint.label,
        price: `${printMoney(joint.material)} and ${joint.minutes} min each`,
        source: sourceOf(book, {}),
      })),
    },
  ]
}

/** The groups with the rows that hold every word sought; a group without any is left out. */
export function rowsWith(groups: readonly BookGroup[], sought: string): readonly BookGroup[] {
  const words = sought
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '')
  return groups
    .map(({ title, rows }) => ({
      title,
      rows: rows.filter(({ code, item }) => {
        const text = `${title} ${code} ${item}`.toLowerCase()
        return words.every((word) => text.includes(word))
      }),
    }))
    .filter(({ rows }) => rows.length > 0)
}
