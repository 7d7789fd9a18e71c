import type { Planned } from '../../../../core/estimate-types.ts'
import { type Job, printStockLengths, stockLengths } from '../../../../core/job/index.ts'
import { cents, printMoney } from '../../../../core/units/index.ts'
import { printStock } from '../print-stock.ts'
import { WishOffer } from './wish-offer.tsx'

/** What is bought of one product, and for each length what it would cost to do without it. */
export function OrderList({ job, planned }: { readonly job: Job; readonly planned: Planned }) {
  const { product, plan, onHand } = planned
  const { size } = product
  const without = stockLengths(job.cutting.doWithout)
  return (
    <ul className="boards-order">
      {plan.order.map(({ stockId, length, count, amount }) => {
        const name = `${printStock(length)} ${size}`
        return (
          <li key={stockId}>
            <strong>{count}</strong> × {printStock(length)}{' '}
            <span className="soft">{onHand.includes(stockId) ? 'on hand' : printMoney(amount)}</span>{' '}
            {!onHand.includes(stockId) && (
              <WishOffer
                wish={{
                  key: `without ${size} ${length}`,
                  path: 'cutting.doWithout',
                  value: printStockLengths([...without, { size, length }]),
                }}
                label={`No ${name}`}
                ask="Without"
                act="Do without"
              />
            )}
          </li>
        )
      })}
      <li className="boards-sum">{printMoney(cents(plan.stockCost))}</li>
    </ul>
  )
}
