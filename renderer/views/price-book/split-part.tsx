import { suppliersTable } from '../../../core/papers/index.ts'
import { splitWords } from '../../../core/split-words.ts'
import { useJob } from '../../state/session-context.ts'

/** From whom the open job is bought, each delivery counted, and what it would be from one supplier alone. */
export function SplitPart() {
  const split = useJob((state) => state.estimate?.split ?? null)
  const fresh = useJob((state) => state.estimateEdit === state.edit)
  const name = useJob((state) => state.design?.job.name ?? '')
  if (split === null) return null
  const { columns, rows } = suppliersTable(split)
  return (
    <section className={fresh ? 'group' : 'group is-stale'} aria-labelledby="split-title">
      <h2 id="split-title">Suppliers of {name === '' ? 'this job' : name}</h2>
      <div className="scroll-x" role="group" aria-label="Suppliers of the job" tabIndex={0}>
        <table className="table">
          <caption className="unseen">Who brings what</caption>
          <thead>
            <tr>
              {columns.map(({ key, label }) => (
                <th key={key} scope="col">
                  {label}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <tr key={row.supplier}>
                {columns.map(({ key }) => (
                  <td key={key}>{row[key]}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {splitWords(split).map((words) => (
        <p key={words}>{words}</p>
      ))}
    </section>
  )
}
