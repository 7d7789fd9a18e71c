import { useJob, useSession } from '../../../state/session-context.ts'
import { today } from '../../today.ts'

/** Nothing was bought or worked yet: what happens when it is, and the one step there. */
export function BeginJob() {
  const session = useSession()
  const ready = useJob((state) => state.estimate?.pricing != null && state.estimateEdit === state.edit)
  return (
    <section aria-labelledby="begin-title" className="costing-begin">
      <h2 id="begin-title">Not begun yet</h2>
      <p>
        Once the job is under way, write down here what you buy and the hours you work: each line of the
        estimate then shows what it took, what is still open, and what is left of the price.
      </p>
      <p className="soft">
        The estimate is kept as it is on that day, so that later prices and rates do not change what the job
        is held against.
      </p>
      <button type="button" className="button" disabled={!ready} onClick={() => session.beginJob(today())}>
        Begin the job on this estimate
      </button>
    </section>
  )
}
