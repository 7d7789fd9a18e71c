import { nextSorting, type Sorting } from './sorting.ts'
import type { GridCell } from './use-grid.ts'
import './sort-heading.css'

/** The heading of a column that its rows can be sorted by; which way they stand is told with it. */
export function SortHeading({
  column,
  name,
  sorting,
  className,
  cell,
  onSort,
}: {
  readonly column: number
  readonly name: string
  readonly sorting: Sorting
  readonly className: string | undefined
  readonly cell: GridCell
  onSort(sorting: Sorting): void
}) {
  const way = sorting?.column !== column ? 'none' : sorting.down ? 'descending' : 'ascending'
  return (
    <th scope="col" className={className} aria-sort={way}>
      <button
        {...cell}
        type="button"
        className="sort-heading"
        title="Sort by this; again the other way, a third time as it was"
        onClick={() => onSort(nextSorting(sorting, column))}
      >
        {name}
        <span className="sort-way" aria-hidden="true">
          {{ none: '', ascending: '↑', descending: '↓' }[way]}
        </span>
      </button>
    </th>
  )
}
