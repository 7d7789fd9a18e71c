import { useId } from 'react'
import './field.css'

export interface ChoiceFieldProps {
  readonly id?: string
  readonly label: string
  readonly value: string
  readonly choices: readonly { readonly value: string; readonly label: string }[]
  readonly stated: boolean
  readonly fault: string | null
  readonly help: string
  readonly basis: string
  onChoose(value: string): void
  onReset(): void
}

/** a choice of more letters is not read whole beside its label in the bench */
const BESIDE = 18

/** One of a few values. A value that is none of them stays in view, marked as wrong. */
export function ChoiceField(props: ChoiceFieldProps) {
  const own = useId()
  const id = props.id ?? own
  const known = props.choices.some((choice) => choice.value === props.value)
  const isLong = props.choices.some((choice) => choice.label.length > BESIDE)
  return (
    <div className={isLong ? 'field field-long' : 'field'}>
      <label htmlFor={id} title={`${props.help} ${props.basis}`}>
        {props.label}
      </label>
      <div className="field-entry">
        {props.stated && (
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
        <select
          id={id}
          className={props.stated ? 'stated' : 'default'}
          value={props.value}
          aria-invalid={props.fault !== null}
          aria-describedby={props.fault === null ? `${id}-help` : `${id}-fault ${id}-help`}
          onChange={(event) => props.onChoose(event.target.value)}
          onKeyDown={(event) => {
            if (!props.stated || (event.key !== 'Delete' && event.key !== 'Backspace')) return
            event.preventDefault()
            props.onReset()
          }}
        >
          {!known && <option value={props.value}>{props.value}</option>}
          {props.choices.map((choice) => (
            <option key={choice.value} value={choice.value}>
              {choice.label}
            </option>
          ))}
        </select>
      </div>
      <span id={`${id}-help`} hidden>
        {props.stated ? '' : 'Default. '}
        {props.help}
      </span>
      {props.fault !== null && (
        <p id={`${id}-fault`} className="field-fault" role="alert">
          <span aria-hidden="true">▲</span> {props.fault}
        </p>
      )}
    </div>
  )
}
