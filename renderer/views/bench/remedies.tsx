import { useState } from 'react'
import type { Check } from '../../../core/checks/index.ts'
import type { Remedy } from '../../../core/sizing/index.ts'
import { askRemedies } from '../../client/ask-remedies.ts'
import { useJob, useSession } from '../../state/session-context.ts'

type Answer = { readonly edit: number; readonly remedies: readonly Remedy[] | 'failed' }

/** What would mend a check, on request; each way was tried, and taking one is one step to undo. */
export function Remedies({ check }: { readonly check: Check }) {
  const session = useSession()
  const edit = useJob((state) => state.edit)
  const statement = useJob((state) => state.history.present)
  const [asking, setAsking] = useState(false)
  const [answer, setAnswer] = useState<Answer | null>(null)

  async function ask() {
    setAsking(true)
    const remedies = await askRemedies(statement, check.id).catch(() => 'failed' as const)
    setAsking(false)
    setAnswer({ edit, remedies })
  }

  function take({ changes }: Remedy) {
    session.endGesture()
    for (const { field, value } of changes) session.stateLive(field, value, `fix of ${check.title}`)
    session.endGesture()
    setAnswer(null)
    session.say(`${check.title}: changed. One undo takes it back`)
  }

  return (
    <div className="remedies">
      <button
        type="button"
        className="button"
        aria-label={`Find a fix: ${check.title}`}
        disabled={asking}
        onClick={() => void ask()}
      >
        {asking ? 'Trying…' : 'Find a fix'}
      </button>
      <div role="status">
        {answer !== null && <Found answer={answer} stale={answer.edit !== edit} take={take} />}
      </div>
    </div>
  )
}

function Found({
  answer: { remedies },
  stale,
  take,
}: {
  readonly answer: Answer
  readonly stale: boolean
  take(remedy: Remedy): void
}) {
  if (stale) return <p className="soft">The job has changed since: find it again.</p>
  if (remedies === 'failed') return <p className="soft">The fixes could not be tried.</p>
  if (remedies.length === 0)
    return <p className="soft">No single choice of the frame or the footings mends this.</p>
  return (
    <ul className="remedy-list">
      {remedies.map((remedy) => (
        <li key={remedy.words}>
          {remedy.words}
          {remedy.opens.length > 0 && <span className="soft">; then open: {remedy.opens.join(', ')}</span>}{' '}
          <button
            type="button"
            className="button"
            aria-label={`Use: ${remedy.words}`}
            onClick={() => take(remedy)}
          >
            Use
          </button>
        </li>
      ))}
    </ul>
  )
}
