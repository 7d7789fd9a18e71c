import type { Totals } from '../../../core/pricing/index.ts'
import { type Cents, printMoney, printShare } from '../../../core/units/index.ts'
import { printHours } from '../../state/print.ts'
import { WhyButton } from '../sill/why-button.tsx'

type Sum = { [key in keyof Totals]: Totals[key] extends Cents ? key : never }[keyof Totals]

/** From material to cost to price, step by step; steps that add nothing are left out. */
export function TotalsTable({ totals }: { readonly totals: Totals }) {
  const named =
    totals.method === 'none'
      ? ''
      : `, ${printShare(totals.methodShare)} ${totals.method}, which is ${otherWay(totals)}`
  const rows: readonly (readonly [Sum, string, boolean])[] = [
    ['material', 'Material', false],
    ['tax', 'Sales tax on material', false],
    ['labour', `Labour, ${printHours(totals.workerHours)} worker hours`, false],
    ['other', 'Other', false],
    ['direct', 'Direct cost', true],
    ['contingency', 'Contingency', false],
    ['overhead', 'Overhead', false],
    ['cost', 'Cost', true],
    ...(totals.method === 'none'
      ? []
      : ([
          ['price', `Price${named}`, true],
          ['priceTax', 'Tax on the price', false],
          ['priceWithTax', 'Price with tax', totals.priceTax !== 0],
        ] as const)),
  ]
  return (
    <table className="table totals-table">
      <caption className="unseen">From cost to price</caption>
      <tbody>
        {rows
          .filter(([name, , strong]) => strong || (totals[name] !== 0 && name !== 'priceWithTax'))
          .map(([name, label, strong]) => (
            <tr key={name} className={strong ? 'is-sum' : undefined}>
              <th scope="row">{label}</th>
              <td>{printMoney(totals[name])}</td>
              <td>
                <WhyButton id={`totals.${name}`} of={label} />
              </td>
            </tr>
          ))}
      </tbody>
    </table>
  )
}

/** A margin told as the markup that it is, and the other way round, to a tenth of a percent. */
function otherWay({ method, cost, price }: Totals): string {
  const [whole, name] = method === 'margin' ? [cost, 'markup'] : [price, 'margin']
  return whole === 0 ? `no ${name}` : `${(((price - cost) / whole) * 100).toFixed(1)} % ${name}`
}
