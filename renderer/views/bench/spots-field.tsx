import type { FieldSpec, Spot } from '../../../core/job/index.ts'
import { LinesField } from '../../parts/lines-field.tsx'
import { faultSentence, valueAt } from '../../state/field-value.ts'
import { useJob, useSession } from '../../state/session-context.ts'
import { printSpots, readSpotLines } from '../../state/spot-text.ts'

/** Heights of the ground at measured spots, one a line. */
export function SpotsField({ spec, id }: { readonly spec: FieldSpec; readonly id: string }) {
  const session = useSession()
  const { path } = spec
  const draft = useJob((state) => state.drafts[path])
  const value = useJob((state) => (state.design ? valueAt(state.design.job, path) : undefined))
  const stated = useJob((state) => state.design?.given.includes(path) ?? false)
  const found = useJob((state) => state.faults.find((fault) => fault.path.startsWith(path)))
  const kept = typeof value === 'object' ? printSpots(value as readonly Spot[]) : ''
  return (
    <LinesField
      id={id}
      label={spec.label}
      text={draft?.text ?? kept}
      stated={stated}
      fault={draft?.fault ?? (found ? faultSentence(found) : null)}
      help={spec.help}
      hint={'0, 0, 0\n23\'-6", 13\'-6", -6"'}
      onText={(text) => {
        const read = readSpotLines(text)
        session.draft(path, text, read.ok ? null : read.error)
      }}
      onCommit={() => {
        if (!draft || draft.fault !== null) return
        const read = readSpotLines(draft.text)
        session.dropDraft(path)
        if (read.ok) session.state(path, draft.text.trim() === '' ? undefined : read.value, spec.label)
      }}
      onGiveUp={() => session.dropDraft(path)}
    />
  )
}
