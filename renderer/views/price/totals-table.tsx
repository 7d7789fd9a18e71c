import type { Totals } from '../../../core/pricing/index.ts'
import { type Cents, printMoney, printShare } from '../../../core/units/index.ts'
import { printHours } from '../../state/print.ts'

/** From material to cost to price, step by step; steps that add nothing are left out. */
export function TotalsTable({ totals }: { readonly totals: Totals }) {
  const named = totals.method === 'none' ? '' : `, ${printShare(totals.methodShare)} ${totals.method}`
  const rows: readonly (readonly [string, Cents, boolean])[] = [
    ['Material', totals.material, false],
    ['Sales tax on material', totals.tax, false],
    [`Labour, ${printHours(totals.workerHours)} worker hours`, totals.labour, false],
    ['Other', totals.other, false],
    ['Direct cost', totals.direct, true],
    ['Contingency', totals.contingency, false],
    ['Overhead', totals.overhead, false],
    ['Cost', totals.cost, true],
    ...(totals.method === 'none'
      ? []
      : ([
          [`Price${named}`, totals.price, true],
          ['Tax on the price', totals.priceTax, false],
          ['Price with tax', totals.priceWithTax, totals.priceTax !== 0],
        ] as const)),
  ]
  return (
    <table className="table totals-table">
      <caption className="unseen">From cost to price</caption>
      <tbody>
        {rows
          .filter(([label, amount, strong]) => strong || (amount !== 0 && label !== 'Price with tax'))
          .map(([label, amount, strong]) => (
            <tr key={label} className={strong ? 'is-sum' : undefined}>
              <th scope="row">{label}</th>
              <td>{printMoney(amount)}</td>
            </tr>
          ))}
      </tbody>
    </table>
  )
}
