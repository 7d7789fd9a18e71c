import { type KeyboardEvent, useEffect, useId, useRef, useState } from 'react'
import './field.css'

export interface TextFieldProps {
  readonly id?: string
  readonly label: string
  readonly text: string
  /** false where the text is a default the user did not state */
  readonly stated: boolean
  /** what is wrong with the text and what would be right */
  readonly fault: string | null
  readonly help: string
  readonly basis: string
  readonly wide?: boolean
  readonly placeholder?: string
  /** how the text is read, where that is not plain from it */
  readonly note?: string
  onText(text: string): void
  onCommit(): void
  onGiveUp(): void
  /** steps up (positive) or down; absent where the value is not a quantity */
  readonly onNudge?: ((steps: number) => void) | undefined
  /** back to the default; absent where there is none */
  readonly onReset?: (() => void) | undefined
}

/** A fault of a text still being typed is held back so long: it may be half a length. */
const PATIENCE = 700

/** A labelled text entry: dashed while it shows a default, solid once stated, with its fault beside it. */
export function TextField(props: TextFieldProps) {
  const own = useId()
  const id = props.id ?? own
  const input = useRef<HTMLInputElement>(null)
  const [typing, setTyping] = useState(false)

  useEffect(() => {
    if (!typing) return
    const timer = setTimeout(() => setTyping(false), PATIENCE)
    return () => clearTimeout(timer)
  }, [typing])

  const fault = typing ? null : props.fault

  function onKeyDown(event: KeyboardEvent<HTMLInputElement>) {
    if (event.key === 'Enter') {
      setTyping(false)
      props.onCommit()
      input.current?.select()
    } else if (event.key === 'Escape') {
      setTyping(false)
      props.onGiveUp()
      event.stopPropagation()
    } else if (props.onNudge && (event.key === 'ArrowUp' || event.key === 'ArrowDown')) {
      event.preventDefault()
      props.onNudge((event.key === 'ArrowUp' ? 1 : -1) * (event.shiftKey ? 4 : 1))
    }
  }

  return (
    <div className={props.wide ? 'field field-wide' : 'field'}>
      <label htmlFor={id} title={`${props.help} ${props.basis}`}>
        {props.label}
      </label>
      <div className="field-entry">
        {props.stated && props.onReset && (
          <button
            type="button"
            className="field-reset"
            tabIndex={-1}
            aria-label={`${props.label}: back to the default`}
            title="Back to the default"
            onClick={props.onReset}
          >
            ↺
          </button>
        )}
        <input
          ref={input}
          id={id}
          type="text"
          className={props.stated ? 'stated' : 'default'}
          value={props.text}
          placeholder={props.placeholder}
          spellCheck={false}
          autoComplete="off"
          aria-invalid={fault !== null}
          aria-describedby={fault === null ? `${id}-help` : `${id}-fault ${id}-help`}
          onFocus={(event) => event.target.select()}
          onChange={(event) => {
            setTyping(true)
            props.onText(event.target.value)
          }}
          onBlur={() => {
            setTyping(false)
            props.onCommit()
          }}
          onKeyDown={onKeyDown}
        />
      </div>
      <span id={`${id}-help`} hidden>
        {props.stated ? '' : 'Default. '}
        {props.help}
      </span>
      {props.note && fault === null && (
        <p className="field-note" role="status">
          {props.note}
        </p>
      )}
      {fault !== null && (
        <p id={`${id}-fault`} className="field-fault" role="alert">
          <span aria-hidden="true">▲</span> {fault}
        </p>
      )}
    </div>
  )
}
