import { useState } from 'react'
import { Message } from '../parts/message.tsx'
import { useJob, useSession } from '../state/session-context.ts'

/** What the whole job is in for: a save that failed, a change elsewhere, a recovery. */
export function Banner() {
  const session = useSession()
  const saving = useJob((state) => state.saving)
  const recovered = useJob((state) => state.open?.recovered ?? false)
  const id = useJob((state) => state.open?.id ?? '')
  const [seen, setSeen] = useState('')
  if (saving.state === 'conflict') {
    return (
      <div className="banner" role="alert">
        <Message tone="fails">{saving.message || 'This job was changed in another window.'}</Message>
        <button type="button" className="button" onClick={() => void session.takeTheirs()}>
          Take the other version
        </button>
        <button type="button" className="button" onClick={() => void session.keepMine()}>
          Save mine over it
        </button>
      </div>
    )
  }
  if (saving.state === 'failed') {
    return (
      <div className="banner" role="alert">
        <Message tone="fails" action={{ label: 'Try again', run: session.saveNow }}>
          Not saved: {saving.message} It is tried again every few seconds.
        </Message>
      </div>
    )
  }
  if (recovered && seen !== id) {
    return (
      <div className="banner" role="status">
        <Message tone="plain" action={{ label: 'Good', run: () => setSeen(id) }}>
          The program was not closed properly the last time. This is the job as it was last saved.
        </Message>
      </div>
    )
  }
  return null
}
