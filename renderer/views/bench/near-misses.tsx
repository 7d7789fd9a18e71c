import { findField } from '../../../core/job/index.ts'
import { printLength } from '../../../core/units/index.ts'
import { Message } from '../../parts/message.tsx'
import { useJob, useSession } from '../../state/session-context.ts'

/** Sizes just above a stock length: what they cost, and the change that would drop them. */
export function NearMisses() {
  const session = useSession()
  const misses = useJob((state) => state.estimate?.nearMisses) ?? []
  return misses.map((miss) => {
    const { suggestion } = miss
    const label = suggestion ? findField(suggestion.field)?.label : undefined
    const action = suggestion &&
      label && {
        label: `${label} ${printLength(suggestion.value)}`,
        run: () =>
          session.state(
            suggestion.field,
            printLength(suggestion.value),
            `${label} ${printLength(suggestion.value)}`,
          ),
      }
    return (
      <Message key={`${miss.subject} ${miss.length}`} tone="near" {...(action ? { action } : {})}>
        {miss.message}
      </Message>
    )
  })
}
