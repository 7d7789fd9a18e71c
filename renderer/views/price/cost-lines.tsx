import { useMemo, useRef } from 'react'
import type { Line, LineGroup } from '../../../core/pricing/index.ts'
import { printMoney, sumCents } from '../../../core/units/index.ts'
import { type Grid, useGrid } from '../../parts/use-grid.ts'
import { capital } from '../../state/things.ts'
import { WhyButton } from '../sill/why-button.tsx'
import { today } from '../today.ts'
import { FigureCell } from './figure-cell.tsx'
import { type LineFigure, printFigure } from './line-values.ts'
import { isOldOn, sourceWords } from './source-words.ts'
import { useBlocks } from './use-blocks.ts'
import { type StatedLines, useStatedLines } from './use-stated-lines.ts'
import './cost-lines.css'

const GROUPS: readonly LineGroup[] = [
  'lumber',
  'decking',
  'spares',
  'joints',
  'hardware',
  'fasteners',
  'concrete',
  'other material',
  'labour',
  'other',
]
const HEADINGS = ['Item', 'Quantity', 'Each', 'Amount'] as const
const COLUMNS = HEADINGS.length + 1
/** Place of the first figure that can be stated. */
const QUANTITY = 1

/** Every line of the cost by group; quantities and prices can be stated by hand, each as one step. */
export function CostLines({ lines }: { readonly lines: readonly Line[] }) {
  const table = useRef<HTMLTableElement>(null)
  const stated = useStatedLines()
  const ordered = useMemo(
    () => GROUPS.flatMap((group) => lines.filter((line) => line.group === group)),
    [lines],
  )
  const grid = useGrid(
    table,
    ordered.map(({ id }) => id),
    COLUMNS,
    QUANTITY,
  )
  useBlocks(table, ordered, stated)
  return (
    <>
      <p id="cost-lines-keys" className="soft cost-lines-hint">
        A quantity or a price can be stated by hand: choose it and type. Delete, or ↺, puts the computed one
        back.
      </p>
      <table
        ref={table}
        role="grid"
        className="table price-table entries"
        aria-describedby="cost-lines-keys"
        onKeyDown={grid.onKeyDown}
      >
        <caption className="unseen">Lines of the cost by group</caption>
        <thead>
          <tr>
            {HEADINGS.map((heading) => (
              <th key={heading} scope="col">
                {heading}
              </th>
            ))}
            <th scope="col">
              <span className="unseen">Why</span>
            </th>
          </tr>
        </thead>
        {GROUPS.map((group) => (
          <GroupRows
            key={group}
            group={group}
            lines={ordered.filter((line) => line.group === group)}
            grid={grid}
            stated={stated}
          />
        ))}
      </table>
    </>
  )
}

function GroupRows({
  group,
  lines,
  grid,
  stated,
}: {
  readonly group: LineGroup
  readonly lines: readonly Line[]
  readonly grid: Grid
  readonly stated: StatedLines
}) {
  if (lines.length === 0) return null
  return (
    <tbody>
      <tr className="price-group">
        <th scope="rowgroup" colSpan={3}>
          {capital(group)}
        </th>
        <td>{printMoney(sumCents(lines.map((line) => line.amount)))}</td>
        <td />
      </tr>
      {lines.map((line) => (
        <LineRow key={line.id} line={line} grid={grid} stated={stated} />
      ))}
    </tbody>
  )
}

function LineRow({
  line,
  grid,
  stated,
}: {
  readonly line: Line
  readonly grid: Grid
  readonly stated: StatedLines
}) {
  const { id, label, code, amount, source } = line
  const figure = (name: LineFigure, column: number) => (
    <FigureCell
      line={line}
      figure={name}
      stated={stated.lines?.get(id)?.[name] ?? null}
      locked={stated.lines === null}
      cell={grid.cell(id, column)}
      onState={(value) => stated.state([{ line: id, [name]: value }], stepName(label, name, value))}
      onLeave={() => grid.focus({ row: id, column })}
    />
  )
  return (
    <tr>
      <td {...grid.cell(id, 0)}>
        {label.replace(/ ft$/, '\u00a0ft')} {code !== '' && <span className="soft price-code">{code}</span>}
        {source !== undefined && (
          <span className="soft price-source">
            {isOldOn(today(), source) && '◐ old, '}
            {sourceWords(source)}
          </span>
        )}
      </td>
      {figure('thousandths', QUANTITY)}
      {figure('price', QUANTITY + 1)}
      <td {...grid.cell(id, QUANTITY + 2)}>{printMoney(amount)}</td>
      <td>
        <WhyButton id={id} of={label} cell={grid.cell(id, COLUMNS - 1)} />
      </td>
    </tr>
  )
}

function stepName(label: string, figure: LineFigure, value: number | null): string {
  const name = `${label}: ${figure === 'price' ? 'price' : 'quantity'}`
  return value === null ? `${name} as computed` : `${name} ${printFigure(figure, value)}`
}
