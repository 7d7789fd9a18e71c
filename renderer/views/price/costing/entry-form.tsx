import { type FormEvent, type KeyboardEvent, useEffect, useId, useRef, useState } from 'react'
import {
  type EntryDraft,
  type EntryFault,
  type NamedLine,
  readDraft,
} from '../../../state/costing-entries.ts'
import { useSession } from '../../../state/session-context.ts'
import '../../../parts/field.css'

export interface EntryFields {
  /** what stays for the next entry */
  readonly kept: readonly string[]
  readonly add: string
  readonly parts: readonly {
    readonly part: string
    readonly label: string
    readonly type?: 'date'
    readonly sample?: string
  }[]
}

export const PURCHASE_FIELDS: EntryFields = {
  kept: ['date', 'supplier'],
  add: 'Add purchase',
  parts: [
    { part: 'what', label: 'What', sample: 'a line of the estimate, or anything' },
    { part: 'quantity', label: 'Quantity' },
    { part: 'amount', label: 'Amount', sample: '$62.40' },
    { part: 'date', label: 'Day', type: 'date' },
    { part: 'supplier', label: 'Supplier' },
    { part: 'receipt', label: 'Receipt or photo', sample: 'number or file name' },
  ],
}

export const HOURS_FIELDS: EntryFields = {
  kept: ['date', 'who'],
  add: 'Add hours',
  parts: [
    { part: 'what', label: 'Task', sample: 'a task of the estimate, or anything' },
    { part: 'hours', label: 'Worker hours', sample: '6.5' },
    { part: 'date', label: 'Day', type: 'date' },
    { part: 'who', label: 'Who' },
  ],
}

/**
 * One line to write down a purchase or hours: Enter adds it and goes back to the first field, day and supplier or person
 * stay. A text that cannot be taken stays, with what is wrong beside it. Escape gives up changing an entry.
 */
export function EntryForm({
  list,
  fields,
  lines,
  draft,
  at,
  onDraft,
  onEnd,
}: {
  readonly list: 'bought' | 'worked'
  readonly fields: EntryFields
  readonly lines: readonly NamedLine[]
  readonly draft: EntryDraft
  /** place of the entry that is changed; null for a new one */
  readonly at: number | null
  onDraft(draft: EntryDraft): void
  /** the entry was taken or given up: what stays for the next one */
  onEnd(draft: EntryDraft): void
}) {
  const session = useSession()
  const id = useId()
  const [fault, setFault] = useState<EntryFault | null>(null)
  const told = useRef<HTMLParagraphElement>(null)
  useEffect(() => {
    if (fault !== null) told.current?.scrollIntoView({ block: 'nearest' })
  }, [fault])
  const kept = Object.fromEntries(fields.kept.map((part) => [part, draft[part] ?? '']))
  const toFirst = () => document.getElementById(`${list}-what`)?.focus()

  function take(event: FormEvent) {
    event.preventDefault()
    const read = readDraft(list, draft, lines)
    if (!read.ok) {
      setFault(read.error)
      document.getElementById(`${list}-${read.error.part}`)?.focus()
      return
    }
    setFault(null)
    const label = `${list} ${draft.what?.trim() ?? ''}`.trim()
    session.changeEntries<'bought' | 'worked'>(
      list,
      (entries) => (at === null ? [...entries, read.value] : entries.with(at, read.value)),
      at === null ? label : `${label}, changed`,
    )
    session.say(at === null ? `Written down: ${label}` : `Changed: ${label}`)
    onEnd(kept)
    toFirst()
  }

  function onKeyDown(event: KeyboardEvent) {
    if (event.key !== 'Escape' || (at === null && fault === null)) return
    event.stopPropagation()
    setFault(null)
    onEnd(kept)
  }

  return (
    <form
      className={`entry-form costing-form is-${list}`}
      aria-label={at === null ? fields.add : 'Change the entry'}
      onSubmit={take}
      onKeyDown={onKeyDown}
    >
      {fields.parts.map(({ part, label, type, sample }) => {
        const wrong = fault?.part === part
        return (
          <label key={part} className={`is-${part}`}>
            <span>{label}</span>
            <input
              id={`${list}-${part}`}
              type={type ?? 'text'}
              list={part === 'what' ? `${id}-lines` : undefined}
              value={draft[part] ?? ''}
              placeholder={sample}
              autoComplete="off"
              spellCheck={false}
              aria-invalid={wrong}
              aria-describedby={wrong ? `${id}-fault` : undefined}
              onChange={(event) => {
                if (wrong) setFault(null)
                onDraft({ ...draft, [part]: event.target.value })
              }}
            />
          </label>
        )
      })}
      <datalist id={`${id}-lines`}>
        {lines.map((line) => (
          <option key={line.line} value={line.what}>
            {line.hint}
          </option>
        ))}
      </datalist>
      <button type="submit" className="button">
        {at === null ? fields.add : 'Change it'}
      </button>
      {fault !== null && (
        <p ref={told} id={`${id}-fault`} className="field-fault" role="alert">
          <span aria-hidden="true">▲</span> {fault.sentence}
        </p>
      )}
    </form>
  )
}
