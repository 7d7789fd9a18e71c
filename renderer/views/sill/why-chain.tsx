import { useMemo, useState } from 'react'
import type { Estimate, WhyStep } from '../../../core/estimate-types.ts'
import { findField } from '../../../core/job/index.ts'
import { why } from '../../../core/why.ts'
import { useSession } from '../../state/session-context.ts'

/** The chain from a thing back to the fields of the job and the clauses, opened a step at a time. */
export function WhyChain({ estimate, id }: { readonly estimate: Estimate; readonly id: string }) {
  const chain = useMemo(() => why(estimate, id), [estimate, id])
  if (chain === null) return <p className="soft">The present estimate does not know it.</p>
  return (
    <ul className="why-chain">
      <Step step={chain} open />
    </ul>
  )
}

function Step({ step, open = false }: { readonly step: WhyStep; readonly open?: boolean }) {
  const session = useSession()
  const [isOpen, setOpen] = useState(open)
  const { text, cause, because } = step
  if (cause === null && findField(step.id) !== undefined) {
    return (
      <li>
        <button
          type="button"
          className="why-field"
          title="Go to this field"
          onClick={() => session.seek(step.id)}
        >
          {text}
        </button>
      </li>
    )
  }
  const rule = cause !== null && cause.rule !== '' && <p className="soft">{cause.rule}</p>
  if (because.length === 0) {
    return (
      <li>
        {text}
        {rule}
      </li>
    )
  }
  return (
    <li>
      <details open={isOpen} onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>{text}</summary>
        {isOpen && (
          <>
            {rule}
            <ul>
              {because.map((each, index) => (
                <Step key={`${each.id} ${index}`} step={each} />
              ))}
            </ul>
          </>
        )}
      </details>
    </li>
  )
}
