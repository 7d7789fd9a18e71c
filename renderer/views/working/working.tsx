import { useEffect, useState } from 'react'
import { progressWords } from '../../state/progress-words.ts'
import { useJob, useSession } from '../../state/session-context.ts'
import type { TaskKind } from '../../state/tasks.ts'
import './working.css'

/** Work that takes longer than this is shown, with a way to stop it, ms. */
const A_MOMENT = 1_000

/** What is being worked out, how far it is, and a way to end it with what there is by then. */
export function Working({
  kind,
  what,
  stop = 'Stop here',
}: {
  readonly kind: TaskKind
  readonly what: string
  readonly stop?: string
}) {
  const session = useSession()
  const running = useJob((state) => state.tasks[kind])
  const task = running?.task ?? null
  const [shown, setShown] = useState<string | null>(null)
  useEffect(() => {
    if (task === null) return
    const timer = setTimeout(() => setShown(task), A_MOMENT)
    return () => clearTimeout(timer)
  }, [task])
  if (running === undefined || shown !== task) return null
  return (
    <div className="working">
      <span role="status">{running.stopping ? 'Stopping.' : what}</span>
      <button
        type="button"
        className="button"
        disabled={running.stopping}
        onClick={() => session.stopTask(kind)}
      >
        {stop}
      </button>
      {running.progress !== null && <span className="soft">{progressWords(running.progress)}</span>}
    </div>
  )
}
