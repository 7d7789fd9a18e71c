import { useJob, useSession } from '../../state/session-context.ts'
import { TOPICS } from '../help/help-topics.ts'
import { noteOf } from './place-notes.ts'
import './place-note.css'

/** What the work place is for, told to who builds; dismissed for good, and back from the settings. */
export function PlaceNote() {
  const session = useSession()
  const place = useJob((state) => state.place)
  const builder = useJob((state) => state.design?.job.builder ?? 'contractor')
  const isShown = useJob((state) => state.memory?.notes ?? false)
  if (!isShown) return null
  const { step, why, beware } = noteOf(place, builder)
  const topic = TOPICS.find((each) => each.place === place)?.id ?? ''
  return (
    <aside className="place-note" aria-label="What this place is for">
      <p>
        <strong>{step}</strong> {why}
      </p>
      {beware !== undefined && (
        <p className="place-note-beware">
          <span aria-hidden="true">▲</span> {beware}
        </p>
      )}
      <p className="place-note-end">
        <button type="button" className="link" onClick={() => session.readHelp(topic)}>
          More in the help
        </button>
        <button type="button" className="link" onClick={() => session.remember({ notes: false })}>
          Hide these notes
        </button>
      </p>
    </aside>
  )
}
