import type { Estimate } from '../../estimate-types.ts'
import { productKey, productName } from '../../pricing/index.ts'
import { printLength, printMoney, toFeet } from '../../units/index.ts'
import type { PaperTable } from '../types.ts'
import { tableOf } from './table.ts'

/** What the yard is asked for: each product by stock length, spares after it, and what is taken from the rack. */
export function orderTable({ plans, spares }: Pick<Estimate, 'plans' | 'spares'>): PaperTable {
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
        ...plan.order.map((ordered) => ({ ...ordered, note: '' })),
        ...own.map((spare) => ({ ...spare, note: ', spare' })),
      ]
      return rows.map(({ stockId, length, count, price, amount, note }) => {
        const offcut = onHand.includes(stockId)
        return {
          code: offcut ? 'on hand' : stockId,
          product: `${productName(product)}${note}`,
          use: useClass,
          length: offcut ? printLength(length) : `${toFeet(length)} ft`,
          count: `${count}`,
          price: printMoney(price),
          amount: printMoney(amount),
          instead: offcut ? '' : substitutes.join(' or '),
        }
      })
    }),
  )
}
