import type { Fault } from '../../core/job/index.ts'
import { Message } from '../parts/message.tsx'
import { faultSentence } from '../state/field-value.ts'
import { plural } from '../state/print.ts'
import './file-faults.css'

/** Faults told one by one; a file of another kind has one in every line. */
const TOLD = 30

/** What is to be mended in a file that was refused, each with its line and column. */
export function FileFaults({
  lead,
  faults,
}: {
  /** what was refused, and what stays as it was */
  readonly lead: string
  readonly faults: readonly Fault[]
}) {
  return (
    <div role="alert">
      <Message tone="fails">
        {lead} {plural(faults.length, 'thing')} to mend in it:
      </Message>
      <ul className="file-faults">
        {faults.slice(0, TOLD).map((fault) => (
          <li key={`${fault.path} ${fault.line} ${fault.message}`}>
            {fault.line !== undefined && (
              <strong>
                Line {fault.line}, column {fault.column}.{' '}
              </strong>
            )}
            {fault.path !== '' && <code>{fault.path}</code>} {faultSentence(fault)}
          </li>
        ))}
        {faults.length > TOLD && <li>And {faults.length - TOLD} more.</li>}
      </ul>
    </div>
  )
}
