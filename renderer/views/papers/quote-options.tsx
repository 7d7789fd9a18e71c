import { useState } from 'react'
import {
  FIELDS,
  type FieldSpec,
  findField,
  type JobOption,
  optionList,
  printOptions,
  readJob,
  setField,
} from '../../../core/job/index.ts'
import type { PricedOption } from '../../../core/papers/index.ts'
import { printMoneyChange } from '../../../core/units/index.ts'
import { useJob, useSession } from '../../state/session-context.ts'

const PATH = 'pricing.options'
const NONE: readonly JobOption[] = []
/** What a customer chooses about: the deck itself, not its price, its cuts or its papers. */
const SECTIONS: readonly FieldSpec['section'][] = [
  'size',
  'frame',
  'decking',
  'stairs',
  'guard',
  'work',
  'scope',
]
const OFFERED = FIELDS.filter(({ section, kind }) => SECTIONS.includes(section) && kind !== 'ground')

/** What the customer may choose otherwise, each with what it adds or saves; and one more to offer. */
export function QuoteOptions({ priced }: { readonly priced: readonly PricedOption[] }) {
  const session = useSession()
  const text = useJob((state) => state.design?.job.pricing.options ?? '')
  const options = text === '' ? NONE : optionList(text)
  const keep = (list: readonly JobOption[], label: string): void =>
    session.state(PATH, list.length === 0 ? undefined : printOptions(list), label)
  return (
    <div className="quote-options">
      <h3>Options</h3>
      {options.length > 0 && (
        <ul className="quote-lines" aria-label="Options">
          {options.map((option) => {
            const known = priced.find(({ name }) => name === option.name)
            return (
              <li key={option.name}>
                <span>
                  {option.name}
                  <br />
                  <span className="soft">{known?.changes.join('; ') ?? 'working it out'}</span>
                </span>
                <span className="quote-amount">{known === undefined ? '…' : priceWords(known)}</span>
                <span className="quote-files">
                  <button
                    type="button"
                    className="link"
                    aria-label={`Take the option ${option.name} off the quote`}
                    onClick={() =>
                      keep(
                        options.filter((other) => other !== option),
                        `option “${option.name}” off`,
                      )
                    }
                  >
                    take off
                  </button>
                </span>
              </li>
            )
          })}
        </ul>
      )}
      <NewOption
        onOffer={(option) => keep([...options, option], `option “${option.name}”`)}
        options={options}
      />
    </div>
  )
}

function priceWords({ price }: PricedOption): string {
  if (price === null) return 'no price'
  return printMoneyChange(price)
}

function NewOption({
  options,
  onOffer,
}: {
  readonly options: readonly JobOption[]
  readonly onOffer: (option: JobOption) => void
}) {
  const present = useJob((state) => state.history.present)
  const [name, setName] = useState('')
  const [path, setPath] = useState('size.height')
  const [value, setValue] = useState('')
  const [fault, setFault] = useState<string | null>(null)
  const field = findField(path)
  const choices = field === undefined ? [] : choicesOf(field)
  const offer = (): void => {
    const option: JobOption = { name: name.trim(), changes: [{ path, text: value.trim() }] }
    const list = printOptions([...options, option])
    const read = readJob(setField(present, PATH, list))
    const wrong = read.ok ? undefined : read.error.find((one) => one.path === PATH)
    const empty = value.trim() === '' ? 'Say what it would be.' : null
    setFault(empty ?? (wrong === undefined ? null : `${wrong.message}; ${wrong.fix}.`))
    if (empty !== null || wrong !== undefined) return
    onOffer(option)
    setName('')
    setValue('')
  }
  return (
    <details className="quote-new">
      <summary>Offer an option</summary>
      <div className="field">
        <label htmlFor="option-name">What it is called</label>
        <input
          id="option-name"
          type="text"
          maxLength={80}
          value={name}
          onChange={({ target }) => setName(target.value)}
        />
      </div>
      <div className="field">
        <label htmlFor="option-field">What changes</label>
        <select
          id="option-field"
          value={path}
          onChange={({ target }) => {
            setPath(target.value)
            setValue('')
          }}
        >
          {SECTIONS.map((section) => (
            <optgroup key={section} label={section}>
              {OFFERED.filter((one) => one.section === section).map((one) => (
                <option key={one.path} value={one.path}>
                  {one.label}
                </option>
              ))}
            </optgroup>
          ))}
        </select>
      </div>
      <div className="field">
        <label htmlFor="option-value">What it would be</label>
        {choices.length === 0 ? (
          <input
            id="option-value"
            type="text"
            maxLength={500}
            value={value}
            aria-invalid={fault !== null}
            onChange={({ target }) => setValue(target.value)}
          />
        ) : (
          <select
            id="option-value"
            value={value}
            aria-invalid={fault !== null}
            onChange={({ target }) => setValue(target.value)}
          >
            <option value="">choose</option>
            {choices.map(({ is, label }) => (
              <option key={is} value={is}>
                {label}
              </option>
            ))}
          </select>
        )}
        {fault !== null && (
          <p className="field-fault" role="alert">
            <span aria-hidden="true">▲</span> {fault}
          </p>
        )}
      </div>
      <button type="button" className="button" onClick={offer}>
        Offer it
      </button>
    </details>
  )
}

function choicesOf({ kind, choices = [], choiceLabels }: FieldSpec) {
  if (kind === 'flag') return ['yes', 'no'].map((is) => ({ is, label: is }))
  return choices.map((is, i) => ({ is, label: choiceLabels?.[i] ?? is }))
}
