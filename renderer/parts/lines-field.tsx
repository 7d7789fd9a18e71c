import { useId } from 'react'
import './field.css'

/** Text of several lines, taken when the focus leaves it; its fault stands beside it and the text stays. */
export function LinesField(props: {
  readonly id?: string
  readonly label: string
  readonly text: string
  readonly stated: boolean
  readonly fault: string | null
  readonly help: string
  readonly hint: string
  onText(text: string): void
  onCommit(): void
  onGiveUp(): void
}) {
  const own = useId()
  const id = props.id ?? own
  return (
    <div className="field field-wide">
      <label htmlFor={id}>{props.label}</label>
      <textarea
        id={id}
        rows={4}
        className={props.stated ? 'stated' : 'default'}
        value={props.text}
        placeholder={props.hint}
        spellCheck={false}
        aria-invalid={props.fault !== null}
        aria-describedby={props.fault === null ? `${id}-help` : `${id}-fault ${id}-help`}
        onChange={(event) => props.onText(event.target.value)}
        onBlur={props.onCommit}
        onKeyDown={(event) => {
          if (event.key !== 'Escape') return
          props.onGiveUp()
          event.stopPropagation()
        }}
      />
      <p id={`${id}-help`} className="soft">
        {props.help}
      </p>
      {props.fault !== null && (
        <p id={`${id}-fault`} className="field-fault" role="alert">
          <span aria-hidden="true">▲</span> {props.fault}
        </p>
      )}
    </div>
  )
}
