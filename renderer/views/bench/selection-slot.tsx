import { useEffect, useRef } from 'react'
import { useJob } from '../../state/session-context.ts'
import { Selection } from './selection.tsx'

/** Where the chosen thing is described; brought into view when something else is chosen. */
export function SelectionSlot() {
  const selected = useJob((state) => state.selected)
  const slot = useRef<HTMLDivElement>(null)
  useEffect(() => {
    if (selected !== null) slot.current?.scrollIntoView({ block: 'nearest' })
  }, [selected])
  return <div ref={slot}>{selected !== null && <Selection id={selected} />}</div>
}
