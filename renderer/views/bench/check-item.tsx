import { memo, useState } from 'react'
import { type Check, type Finding, percent, type Quantity } from '../../../core/checks/index.ts'
import { printLength, ticks } from '../../../core/units/index.ts'
import { Bar } from '../../parts/bar.tsx'
import { MarkSign } from '../../parts/mark-sign.tsx'
import { markOf } from '../../state/figures.ts'
import { useSession } from '../../state/session-context.ts'
import type { Thing } from '../../state/things.ts'
import { WhyButton } from '../sill/why-button.tsx'
import { Remedies } from './remedies.tsx'
import './checks.css'

/** One check: its mark, what it uses of its limit, and behind a click the clause, the figures and the steps. */
export const CheckItem = memo(function CheckItem({
  check,
  marks: known,
  told = true,
}: {
  readonly check: Check
  /** of everything that can be chosen: the check tells those of what it speaks of */
  readonly marks: Marks
  readonly told?: boolean
}) {
  const session = useSession()
  // figures and steps of every check are thousands of words: they are made when they are asked for
  const [open, setOpen] = useState(false)
  const marks = marksOf(check.subjects, known)
  const mark = markOf(check.status)
  const ratio = check.governing?.ratio ?? null
  const judged = check.status === 'calculated only' || check.status === 'outside scope' ? check.status : null
  const mendable = check.status !== 'passes' && check.status !== 'near'
  const said = (
    <p className={`check-said said-${mark}`}>
      {check.message} {check.remedy}
      {judged && ` This is ${judged}: it needs the building official’s word or a licensed designer.`}
    </p>
  )
  return (
    <li
      className="check"
      onPointerEnter={() => session.lightUp(check.subjects)}
      onPointerLeave={() => session.lightUp([])}
      onFocus={() => session.lightUp(check.subjects)}
      onBlur={() => session.lightUp([])}
    >
      <details onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>
          <MarkSign mark={mark} />
          <span className="check-title">
            {check.title} {marks !== '' && <span className="soft">{marks}</span>}
          </span>
          <span className="check-ratio">{ratio === null ? '' : percent(ratio)}</span>
          {ratio !== null && <Bar ratio={ratio} mark={mark} />}
        </summary>
        {mark === 'passes' && <p>{check.message}</p>}
        {mark !== 'passes' && !told && said}
        {mendable && <Remedies check={check} />}
        {check.basis !== '' && <p className="soft">Decided by: {check.basis}.</p>}
        <p>
          <WhyButton id={check.id} of={check.title} />
        </p>
        {open &&
          check.findings.map((finding) => (
            <FindingText key={`${finding.method} ${finding.clause}`} finding={finding} />
          ))}
      </details>
      {mark !== 'passes' && told && said}
    </li>
  )
})

const MANY = 4

/** Each thing's mark by its id, and where it stands among all. */
export type Marks = ReadonlyMap<string, { readonly mark: string; readonly at: number }>

export function marksInOrder(things: readonly Thing[]): Marks {
  return new Map(things.map(({ id, mark }, at) => [id, { mark, at }]))
}

/** Marks of what a check speaks of, few of them. */
function marksOf(subjects: readonly string[], known: Marks): string {
  const marks = subjects
    .flatMap((id) => known.get(id) ?? [])
    .toSorted((a, b) => a.at - b.at)
    .map(({ mark }) => mark)
  return marks.length > MANY ? `${marks[0]} … ${marks.at(-1)}` : marks.join(', ')
}

function FindingText({ finding }: { readonly finding: Finding }) {
  const { demand, capacity, ratio } = finding
  return (
    <div className="finding">
      <p>
        <strong>{finding.method === 'prescriptive' ? 'By the table' : 'Calculated'}</strong>:{' '}
        {printQuantity(demand)}
        {capacity && ` of ${printQuantity(capacity)}`}
        {ratio !== null && ` (${percent(ratio)})`}
      </p>
      <p className="soft">
        {finding.document} {finding.edition}, {finding.clause}
        {finding.lookup !== '' && `: ${finding.lookup}`}.
        {finding.confidence !== 'computed only' && ` Figure: ${finding.confidence}.`}
      </p>
      {finding.steps.length > 0 && (
        <ol>
          {finding.steps.map((step) => (
            <li key={step}>{step}</li>
          ))}
        </ol>
      )}
    </div>
  )
}

export function printQuantity({ value, unit }: Quantity): string {
  if (unit === 'ticks') return printLength(ticks(Math.round(value)))
  const shown = value.toLocaleString('en-US', { maximumFractionDigits: Math.abs(value) < 100 ? 2 : 0 })
  return unit === 'count' ? shown : `${shown} ${unit}`
}
