import type { Line, LineGroup } from '../../../core/pricing/index.ts'
import { printMoney, printUnitPrice, sumCents } from '../../../core/units/index.ts'
import { Message } from '../../parts/message.tsx'
import { printThousandths } from '../../state/print.ts'
import { useJob } from '../../state/session-context.ts'
import { capital } from '../../state/things.ts'
import { WhyButton } from '../sill/why-button.tsx'
import { TotalsTable } from './totals-table.tsx'
import { WorkingDays } from './working-days.tsx'

const GROUPS: readonly LineGroup[] = [
  'lumber',
  'decking',
  'spares',
  'joints',
  'hardware',
  'fasteners',
  'concrete',
  'other material',
  'labour',
  'other',
]

/** Every line of the cost by group, and how cost becomes price. */
export function PriceSheet() {
  const estimate = useJob((state) => state.estimate)
  const fresh = useJob((state) => state.estimateEdit === state.edit)
  const failure = useJob((state) => state.estimateFailure)
  if (!estimate) {
    return (
      <section className="sheet-pane" aria-label="Lines of the cost" aria-busy={failure === null}>
        <h2>Price</h2>
        {failure === null ? <p className="soft">Adding up.</p> : <Message tone="fails">{failure}</Message>}
      </section>
    )
  }
  const { pricing, priceFaults } = estimate
  return (
    <section
      className={fresh ? 'sheet-pane' : 'sheet-pane is-stale'}
      aria-label="Lines of the cost"
      tabIndex={0}
    >
      {priceFaults.map((fault) => (
        <Message key={fault.subject + fault.message} tone="fails">
          {fault.subject}: {fault.message} {fault.fix}
        </Message>
      ))}
      {!pricing && (
        <Message tone="fails">No total is shown: something has no price or no cutting plan.</Message>
      )}
      {pricing && (
        <>
          <p className="soft">
            Prices of {pricing.bookName}, {pricing.bookDate}.
          </p>
          <table className="table price-table">
            <caption className="unseen">Lines of the cost by group</caption>
            <thead>
              <tr>
                <th scope="col">Item</th>
                <th scope="col">Quantity</th>
                <th scope="col">Each</th>
                <th scope="col">Amount</th>
                <th scope="col">
                  <span className="unseen">Why</span>
                </th>
              </tr>
            </thead>
            {GROUPS.map((group) => (
              <GroupRows
                key={group}
                group={group}
                lines={pricing.lines.filter((line) => line.group === group)}
              />
            ))}
          </table>
          <TotalsTable totals={pricing.totals} />
          <WorkingDays steps={pricing.calendar} />
        </>
      )}
    </section>
  )
}

function GroupRows({ group, lines }: { readonly group: LineGroup; readonly lines: readonly Line[] }) {
  if (lines.length === 0) return null
  return (
    <tbody>
      <tr className="price-group">
        <th scope="rowgroup" colSpan={3}>
          {capital(group)}
        </th>
        <td>{printMoney(sumCents(lines.map((line) => line.amount)))}</td>
        <td />
      </tr>
      {lines.map((line) => (
        <tr key={line.id}>
          <td>
            {line.label.replace(/ ft$/, '\u00a0ft')}{' '}
            {line.code !== '' && <span className="soft price-code">{line.code}</span>}
          </td>
          <td>
            {printThousandths(line.thousandths)} {line.unit}
          </td>
          <td>{printUnitPrice(line.price)}</td>
          <td>{printMoney(line.amount)}</td>
          <td>
            <WhyButton id={line.id} of={line.label} />
          </td>
        </tr>
      ))}
    </tbody>
  )
}
