import { faultWords, type RowFault } from '../../core/cut-list/index.ts'
import './columns-preview.css'

/** Faults told one by one; a list of another kind than it seems has one in every row. */
const TOLD = 12

/** What is wrong with a list, each with its row and column. */
export function ListFaults({ id, faults }: { readonly id?: string; readonly faults: readonly RowFault[] }) {
  return (
    <div id={id} role="status">
      <ul className="list-faults">
        {faults.slice(0, TOLD).map((fault) => (
          <li key={`${fault.row} ${fault.column} ${fault.message}`}>
            <span aria-hidden="true">▲</span> {faultWords(fault)}.
          </li>
        ))}
        {faults.length > TOLD && <li>And {faults.length - TOLD} more.</li>}
      </ul>
    </div>
  )
}
