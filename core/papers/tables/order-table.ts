import type { Estimate } from '../../estimate-types.ts'
import { type Line, overrideWords, type PriceBook, productKey, productName } from '../../pricing/index.ts'
import { printLength, printMoney, printUnitPrice, toFeet } from '../../units/index.ts'
import { type HeldPart, partOf } from '../order/held-lines.ts'
import type { PaperTable } from '../types.ts'
import { stockTerms } from './packs.ts'
import { quantity, tableOf } from './table.ts'

const COLUMNS = [
  ['code', 'Code', 'left'],
  ['product', 'Product', 'left'],
  ['use', 'Treated for', 'left'],
  ['length', 'Length', 'right'],
  ['count', 'Count', 'right'],
  ['price', 'Each', 'right'],
  ['amount', 'Amount', 'right'],
  ['instead', 'Or instead', 'left'],
] as const

/**
 * What the yard is asked for: each product by stock length, spares after it, and what is taken from the rack. Counts and
 * prices are those of the priced lines, so that the order agrees with the cost where one is stated by hand.
 * @param wanted lines of one supplier; all where absent
 * @param only what is free to be bought, or what is held; both together where absent
 * @param book whose terms of a length are told; none where absent
 */
export function orderTable(
  { plans, spares, pricing }: Pick<Estimate, 'plans' | 'spares' | 'pricing'>,
  wanted: ReadonlySet<string> | null = null,
  only: HeldPart | null = null,
  book: PriceBook | null = null,
): PaperTable {
  const lines = new Map(pricing?.lines.map((line) => [line.id, line]))
  const rows = plans.flatMap(({ product, plan, substitutes, useClass, onHand }) => {
    const own = spares?.lines.filter((line) => line.classId === productKey(product)) ?? []
    const all = [
      ...plan.order.map((ordered) => ({ ...ordered, line: `lumber-${ordered.stockId}`, note: '' })),
      ...plan.order.flatMap((ordered) => {
        const line = `blocks-${ordered.stockId}`
        return lines.has(line) ? [{ ...ordered, line, note: ', for blocks behind rim joints' }] : []
      }),
      ...own.map((spare) => ({ ...spare, line: `spare-${spare.stockId}`, note: ', spare, goes back uncut' })),
    ]
    const shown = wanted === null ? all : all.filter(({ line }) => wanted.has(line))
    return shown.flatMap(({ stockId, length, count, price, amount, line, note }) => {
      const offcut = onHand.includes(stockId)
      const priced = lines.get(line)
      const stated = priced === undefined ? '' : overrideWords(priced)
      const terms = book === null ? '' : stockTerms(book, stockId)
      const notes = [stated, terms].filter((words) => words !== '').join('; ')
      const share = priced === undefined || only === null ? priced : partOf(priced, only)
      if (share === null) return []
      return [
        {
          code: offcut ? 'on hand' : (priced?.code ?? stockId),
          product: `${productName(product)}${note}${notes === '' ? '' : ` (${notes})`}`,
          use: useClass,
          length: offcut ? printLength(length) : `${toFeet(length)} ft`,
          count: quantity(share?.thousandths ?? count * 1000),
          price: priced === undefined ? printMoney(price) : printUnitPrice(priced.price),
          amount: printMoney(share?.amount ?? amount),
          instead: offcut ? '' : substitutes.join(' or '),
          ...holdCell(only, line),
        },
      ]
    })
  })
  return only?.part === 'held'
    ? tableOf(
        'order-held',
        'Lumber on hold',
        [...COLUMNS, ['hold', 'Hold', 'left']],
        rows.map((row) => ({ hold: '', ...row })),
      )
    : tableOf('order', only === null ? 'Order for the yard' : 'Lumber', COLUMNS, rows)
}

/** By which holds, beside what is held. */
export function holdCell(only: HeldPart | null, line: Line['id']): { readonly hold?: string } {
  return only?.part === 'held' ? { hold: only.held.lines.get(line)?.by.join(', ') ?? '' } : {}
}
