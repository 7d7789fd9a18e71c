import { columnLetters, type SheetRow } from '../../core/cut-list/index.ts'
import './columns-preview.css'

/** The first rows of a list with what each column holds, which can be changed. */
export function ColumnsPreview<Meaning extends string>({
  rows,
  columns,
  meanings,
  caption,
  told,
  more,
  wrong,
  onColumns,
}: {
  readonly rows: readonly SheetRow[]
  /** what each column is taken to hold */
  readonly columns: readonly Meaning[]
  readonly meanings: readonly Meaning[]
  readonly caption: string
  /** false: as found; null: nothing to be told, as the list has several parts */
  readonly told: boolean | null
  readonly more: number
  /** cells with a fault as `row:column`, both counted from 1 */
  readonly wrong: ReadonlySet<string>
  onColumns(columns: readonly Meaning[] | null): void
}) {
  return (
    <div className="scroll-x" role="group" aria-label="First rows of the list" tabIndex={0}>
      <table className="table list-preview entries">
        <caption className="soft">
          {caption}
          {told === true && (
            <button type="button" className="link" onClick={() => onColumns(null)}>
              As found
            </button>
          )}
        </caption>
        <thead>
          <tr>
            <th scope="col">Row</th>
            {columns.map((meaning, index) => {
              const letters = columnLetters(index + 1)
              return (
                <th scope="col" key={letters}>
                  <span>{letters}</span>
                  {told !== null && (
                    <select
                      aria-label={`Column ${letters} holds`}
                      value={meaning}
                      onChange={(event) =>
                        onColumns(
                          columns.map((each, at) => (at === index ? (event.target.value as Meaning) : each)),
                        )
                      }
                    >
                      {meanings.map((each) => (
                        <option key={each} value={each}>
                          {each}
                        </option>
                      ))}
                    </select>
                  )}
                </th>
              )
            })}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.number}>
              <th scope="row">{row.number}</th>
              {columns.map((_, index) => (
                <td
                  key={columnLetters(index + 1)}
                  className={wrong.has(`${row.number}:${index + 1}`) ? 'is-wrong' : undefined}
                >
                  {row.cells[index] ?? ''}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {more > 0 && <p className="soft">and {more} more rows</p>}
    </div>
  )
}
