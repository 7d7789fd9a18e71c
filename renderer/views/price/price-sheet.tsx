import { Message } from '../../parts/message.tsx'
import { useJob } from '../../state/session-context.ts'
import { CostLines } from './cost-lines.tsx'
import { SinceQuotePart } from './since-quote.tsx'
import { StatedSummary } from './stated-summary.tsx'
import { TotalsTable } from './totals-table.tsx'
import { WorkingDays } from './working-days.tsx'

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
          <StatedSummary pricing={pricing} />
          <CostLines lines={pricing.lines} />
          <TotalsTable totals={pricing.totals} />
          <SinceQuotePart />
          <WorkingDays steps={pricing.calendar} />
        </>
      )}
    </section>
  )
}
