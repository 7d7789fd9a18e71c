import { useState } from 'react'
import { DEPOSIT_LIMITS, type Firm } from '../../../core/papers/index.ts'
import { useSession } from '../../state/session-context.ts'
import { FirmLogo } from './firm-logo.tsx'
import { FirmStages } from './firm-stages.tsx'

const linesOf = (text: string): readonly string[] =>
  text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '')

/** Days that a quote holds, 1 to 365; null for anything else. */
function daysOf(text: string): number | null {
  const days = /^\s*\d{1,3}\s*$/.test(text) ? Number(text) : 0
  return days >= 1 && days <= 365 ? days : null
}

/** Who makes the papers: set once, kept with the program. */
export function FirmPart({ firm }: { readonly firm: Firm }) {
  const session = useSession()
  const [name, setName] = useState(firm.name)
  const [lines, setLines] = useState(firm.lines.join('\n'))
  const [days, setDays] = useState(`${firm.validDays}`)
  const [terms, setTerms] = useState(firm.terms.join('\n'))
  const keep = (): void => {
    const stated = {
      ...firm,
      name: name.trim(),
      lines: linesOf(lines).slice(0, 8),
      terms: linesOf(terms).slice(0, 40),
      validDays: daysOf(days) ?? firm.validDays,
    }
    if (JSON.stringify(stated) !== JSON.stringify(firm)) void session.saveFirm(stated)
  }
  return (
    <section className="group entries" aria-labelledby="firm-title">
      <h2 id="firm-title">Your firm</h2>
      <div className="field">
        <label htmlFor="firm-name">Name</label>
        <input
          id="firm-name"
          type="text"
          maxLength={200}
          value={name}
          onChange={({ target }) => setName(target.value)}
          onBlur={keep}
        />
      </div>
      <FirmLogo firm={firm} />
      <label htmlFor="firm-lines">Address, telephone, licence: a line each</label>
      <textarea
        id="firm-lines"
        className="firm-lines"
        maxLength={2000}
        value={lines}
        onChange={({ target }) => setLines(target.value)}
        onBlur={keep}
      />
      <div className="field">
        <label htmlFor="firm-days">Days that a quote holds</label>
        <input
          id="firm-days"
          type="text"
          inputMode="numeric"
          value={days}
          aria-invalid={daysOf(days) === null}
          onChange={({ target }) => setDays(target.value)}
          onBlur={keep}
        />
        {daysOf(days) === null && (
          <p className="field-fault" role="alert">
            <span aria-hidden="true">▲</span> A whole number of days, 1 to 365.
          </p>
        )}
      </div>
      <div className="field">
        <label htmlFor="firm-state">State, for its limit on deposits</label>
        <select
          id="firm-state"
          value={firm.state}
          onChange={({ target }) => void session.saveFirm({ ...firm, state: target.value })}
        >
          <option value="">another</option>
          {DEPOSIT_LIMITS.map(({ state, name: called }) => (
            <option key={state} value={state}>
              {called}
            </option>
          ))}
        </select>
      </div>
      <FirmStages
        stages={firm.stages}
        onKeep={(stages) => {
          if (JSON.stringify(stages) !== JSON.stringify(firm.stages))
            void session.saveFirm({ ...firm, stages })
        }}
      />
      <label htmlFor="firm-terms">Terms of your quotes: a line each</label>
      <textarea
        id="firm-terms"
        className="firm-lines"
        maxLength={10_000}
        value={terms}
        onChange={({ target }) => setTerms(target.value)}
        onBlur={keep}
      />
    </section>
  )
}
