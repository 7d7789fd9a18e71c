import { useState } from 'react'
import { parseLength, printLength } from '../../../core/units/index.ts'
import { TextField } from '../../parts/text-field.tsx'
import { faultSentence } from '../../state/field-value.ts'
import type { Grip } from '../../state/grips/index.ts'
import { snapped, stepped } from '../../state/grips/snap.ts'
import { useJob, useSession } from '../../state/session-context.ts'
import { capital } from '../../state/things.ts'

/** Where the chosen edge, beam or post lies, to be typed instead of drawn. */
export function PlaceFields({ grip }: { readonly grip: Grip }) {
  return grip.axes.map((axis, index) => <PlaceField key={axis.name} grip={grip} index={index} />)
}

function PlaceField({ grip, index }: { readonly grip: Grip; readonly index: number }) {
  const session = useSession()
  const held = useJob((state) => (state.held?.grip.id === grip.id ? state.held : null))
  const [draft, setDraft] = useState<{ readonly text: string; readonly fault: string | null } | null>(null)
  const axis = grip.axes[index]
  if (axis === undefined) return null
  const value = held?.values[index] ?? axis.value

  function move(next: typeof value) {
    const base = held?.grip ?? grip
    if (held === null) session.takeHold(grip)
    session.moveHeld(base.axes.map((each, i) => (i === index ? next : (held?.values[i] ?? each.value))))
  }

  function onText(text: string) {
    const read = parseLength(text)
    if (!read.ok) {
      setDraft({ text, fault: faultSentence(read.error) })
      return
    }
    // as typed, not on the grid of steps; past a bound it stands at the bound when the move ends
    setDraft({ text, fault: null })
    if (axis) move(snapped({ ...axis, fine: 1 }, read.value, true))
  }

  function finish(isGivenUp: boolean) {
    setDraft(null)
    if (isGivenUp) session.giveUpMove()
    else session.letGo()
  }

  return (
    <TextField
      label={capital(axis.name)}
      text={draft?.text ?? printLength(value)}
      stated
      fault={draft?.fault ?? null}
      help={`${grip.label}, ${axis.name}: it can be drawn in the plan too, or moved by arrow keys there.`}
      basis=""
      onText={onText}
      onCommit={() => finish(draft?.fault != null)}
      onGiveUp={() => finish(true)}
      onNudge={(steps) => {
        setDraft(null)
        move(stepped(axis, value, steps, false))
      }}
    />
  )
}
