import { useRef } from 'react'
import type { EditFault } from '../../../core/pricing/index.ts'
import { SortHeading } from '../../parts/sort-heading.tsx'
import type { Sorting } from '../../parts/sorting.ts'
import { type Grid, useGrid } from '../../parts/use-grid.ts'
import { useSession } from '../../state/session-context.ts'
import { isOldOn } from '../price/source-words.ts'
import { today } from '../today.ts'
import { useCellClipboard } from '../use-cell-clipboard.ts'
import { bookAsText, readBookBlock } from './book-block.ts'
import { BookCell } from './book-cell.tsx'
import { type BookLine, type BookTable, fieldOf } from './book-table.ts'

/** The row of the headings among the keys of the table. */
const HEADINGS = 'headings'

/** One part of the price book as a table with a single Tab stop, each cell that is the user's typed over in place. */
export function BookGrid({
  name,
  table: { columns },
  lines,
  chosen,
  sorting,
  onSort,
  onChoose,
}: {
  readonly name: string
  readonly table: BookTable
  readonly lines: readonly BookLine[]
  readonly chosen: string | null
  readonly sorting: Sorting
  onSort(sorting: Sorting): void
  /** the line in which one stands, for what is added beside it */
  onChoose(line: BookLine): void
}) {
  const session = useSession()
  const table = useRef<HTMLTableElement>(null)
  const keys = lines.map(({ key }) => key)
  const first = columns.findIndex(({ field }) => field !== null)
  const grid = useGrid(table, [HEADINGS, ...keys], columns.length + 1, Math.max(0, first), keys[0])
  useBookBlocks(table, columns, lines)

  async function remove(line: BookLine) {
    const faults = await session.editPrices([{ kind: 'remove', row: line.row }])
    const [fault] = faults ?? []
    if (fault !== undefined) session.say(sentence(fault))
    else table.current?.focus()
  }

  return (
    <table
      ref={table}
      role="grid"
      className="table book-table entries"
      aria-describedby="book-keys"
      tabIndex={lines.length === 0 ? undefined : -1}
      onKeyDown={grid.onKeyDown}
    >
      <caption className="unseen">{name}</caption>
      <thead>
        <tr>
          {columns.map(({ heading, figures }, column) => (
            <SortHeading
              key={heading}
              column={column}
              name={heading}
              sorting={sorting}
              className={figures ? 'is-figures' : undefined}
              cell={grid.cell(HEADINGS, column)}
              onSort={onSort}
            />
          ))}
          <th scope="col">
            <span className="unseen">Remove</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {lines.map((line) => (
          <tr key={line.key} aria-selected={line.key === chosen} onFocus={() => onChoose(line)}>
            <Cells line={line} columns={columns} grid={grid} />
            <td>
              {line.removable && (
                <button
                  {...grid.cell(line.key, columns.length)}
                  type="button"
                  className="book-remove"
                  aria-label={`Remove ${line.label}`}
                  title={`Remove ${line.label}`}
                  onClick={() => void remove(line)}
                >
                  ×
                </button>
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}

function Cells({
  line,
  columns,
  grid,
}: {
  readonly line: BookLine
  readonly columns: BookTable['columns']
  readonly grid: Grid
}) {
  const session = useSession()
  return columns.map((column, at) => {
    const field = fieldOf(line, column)
    const text = line.cells[at] ?? ''
    const cell = grid.cell(line.key, at)
    if (field === null)
      return (
        <td key={column.heading} {...cell} className={column.figures ? 'is-figures' : undefined}>
          {text}
        </td>
      )
    const old = field === 'date' && line.source !== null && isOldOn(today(), line.source)
    return (
      <BookCell
        key={column.heading}
        name={`${line.label}: ${column.heading.toLowerCase()}${old ? ', older than 60 days' : ''}`}
        text={text}
        mark={old ? '◐ ' : ''}
        figures={column.figures}
        cell={cell}
        onTake={async (typed) => {
          const faults = await session.editPrices([{ kind: 'set', row: line.row, field, text: typed }])
          if (faults === null) return 'It could not be saved.'
          const [fault] = faults
          return fault === undefined ? null : sentence(fault)
        }}
        onLeave={() => grid.focus({ row: line.key, column: at })}
      />
    )
  })
}

export function sentence({ message, fix }: Pick<EditFault, 'message' | 'fix'>): string {
  return `${message.charAt(0).toUpperCase()}${message.slice(1)}: ${fix}.`
}

/** Copies the lines that are shown, and takes a block of cells; all of it or nothing, as one step. */
function useBookBlocks(
  table: { readonly current: HTMLTableElement | null },
  columns: BookTable['columns'],
  lines: readonly BookLine[],
): void {
  const session = useSession()
  useCellClipboard(table, {
    copied: () => ({ text: bookAsText({ columns }, lines), said: `${lines.length} rows` }),
    async paste(text, row, column) {
      const from = lines.findIndex(({ key }) => key === row)
      if (from < 0) return session.say('Choose the cell where the block begins.')
      const following = lines.slice(from)
      const read = readBookBlock(text, { columns }, following, column)
      if (!read.ok) return session.say(read.error)
      const faults = await session.editPrices(read.value)
      const [fault] = faults ?? []
      if (fault === undefined) return
      const edit = read.value[fault.edit]
      const line = following.find(({ row }) => row === edit?.row)
      session.say(`Nothing was pasted. ${line?.label ?? ''}, “${edit?.text ?? ''}”. ${sentence(fault)}`)
    },
  })
}
