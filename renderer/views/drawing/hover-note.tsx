import { MarkSign } from '../../parts/mark-sign.tsx'
import { noteOn } from '../../state/drawing/note-on.ts'
import { useJob } from '../../state/session-context.ts'
import { useBoardIndex, useThings } from '../../state/use-derived.ts'

/** What lies under the pointer, in one line: the whole of it stands in the bench once it is chosen. */
export function HoverNote() {
  const hovered = useJob((state) => state.hovered)
  const held = useJob((state) => state.held)
  const checks = useJob((state) => state.design?.checks)
  const thing = useThings().find(({ id }) => id === hovered)
  const cut = useBoardIndex()?.byMember.get(hovered ?? '')
  if (thing === undefined || held !== null || checks === undefined) return null
  const { words, worst } = noteOn(thing, cut ?? null, checks)
  return (
    <p className="hover-note" aria-hidden="true">
      {words.join(' · ')}
      {worst && (
        <>
          {' · '}
          <MarkSign mark={worst.mark} /> {worst.text}
        </>
      )}
    </p>
  )
}
