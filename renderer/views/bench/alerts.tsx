import { Message } from '../../parts/message.tsx'
import { bySeverity, markOf } from '../../state/figures.ts'
import { useJob } from '../../state/session-context.ts'

const MOST = 2

/** The worst checks in one line each: what is the case and what to do. */
export function Alerts() {
  const checks = useJob((state) => state.design?.checks) ?? []
  const pressing = bySeverity(checks).filter((check) => check.status !== 'passes')
  return pressing.slice(0, MOST).map((check) => (
    <Message key={check.id} tone={markOf(check.status) === 'near' ? 'near' : 'fails'}>
      {check.message} {check.remedy}
    </Message>
  ))
}
