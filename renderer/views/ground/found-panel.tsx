import { type FormEvent, useId, useState } from 'react'
import type { Footing } from '../../../core/frame/index.ts'
import { parseLength, type Result, type Ticks, ticks } from '../../../core/units/index.ts'
import { useJob, useSession } from '../../state/session-context.ts'
import { FoundOptions } from './found-options.tsx'
import '../../parts/field.css'
import './ground.css'

/** What is wrong at a chosen hole: how far off it was found, or that its place is barred; then what can be done. */
export function FoundPanel({ footing }: { readonly footing: Footing }) {
  const session = useSession()
  const asked = useJob((state) => state.ground.found)
  const id = useId()
  const [along, setAlong] = useState('')
  const [side, setSide] = useState<1 | -1>(1)
  const [away, setAway] = useState('')
  const [way, setWay] = useState<1 | -1>(1)
  const [barred, setBarred] = useState(false)
  const [fault, setFault] = useState<string | null>(null)
  const { number } = footing

  function ask(event: FormEvent) {
    event.preventDefault()
    const dx = readOff(along)
    const dy = readOff(away)
    if (!dx.ok) return setFault(dx.error)
    if (!dy.ok) return setFault(dy.error)
    if (dx.value === 0 && dy.value === 0)
      return setFault('Say how far off it is: one distance at least, such as 2 in.')
    setFault(null)
    session.askAboutHole({
      post: number,
      dx: ticks(side * dx.value),
      dy: ticks(way * dy.value),
      barred,
    })
  }

  const entry = (label: string, value: string, set: (text: string) => void) => (
    <label>
      <span>{label}</span>
      <input
        value={value}
        placeholder="0 in"
        autoComplete="off"
        spellCheck={false}
        aria-invalid={fault !== null}
        aria-describedby={fault === null ? undefined : id}
        onChange={(event) => set(event.target.value)}
      />
    </label>
  )

  return (
    <section className="group" aria-labelledby={`${id}-head`}>
      <h2 id={`${id}-head`}>Hole {number} is not where the plan has it</h2>
      <form className="entry-form found-form" onSubmit={ask}>
        <div>
          {entry('Off along the house', along, setAlong)}
          <label>
            <span>and it lies</span>
            <select value={side} onChange={(event) => setSide(event.target.value === '1' ? 1 : -1)}>
              <option value={1}>to the right</option>
              <option value={-1}>to the left</option>
            </select>
          </label>
        </div>
        <div>
          {entry('Off away from the house', away, setAway)}
          <label>
            <span>and it lies</span>
            <select value={way} onChange={(event) => setWay(event.target.value === '1' ? 1 : -1)}>
              <option value={1}>farther out</option>
              <option value={-1}>nearer the house</option>
            </select>
          </label>
        </div>
        <div>
          <label className="found-barred">
            <input type="checkbox" checked={barred} onChange={({ target }) => setBarred(target.checked)} />{' '}
            Rock, a pipe or the like bars its place
          </label>
          <button type="submit" className="button">
            What can be done
          </button>
        </div>
        {fault !== null && (
          <p id={id} className="field-fault" role="alert">
            <span aria-hidden="true">▲</span> {fault}
          </p>
        )}
      </form>
      {asked?.post === number && <FoundOptions found={asked} />}
    </section>
  )
}

/** A distance with no sign: which way is said beside it. */
function readOff(text: string): Result<Ticks, string> {
  if (text.trim() === '') return { ok: true, value: ticks(0) }
  const read = parseLength(text)
  if (!read.ok) return { ok: false, error: `${read.error.message}; ${read.error.fix}.` }
  if (read.value < 0) return { ok: false, error: 'A distance has no minus: choose the other way beside it.' }
  return read
}
