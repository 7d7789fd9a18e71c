import { fieldAt } from '../../../core/job/index.ts'
import { topicLabel } from '../../../core/pricing/index.ts'
import { printMoney } from '../../../core/units/index.ts'
import { useJob } from '../../state/session-context.ts'
import { JobField } from '../bench/job-field.tsx'

/** Things builders forget: each with what is said of it, whether it is included, and its sum. */
export function ScopeList() {
  const scope = useJob((state) => state.estimate?.scope)
  return (
    <section className="group" aria-labelledby="scope-title">
      <h2 id="scope-title">Left out?</h2>
      {(scope ?? []).map((line) => (
        <details key={line.topic} className="scope">
          <summary>
            <span>{topicLabel(line.topic)}</span>
            <span className={line.state === 'priced' ? 'scope-state' : 'scope-state soft'}>
              {line.state === 'priced' ? printMoney(line.amount) : 'not included'}
            </span>
          </summary>
          <p className="soft">{line.message}</p>
          <JobField spec={fieldAt(`scope.${line.topic}.included`)} label="Included" />
          <JobField spec={fieldAt(`scope.${line.topic}.allowance`)} label="Sum" />
        </details>
      ))}
    </section>
  )
}
