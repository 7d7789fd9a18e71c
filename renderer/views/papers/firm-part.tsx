import { useState } from 'react'
import type { Firm } from '../../../core/papers/index.ts'
import { useSession } from '../../state/session-context.ts'

const linesOf = (text: string): readonly string[] =>
  text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '')

/** Who makes the papers: set once, kept with the program. */
export function FirmPart({ firm }: { readonly firm: Firm }) {
  const session = useSession()
  const [name, setName] = useState(firm.name)
  const [lines, setLines] = useState(firm.lines.join('\n'))
  const [terms, setTerms] = useState(firm.terms.join('\n'))
  const keep = (): void => {
    const stated = {
      ...firm,
      name: name.trim(),
      lines: linesOf(lines).slice(0, 8),
      terms: linesOf(terms).slice(0, 40),
    }
    if (JSON.stringify(stated) !== JSON.stringify(firm)) void session.saveFirm(stated)
  }
  return (
    <section className="group" aria-labelledby="firm-title">
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
      <label htmlFor="firm-lines">Address, telephone, licence: a line each</label>
      <textarea
        id="firm-lines"
        className="firm-lines"
        maxLength={2000}
        value={lines}
        onChange={({ target }) => setLines(target.value)}
        onBlur={keep}
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
