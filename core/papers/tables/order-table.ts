import type { Estimate } from '../../estimate-types.ts'
import { productName } from '../../pricing/index.ts'
import { printMoney, toFeet } from '../../units/index.ts'
import type { PaperTable } from '../types.ts'
import { tableOf } from './table.ts'

/** What the yard is asked for: each product by stock length. */
export function orderTable({ plans }: Pick<Estimate, 'plans'>): PaperTable {
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
    plans.flatMap(({ product, plan, substitutes, useClass }) =>
      plan.order.map((ordered) => ({
        code: ordered.stockId,
        product: productName(product),
        use: useClass,
        length: `${toFeet(ordered.length)} ft`,
        count: `${ordered.count}`,
        price: printMoney(ordered.price),
        amount: printMoney(ordered.amount),
        instead: substitutes.join(' or '),
      })),
    ),
  )
}
