import { useId } from 'react'
import type { PaperTable } from '../../../core/papers/index.ts'
import './ground.css'

/** A table as the papers have it, with its title; sentences wrap, figures do not. */
export function GroundTable({ table }: { readonly table: PaperTable }) {
  const id = useId()
  if (table.rows.length === 0) return null
  return (
    <section aria-labelledby={id}>
      <h3 id={id}>{table.title}</h3>
      <div className="scroll-x" role="group" aria-labelledby={id} tabIndex={0}>
        <table className="table ground-table">
          <thead>
            <tr>
              {table.columns.map(({ key, label, align }) => (
                <th key={key} scope="col" className={`is-${align}`}>
                  {label === '' ? <span className="unseen">Remark</span> : label}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {table.rows.map((row, index) => (
              <tr key={index}>
                {table.columns.map(({ key, align }, column) =>
                  column === 0 ? (
                    <th key={key} scope="row" className={`is-${align}`}>
                      {row[key]}
                    </th>
                  ) : (
                    <td key={key} className={`is-${align}`}>
                      {row[key]}
                    </td>
                  ),
                )}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  )
}
