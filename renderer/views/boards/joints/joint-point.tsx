import type { FrameRun } from '../../../../core/frame/index.ts'
import { printLength, ticks } from '../../../../core/units/index.ts'
import { pointKey } from '../../../state/joint-actions.ts'
import type { JointPointLine } from '../../../state/joint-points.ts'
import { plural } from '../../../state/print.ts'
import { useJob, useSession } from '../../../state/session-context.ts'

const SIGNS = { made: '|', free: '○', refused: '✕' } as const

/** One point of a run: jointed or not, and why; it lights up in the drawing. */
export function JointPoint({ run, point }: { readonly run: FrameRun; readonly point: JointPointLine }) {
  const session = useSession()
  const { at, label, state, memberIds, why } = point
  const answer = useJob((now) => now.joints[pointKey(run.id, at)])
  const current = useJob((now) => answer?.edit === now.edit)
  const lit = useJob((now) => now.litPoint?.runId === run.id && now.litPoint.at === at)
  const place = `${label}, ${printLength(ticks(at))} from the left end`
  const light = () => session.lightPoint({ runId: run.id, at })
  const known = current ? answer : undefined
  return (
    <li
      className={lit ? 'is-lit' : undefined}
      onPointerEnter={light}
      onPointerLeave={() => session.lightPoint(null)}
    >
      <span className={`joint-sign is-${state}`} aria-hidden="true">
        {SIGNS[state]}
      </span>
      <span>
        <button
          type="button"
          className="link"
          onFocus={light}
          onClick={() => session.select(memberIds[0] ?? run.memberIds[0] ?? null)}
        >
          {place}
        </button>
        {': '}
        {state === 'refused' && `no joint. ${why}`}
        {state === 'made' && `${plural(memberIds.length, 'joint')}. `}
        {state === 'free' && 'no joint, one would be allowed. '}
        {state !== 'refused' && (known === undefined || known.state === 'failed') && (
          <button
            type="button"
            className="link"
            onClick={() => void session.explainJoints(run.id, [at])}
            aria-label={`${state === 'made' ? 'What does it save' : 'What would it cost'}: ${run.label}, ${label}`}
          >
            {state === 'made' ? 'What does it save?' : 'What would it cost?'}
          </button>
        )}
        {known?.state === 'asked' && <span className="soft">Working it out.</span>}
        {known?.state === 'failed' && <span className="said-fails"> {known.message}</span>}
        {known?.state === 'told' && <span>{reasonAfterPlace(known.reason.message)}</span>}
      </span>
    </li>
  )
}

/** The reason without the place that stands before it already. */
function reasonAfterPlace(message: string): string {
  const rest = message.slice(message.indexOf('): ') + 3)
  return rest.charAt(0).toUpperCase() + rest.slice(1)
}
