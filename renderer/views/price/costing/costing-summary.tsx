import type { CostedSum, Costing } from '../../../../core/costing/index.ts'
import type { Job } from '../../../../core/job/index.ts'
import { type Cents, printMoney } from '../../../../core/units/index.ts'
import { Message } from '../../../parts/message.tsx'
import { plural, printThousandths } from '../../../state/print.ts'
import { useJob, useSession } from '../../../state/session-context.ts'
import { today } from '../../today.ts'
import { differenceWords } from './difference-words.ts'

/** What it was estimated at, what it took so far and what it will likely take, in four rows; begun, finished. */
export function CostingSummary({ job, costing }: { readonly job: Job; readonly costing: Costing }) {
  const session = useSession()
  const ready = useJob((state) => state.estimate?.pricing != null && state.estimateEdit === state.edit)
  const { begun, finished, estimate } = job.costing
  const { material, tax, labour, other, direct, hours, left } = costing
  return (
    <section aria-labelledby="costing-title">
      <h2 id="costing-title">Where it stands</h2>
      <p className="soft">
        {begun === '' ? 'Under way' : `Begun ${begun}`}
        {finished === '' ? '' : `, finished ${finished}`}.{' '}
        {estimate.length === 0
          ? 'Held against the estimate as it is now.'
          : 'Held against the estimate of that day.'}{' '}
        {job.pricing.salesTax > 0 && 'Write amounts before sales tax: it is added below at the job’s rate.'}
      </p>
      <div className="scroll-x" role="group" aria-label="Sums of the job" tabIndex={0}>
        <table className="table costing-sums">
          <caption className="unseen">Estimated, so far, still open and likely in the end</caption>
          <thead>
            <tr>
              <th scope="col">
                <span className="unseen">Part of the cost</span>
              </th>
              <th scope="col">Estimated</th>
              <th scope="col">So far</th>
              <th scope="col">Still open</th>
              <th scope="col">Likely in the end</th>
            </tr>
          </thead>
          <tbody>
            <SumRow name="Material" sum={material} />
            {(tax.estimated !== 0 || tax.likely !== 0) && <SumRow name="Sales tax" sum={tax} />}
            <SumRow
              name={`Labour, ${printThousandths(hours.worked)} of ${printThousandths(hours.estimated)} worker hours`}
              sum={labour}
            />
            <SumRow name="Other" sum={other} />
            <SumRow name="Direct cost" sum={direct} strong />
          </tbody>
        </table>
      </div>
      {left !== null && (
        <p>
          Of the price of {printMoney(left.price)} are left for overhead and profit: likely{' '}
          <strong>{printMoney(left.likely)}</strong>
          {shareWords(left.likely, left.price)}; estimated {printMoney(left.estimated)}
          {shareWords(left.estimated, left.price)}.
        </p>
      )}
      {costing.finished && costing.untouched.count > 0 && (
        <Message tone="near">
          {plural(costing.untouched.count, 'line')} of the estimate, {printMoney(costing.untouched.estimated)}
          , {costing.untouched.count === 1 ? 'has' : 'have'} nothing written down: they count as nothing paid.
          Write down what is missing before you trust what is left of the price.
        </Message>
      )}
      <p className="costing-tools">
        {finished === '' ? (
          <button type="button" className="button" onClick={() => session.finishJob(today())}>
            The job is finished
          </button>
        ) : (
          <button type="button" className="button" onClick={() => session.finishJob(null)}>
            It is under way again
          </button>
        )}
        <button type="button" className="button" disabled={!ready} onClick={() => session.beginJob(today())}>
          Hold it against the present estimate
        </button>
      </p>
    </section>
  )
}

function SumRow({
  name,
  sum,
  strong = false,
}: {
  readonly name: string
  readonly sum: CostedSum
  readonly strong?: boolean
}) {
  return (
    <tr className={strong ? 'is-sum' : undefined}>
      <th scope="row">{name}</th>
      <td>{printMoney(sum.estimated)}</td>
      <td>{printMoney(sum.actual)}</td>
      <td>{printMoney(sum.open)}</td>
      <td>
        {printMoney(sum.likely)}
        <span className="costing-under">{differenceWords(sum.likely, sum.estimated)}</span>
      </td>
    </tr>
  )
}

function shareWords(part: Cents, whole: Cents): string {
  return whole === 0 ? '' : ` (${((part / whole) * 100).toFixed(1)} %)`
}
