import type { Estimate } from '../../estimate-types.ts'
import { overrideWords, productKey, productName } from '../../pricing/index.ts'
import { printLength, printMoney, printUnitPrice, toFeet } from '../../units/index.ts'
import type { PaperTable } from '../types.ts'
import { quantity, tableOf } from './table.ts'

/**
 * What the yard is asked for: each product by stock length, spares after it, and what is taken from the rack. Counts and
 * prices are those of the priced lines, so that the order agrees with the cost where one is stated by hand.
 * @param wanted lines of one supplier; all where absent
 */
export function orderTable(
  { plans, spares, pricing }: Pick<Estimate, 'plans' | 'spares' | 'pricing'>,
  wanted: ReadonlySet<string> | null = null,
): PaperTable {
  const lines = new Map(pricing?.lines.map((line) => [line.id, line]))
  return tableOf(
    'order',
    'Order for the yard',
    [
      ['code', 'Code', 'left'],
      ['product', 'Product', 'left'],
      ['use', 'Treated for', 'left'],
      ['length', 'Length', 'right'],
      ['count', 'Count', 'right'],
      ['price', 'Each', 'right'],
      ['amount', 'Amount', 'right'],
      ['instead', 'Or instead', 'left'],
    ],
    plans.flatMap(({ product, plan, substitutes, useClass, onHand }) => {
      const own = spares?.lines.filter((line) => line.classId === productKey(product)) ?? []
      const rows = [
        ...plan.order.map((ordered) => ({ ...ordered, line: `lumber-${ordered.stockId}`, note: '' })),
        ...own.map((spare) => ({
          ...spare,
          line: `spare-${spare.stockId}`,
          note: ', spare, goes back uncut',
        })),
      ]
      const shown = wanted === null ? rows : rows.filter(({ line }) => wanted.has(line))
      return shown.map(({ stockId, length, count, price, amount, line, note }) => {
        const offcut = onHand.includes(stockId)
        const priced = lines.get(line)
        const stated = priced === undefined ? '' : overrideWords(priced)
        return {
          code: offcut ? 'on hand' : (priced?.code ?? stockId),
          product: `${productName(product)}${note}${stated === '' ? '' : ` (${stated})`}`,
          use: useClass,
          length: offcut ? printLength(length) : `${toFeet(length)} ft`,
          count: quantity(priced?.thousandths ?? count * 1000),
          price: priced === undefined ? printMoney(price) : printUnitPrice(priced.price),
          amount: printMoney(priced?.amount ?? amount),
          instead: offcut ? '' : substitutes.join(' or '),
        }
      })
    }),
  )
}
