import type { SupplierSplit } from '../../estimate-types.ts'
import { cents, printMoney } from '../../units/index.ts'
import type { PaperTable } from '../types.ts'
import { tableOf } from './table.ts'

/** Who brings what, and what the job costs from each alone. */
export function suppliersTable({ asked, orders, alone, cost }: SupplierSplit): PaperTable {
  return tableOf(
    'suppliers',
    'Suppliers',
    [
      ['supplier', 'Supplier', 'left'],
      ['lines', 'Lines', 'right'],
      ['material', 'Order before tax', 'right'],
      ['delivery', 'Delivery', 'right'],
      ['alone', 'Job from it alone', 'right'],
      ['more', 'More', 'right'],
    ],
    asked.map((supplier) => {
      const order = orders.find((one) => one.supplier === supplier)
      const whole = alone.find((one) => one.supplier === supplier)
      return {
        supplier,
        lines: order === undefined ? '' : `${order.lines}`,
        material: order === undefined ? '' : printMoney(order.material),
        delivery: order === undefined ? '' : deliveryWords(order),
        alone: whole === undefined ? '' : whole.cost === null ? 'not all of it' : printMoney(whole.cost),
        more: whole === undefined || whole.cost === null ? '' : printMoney(cents(whole.cost - cost)),
      }
    }),
  )
}

function deliveryWords({ fee, delivery, freeFrom }: SupplierSplit['orders'][number]): string {
  if (fee === null) return 'not stated'
  return delivery === 0 && freeFrom !== null ? `free from ${printMoney(freeFrom)}` : printMoney(delivery)
}
