import { Message } from '../../parts/message.tsx'
import { ViewSwitch } from '../../parts/view-switch.tsx'
import { useJob, useSession } from '../../state/session-context.ts'
import { CostLines } from './cost-lines.tsx'
import { CostingPart } from './costing/costing-part.tsx'
import { Materials } from './materials.tsx'
import { SinceQuotePart } from './since-quote.tsx'
import { StatedSummary } from './stated-summary.tsx'
import { TotalsTable } from './totals-table.tsx'
import { WorkingDays } from './working-days.tsx'

const VIEWS = [
  { view: 'estimate', name: 'Estimate' },
  { view: 'costing', name: 'Job costing' },
] as const

/** What the deck should cost, or what it took once it is under way. */
export function PriceSheet() {
  const session = useSession()
  const view = useJob((state) => state.priceView)
  const isCosting = view === 'costing'
  const waits = useJob((state) => !state.estimate && state.estimateFailure === null)
  const fresh = useJob((state) => state.estimateEdit === state.edit)
  return (
    <section
      className={fresh || waits || isCosting ? 'sheet-pane' : 'sheet-pane is-stale'}
      aria-label={isCosting ? 'Job costing' : 'Lines of the cost'}
      aria-busy={waits}
      tabIndex={0}
    >
      <div className="price-head">
        <ViewSwitch legend="Shown" views={VIEWS} view={view} onView={session.showPrice} />
      </div>
      {isCosting ? <CostingPart /> : <EstimatePart />}
    </section>
  )
}

/** Every line of the cost by group, and how cost becomes price. */
function EstimatePart() {
  const estimate = useJob((state) => state.estimate)
  const failure = useJob((state) => state.estimateFailure)
  const book = useJob((state) => state.prices?.book ?? null)
  if (!estimate)
    return failure === null ? <p className="soft">Adding up.</p> : <Message tone="fails">{failure}</Message>
  const { pricing, priceFaults } = estimate
  return (
    <>
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
          {book && <Materials job={estimate.job} book={book} totals={pricing.totals} />}
          <SinceQuotePart />
          <WorkingDays steps={pricing.calendar} />
        </>
      )}
    </>
  )
}
