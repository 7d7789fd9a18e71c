import { type FieldSpec, type JsonValue, statedValue } from '../../../core/job/index.ts'
import {
  faultSentence,
  feetNote,
  fieldText,
  nudged,
  printQuantity,
  readText,
  statedForm,
  statedText,
  valueAt,
} from '../../state/field-value.ts'
import { useJob, useSession } from '../../state/session-context.ts'

export interface FieldState {
  readonly text: string
  readonly stated: boolean
  readonly fault: string | null
  /** how the text is read, where that is not plain from it; '' for nothing to say */
  readonly note: string
  onText(text: string): void
  onCommit(): void
  onGiveUp(): void
  onNudge(steps: number): void
  onReset(): void
  /** states a value at once, as one step */
  choose(value: JsonValue): void
}

/** One field of the job as its control needs it: what stands in it, whether it is stated, what is wrong, what keys do. */
export function useField(spec: FieldSpec): FieldState {
  const session = useSession()
  const { path } = spec
  const draft = useJob((state) => state.drafts[path])
  const given = useJob((state) => statedValue(state.history.present, path))
  const value = useJob((state) => (state.design ? valueAt(state.design.job, path) : undefined))
  const current = useJob((state) => state.designEdit === state.edit)
  const found = useJob((state) => state.faults.find((fault) => fault.path === path) ?? null)

  const settled = given !== undefined && !current ? statedText(given) : fieldText(spec, value)
  const text = draft?.text ?? settled
  const kept = draft?.fault && value !== undefined ? ` ${printQuantity(spec, value)} is still in use.` : ''
  const fault = draft?.fault ? `${draft.fault}${kept}` : found ? faultSentence(found) : null
  const named = (shown: string) => `${spec.label} ${shown}`.trim()

  const reset = () => {
    session.dropDraft(path)
    session.state(path, undefined, `${spec.label} back to its default`)
  }

  function onText(next: string) {
    const read = readText(spec, next)
    if (!read.ok) {
      session.draft(path, next, read.error)
      return
    }
    session.draft(path, next, null)
    session.stateLive(path, statedForm(spec, read.value), named(printQuantity(spec, read.value)))
  }

  return {
    text,
    stated: given !== undefined,
    fault,
    note: draft && !draft.fault ? feetNote(spec, draft.text) : '',
    onText,
    onCommit() {
      if (!draft) return
      if (draft.fault !== null) {
        session.giveUpGesture()
        // an emptied quantity is one that is not stated
        if (draft.text.trim() === '' && spec.kind !== 'text') reset()
        return
      }
      session.endGesture()
      session.dropDraft(path)
    },
    onGiveUp() {
      session.giveUpGesture()
      session.dropDraft(path)
    },
    onNudge(steps) {
      const read = readText(spec, text)
      const from = read.ok ? read.value : value
      if (typeof from === 'number') onText(printQuantity(spec, nudged(spec, from, steps)))
    },
    onReset: reset,
    choose: (next) => session.state(path, next, named(String(next))),
  }
}
