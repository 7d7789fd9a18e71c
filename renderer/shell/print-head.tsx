import type { DrawingView } from '../state/drawing/look.ts'
import { useJob } from '../state/session-context.ts'

const PRINTED: { readonly [view in DrawingView]: string } = {
  plan: 'Framing plan',
  section: 'Section square to the house',
  front: 'Elevation from the yard',
  side: 'Elevation from the left',
  solid: 'The deck from above',
}

/** What stands over a printed drawing: the job, the code it was checked by, the caution. Unseen on the screen. */
export function PrintHead() {
  const view = useJob((state) => state.look.view)
  const job = useJob((state) => state.design?.job ?? null)
  const marks = useJob(
    (state) =>
      state.design?.checks.filter((check) => check.status !== 'passes' && check.status !== 'near').length ??
      0,
  )
  if (!job) return null
  return (
    <div className="print-head">
      <p>
        <strong>{job.name}</strong> · {PRINTED[view]} · checked by {job.code.edition}
        {marks > 0 && ` · ${marks} not passed`}
      </p>
      <p>
        Local code and the building official govern. Have utilities marked before digging. What lies outside
        the tables needs a licensed professional.
      </p>
    </div>
  )
}
