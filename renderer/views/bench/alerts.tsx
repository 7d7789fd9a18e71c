import { Fragment } from 'react'
import { Message } from '../../parts/message.tsx'
import { bySeverity, markOf } from '../../state/figures.ts'
import { useJob } from '../../state/session-context.ts'
import { Remedies } from './remedies.tsx'

const MOST = 2

/** The worst checks in one line each: what is the case and what to do. */
export function Alerts() {
  const checks = useJob((state) => state.design?.checks) ?? []
  const pressing = bySeverity(checks).filter((check) => check.status !== 'passes')
  return pressing.slice(0, MOST).map((check) => {
    const tone = markOf(check.status) === 'near' ? 'near' : 'fails'
    return (
      <Fragment key={check.id}>
        <Message tone={tone}>
          {check.message} {check.remedy}
        </Message>
        {tone === 'fails' && <Remedies check={check} />}
      </Fragment>
    )
  })
}
