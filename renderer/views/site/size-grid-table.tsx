import { type KeyboardEvent, useMemo, useRef, useState } from 'react'
import { type CompareRow, stepsOf } from '../../../core/compare/index.ts'
import type { Job } from '../../../core/job/index.ts'
import { printLength, printMoney, type Ticks } from '../../../core/units/index.ts'
import { printDollars } from '../../state/print.ts'
import type { SizeGridState } from '../../state/size-grid-actions.ts'
import { shadeOf } from './size-shades.ts'

export type ShownSum = 'per square foot' | 'cost' | 'price'

/** Widths across, depths down; a size is chosen by a click, or by the arrow keys and Enter. */
export function SizeGridTable({
  sizes: { grid, rows },
  running,
  stale,
  size,
  shown,
  onTake,
}: {
  readonly sizes: SizeGridState
  /** more sizes are on their way */
  readonly running: boolean
  readonly stale: boolean
  readonly size: Job['size']
  /** the sum in each cell: of a square foot, or of the whole deck */
  readonly shown: ShownSum
  onTake(row: CompareRow): void
}) {
  const table = useRef<HTMLTableElement>(null)
  const widths = stepsOf(grid.width)
  const depths = stepsOf(grid.depth)
  const found = useMemo(() => new Map(rows.map((row) => [`${row.width} ${row.depth}`, row])), [rows])
  const shade = useMemo(
    () => shadeOf(rows.filter(({ fault }) => fault === null).map((row) => row.perSquareFoot)),
    [rows],
  )
  const own = {
    column: Math.max(0, widths.indexOf(size.width)),
    row: Math.max(0, depths.indexOf(size.depth)),
  }
  const [at, setAt] = useState(own)

  function onKeyDown(event: KeyboardEvent) {
    const [right, down] =
      { ArrowRight: [1, 0], ArrowLeft: [-1, 0], ArrowDown: [0, 1], ArrowUp: [0, -1] }[event.key] ?? []
    if (right === undefined || down === undefined) return
    event.preventDefault()
    const next = {
      column: Math.min(widths.length - 1, Math.max(0, at.column + right)),
      row: Math.min(depths.length - 1, Math.max(0, at.row + down)),
    }
    setAt(next)
    table.current
      ?.querySelectorAll<HTMLButtonElement>('tbody button')
      [next.row * widths.length + next.column]?.focus()
  }

  return (
    <div className="size-grid-room">
      <table className={stale ? 'size-grid is-stale' : 'size-grid'} ref={table} aria-busy={running}>
        <caption className="unseen">Widths across, depths down</caption>
        <thead>
          <tr>
            <th scope="col">
              <span className="unseen">Depth</span>
            </th>
            {widths.map((width) => (
              <th key={width} scope="col">
                {printLength(width)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody onKeyDown={onKeyDown}>
          {depths.map((depth, row) => (
            <tr key={depth}>
              <th scope="row">{printLength(depth)}</th>
              {widths.map((width, column) => (
                <Size
                  key={width}
                  width={width}
                  depth={depth}
                  row={found.get(`${width} ${depth}`) ?? null}
                  shade={shade}
                  shown={shown}
                  isOwn={width === size.width && depth === size.depth}
                  reachable={at.row === row && at.column === column}
                  onFocus={() => setAt({ row, column })}
                  onTake={onTake}
                />
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}

function Size({
  width,
  depth,
  row,
  shade,
  shown,
  isOwn,
  reachable,
  onFocus,
  onTake,
}: {
  readonly width: Ticks
  readonly depth: Ticks
  readonly row: CompareRow | null
  readonly shade: (amount: number) => number
  readonly shown: ShownSum
  readonly isOwn: boolean
  readonly reachable: boolean
  onFocus(): void
  onTake(row: CompareRow): void
}) {
  const priced = row !== null && row.fault === null
  const name = `${printLength(width)} by ${printLength(depth)}`
  return (
    <td className={priced ? `shade-${shade(row.perSquareFoot)}` : undefined}>
      <button
        type="button"
        className={isOwn ? 'is-own' : undefined}
        aria-label={`${name}${isOwn ? ', the deck’s size' : ''}: ${wordsOf(row)}`}
        title={`${name}: ${wordsOf(row)}`}
        aria-disabled={!priced}
        tabIndex={reachable ? 0 : -1}
        onFocus={onFocus}
        onClick={() => {
          if (priced) onTake(row)
        }}
      >
        {row === null ? '' : row.fault !== null ? '–' : sumWords(row, shown)}
        {priced && <i aria-hidden="true">{row.failing > 0 ? '▲' : row.fitsStock ? '●' : ''}</i>}
      </button>
    </td>
  )
}

function sumWords(row: CompareRow, shown: ShownSum): string {
  return shown === 'per square foot' ? printMoney(row.perSquareFoot) : printDollars(row[shown])
}

function wordsOf(row: CompareRow | null): string {
  if (row === null) return 'not priced yet'
  if (row.fault !== null) return row.fault
  const words = [`${printMoney(row.perSquareFoot)} per square foot`, `${printDollars(row.cost)} cost`]
  if (row.fitsStock) words.push('whole from stock')
  else words.push(`${row.joints} joints`)
  if (row.failing > 0) words.push(`${row.failing} checks fail`)
  return words.join(', ')
}
