import { type KeyboardEvent, useMemo, useRef } from 'react'
import type { CostedGroup, CostedLine, Costing } from '../../../../core/costing/index.ts'
import { printMoney } from '../../../../core/units/index.ts'
import { type Grid, useGrid } from '../../../parts/use-grid.ts'
import { withLineState } from '../../../state/costing-entries.ts'
import { printThousandths } from '../../../state/print.ts'
import { useSession } from '../../../state/session-context.ts'
import { capital } from '../../../state/things.ts'
import { differenceWords } from './difference-words.ts'

const HEADINGS = ['Line', 'Estimated', 'So far', 'Difference', 'Still open', 'Done'] as const
const DONE = HEADINGS.length - 1

/** Every line of the estimate beside what it took, by group. Enter on a line writes something down for it. */
export function CostedLines({ costing, onPick }: { readonly costing: Costing; onPick(line: string): void }) {
  const table = useRef<HTMLTableElement>(null)
  const rows = useMemo(
    () => costing.groups.flatMap(({ lines }) => lines.map(({ line }) => line.line)),
    [costing],
  )
  const grid = useGrid(table, rows, HEADINGS.length, 0)

  function onKeyDown(event: KeyboardEvent<HTMLTableElement>) {
    const { target } = event
    const isCell = target instanceof HTMLTableCellElement && target.dataset.row !== undefined
    if (event.key === 'Enter' && isCell) {
      event.preventDefault()
      onPick(target.dataset.row ?? '')
    } else grid.onKeyDown(event)
  }

  return (
    <section aria-labelledby="costed-title">
      <h2 id="costed-title">Line by line</h2>
      <p id="costed-keys" className="soft">
        Enter on a line, or a click on its name, writes something down for it. Done means that nothing more is
        to come, and then nothing of it is open.
      </p>
      <div className="scroll-x" role="group" aria-labelledby="costed-title">
        <table
          ref={table}
          role="grid"
          className="table costed-table"
          aria-describedby="costed-keys"
          onKeyDown={onKeyDown}
        >
          <caption className="unseen">Lines of the estimate and what they took</caption>
          <thead>
            <tr>
              {HEADINGS.map((heading) => (
                <th key={heading} scope="col">
                  {heading}
                </th>
              ))}
            </tr>
          </thead>
          {costing.groups.map((group) => (
            <GroupRows
              key={group.group}
              group={group}
              grid={grid}
              finished={costing.finished}
              onPick={onPick}
            />
          ))}
        </table>
      </div>
    </section>
  )
}

function GroupRows({
  group,
  grid,
  finished,
  onPick,
}: {
  readonly group: CostedGroup
  readonly grid: Grid
  readonly finished: boolean
  onPick(line: string): void
}) {
  return (
    <tbody>
      <tr className="price-group">
        <th scope="rowgroup">{capital(group.group)}</th>
        <td>{printMoney(group.estimated)}</td>
        <td>{printMoney(group.actual)}</td>
        <td>{differenceWords(group.actual, group.estimated)}</td>
        <td>{printMoney(group.open)}</td>
        <td />
      </tr>
      {group.lines.map((costed) => (
        <LineRow key={costed.line.line} costed={costed} grid={grid} finished={finished} onPick={onPick} />
      ))}
    </tbody>
  )
}

function LineRow({
  costed,
  grid,
  finished,
  onPick,
}: {
  readonly costed: CostedLine
  readonly grid: Grid
  readonly finished: boolean
  onPick(line: string): void
}) {
  const session = useSession()
  const { line, planned, estimated, actual, open, openQuantity, worked, bought, done } = costed
  const isWork = line.part === 'labour'
  const unit = isWork ? 'h' : line.unit
  const cell = (column: number) => grid.cell(line.line, column)
  const taken = actual !== 0 || worked !== 0 || (bought ?? 1) !== 0
  return (
    <tr>
      {planned ? (
        <td {...cell(0)} className="costed-name" onClick={() => onPick(line.line)}>
          {line.what}
        </td>
      ) : (
        <td {...cell(0)}>{line.what}</td>
      )}
      <td {...cell(1)}>
        {planned && printMoney(estimated)}
        {planned && (
          <span className="costing-under">
            {printThousandths(isWork ? line.hours : line.thousandths)} {unit}
          </span>
        )}
      </td>
      <td {...cell(2)}>
        {taken && printMoney(actual)}
        {taken && <span className="costing-under">{takenWords(costed, unit)}</span>}
      </td>
      <td {...cell(3)}>{taken && differenceWords(actual, estimated)}</td>
      <td {...cell(4)}>
        {open > 0 || openQuantity > 0 ? printMoney(open) : ''}
        {openQuantity > 0 && taken && (
          <span className="costing-under">
            {printThousandths(openQuantity)} {unit}
          </span>
        )}
      </td>
      <td {...(planned && !finished ? {} : cell(DONE))}>
        {planned && !finished && (
          <button
            type="button"
            className="costed-done"
            aria-pressed={done}
            aria-label={`${line.what}: done`}
            {...cell(DONE)}
            onClick={() =>
              session.changeEntries(
                'lines',
                (states) => withLineState(states, line.line, { done: !done }),
                `${line.what} ${done ? 'not done' : 'done'}`,
              )
            }
          >
            {done ? '✓' : '–'}
          </button>
        )}
      </td>
    </tr>
  )
}

function takenWords({ worked, bought, line }: CostedLine, unit: string): string {
  if (line.part === 'labour') return worked === 0 ? '' : `${printThousandths(worked)} ${unit}`
  return bought === null ? 'sum only' : bought === 0 ? '' : `${printThousandths(bought)} ${unit}`
}
