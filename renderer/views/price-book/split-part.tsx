import type { SupplierSplit } from '../../../core/estimate-types.ts'
import { splitWords } from '../../../core/split-words.ts'
import { printMoney } from '../../../core/units/index.ts'
import { plural } from '../../state/print.ts'
import { useJob } from '../../state/session-context.ts'
import './price-book.css'

/** From whom the open job is bought, each delivery counted, and what it would be from one supplier alone. */
export function SplitPart() {
  const split = useJob((state) => state.estimate?.split ?? null)
  const fresh = useJob((state) => state.estimateEdit === state.edit)
  const name = useJob((state) => state.design?.job.name ?? '')
  if (split === null) return null
  const [chosen, ...others] = splitWords(split)
  return (
    <section className={fresh ? 'group' : 'group is-stale'} aria-labelledby="split-title" aria-busy={!fresh}>
      <h2 id="split-title">Suppliers of {name === '' ? 'this job' : name}</h2>
      <p>{chosen}</p>
      <dl className="split-orders">
        {split.orders.map((order) => (
          <div key={order.supplier}>
            <dt>{order.supplier}</dt>
            <dd>
              {plural(order.lines, 'line', 'lines')}, {printMoney(order.material)} before tax;{' '}
              {deliveryWords(order)}
            </dd>
          </div>
        ))}
      </dl>
      {others.map((words) => (
        <p key={words}>{words}</p>
      ))}
    </section>
  )
}

function deliveryWords({ fee, delivery, freeFrom }: SupplierSplit['orders'][number]): string {
  if (fee === null) return 'delivery not stated'
  return delivery === 0 && freeFrom !== null
    ? `delivered free from ${printMoney(freeFrom)}`
    : `delivery ${printMoney(delivery)}`
}
