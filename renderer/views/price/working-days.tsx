import { calendarTable } from '../../../core/papers/index.ts'
import type { CalendarStep } from '../../../core/pricing/index.ts'

/** Working days of the crew by stage, with the inspections and waits between. */
export function WorkingDays({ steps }: { readonly steps: readonly CalendarStep[] }) {
  const { title, columns, rows } = calendarTable(steps)
  const last = steps.at(-1)
  if (last === undefined) return null
  return (
    <section aria-labelledby="working-days">
      <h2 id="working-days">{title}</h2>
      <p className="soft">
        {last.to} working days of 7 hours. How long an inspection takes is common practice, no source: ask
        your building department.
      </p>
      <table className="table">
        <caption className="unseen">{title}</caption>
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
            <tr key={`${row.days} ${row.what}`}>
              {columns.map(({ key }) => (
                <td key={key}>{row[key]}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}
