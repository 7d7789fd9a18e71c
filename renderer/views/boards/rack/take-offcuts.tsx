import { useState } from 'react'
import type { Job } from '../../../../core/job/index.ts'
import { printLength } from '../../../../core/units/index.ts'
import { plural } from '../../../state/print.ts'
import { useJob, useSession } from '../../../state/session-context.ts'

/** Puts what this job leaves on the rack, once; asked again before it is done, as it cannot be undone. */
export function TakeOffcuts({ job }: { readonly job: Job }) {
  const session = useSession()
  const plans = useJob((state) => state.estimate?.plans)
  const ready = useJob(
    (state) => state.saving.state === 'saved' && state.estimateEdit === state.edit && state.estimate !== null,
  )
  const [asked, setAsked] = useState(false)
  const from = job.cutting.keepOffcutsFrom
  if (from === 0) return <p className="soft">This job keeps no offcuts: see the fields under Cutting.</p>
  const left = plans?.flatMap(({ plan }) => plan.boards.filter((board) => board.offcut >= from)).length ?? 0
  const used =
    plans?.flatMap(({ plan, onHand }) => plan.boards.filter((board) => onHand.includes(board.stockId)))
      .length ?? 0
  if (left + used === 0)
    return <p className="soft">This job leaves no offcut of {printLength(from)} or longer.</p>
  const verb =
    left > 0 ? `Put ${plural(left, 'offcut')} on the rack` : `Take ${plural(used, 'offcut')} off the rack`
  if (!asked) {
    return (
      <button type="button" className="button" disabled={!ready} onClick={() => setAsked(true)}>
        Put this job’s offcuts on the rack
      </button>
    )
  }
  return (
    <div className="rack-ask" role="group" aria-label="Put this job’s offcuts on the rack">
      <p>
        The job then counts as cut: its offcuts of {printLength(from)} and longer, {left} in all, come onto
        the rack, and the {used} it is cut from leave it. Once for each job.
      </p>
      <button
        type="button"
        className="button button-main"
        disabled={!ready}
        onClick={() => {
          setAsked(false)
          void session.takeOffcuts()
        }}
      >
        {verb}
      </button>
      <button type="button" className="button" onClick={() => setAsked(false)}>
        Not now
      </button>
    </div>
  )
}
