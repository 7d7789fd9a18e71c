import type { HoursWorked, Purchase } from '../../../../core/job/index.ts'
import { cents, printMoney } from '../../../../core/units/index.ts'
import { PlainTable } from '../../../parts/plain-table.tsx'
import type { NamedLine } from '../../../state/costing-entries.ts'
import { plural, printThousandths } from '../../../state/print.ts'
import { useSession } from '../../../state/session-context.ts'

/** Everything written down in one list, the newest last; each can be changed or taken away, which is undoable. */
export function EntryTable({
  list,
  entries,
  lines,
  onChange,
}: {
  readonly list: 'bought' | 'worked'
  readonly entries: readonly (Purchase | HoursWorked)[]
  readonly lines: readonly NamedLine[]
  onChange(at: number): void
}) {
  const session = useSession()
  if (entries.length === 0) return <p className="soft">Nothing is written down yet.</p>
  const words = new Map(lines.map(({ line, what }) => [line, what]))
  return (
    <details className="costing-entries" open={entries.length <= 8}>
      <summary>{sumWords(entries)}</summary>
      <PlainTable
        label={list === 'bought' ? 'Purchases' : 'Hours'}
        caption={list === 'bought' ? 'Purchases' : 'Hours worked'}
        headings={list === 'bought' ? ['What', 'Quantity', 'Amount'] : ['Task', 'Hours']}
        tools="Change"
      >
        {entries.map((entry, at) => {
          const name = nameOf(entry, words)
          return (
            <tr key={at}>
              <td>
                {name}
                <span className="costing-under">{whence(entry)}</span>
              </td>
              <td>{entry.thousandths === null ? '' : printThousandths(entry.thousandths)}</td>
              {'amount' in entry && <td>{printMoney(entry.amount)}</td>}
              <td className="costing-row-tools">
                <button
                  type="button"
                  className="link"
                  aria-label={`Change ${name}, ${entry.date}`}
                  onClick={() => onChange(at)}
                >
                  Change
                </button>
                <button
                  type="button"
                  className="link"
                  aria-label={`Take away ${name}, ${entry.date}`}
                  onClick={() =>
                    session.changeEntries(
                      list,
                      (kept) => kept.filter((_, index) => index !== at),
                      `${list} ${name}, taken away`,
                    )
                  }
                >
                  Take away
                </button>
              </td>
            </tr>
          )
        })}
      </PlainTable>
    </details>
  )
}

function nameOf({ line, what }: Purchase | HoursWorked, words: ReadonlyMap<string, string>): string {
  const named = words.get(line) ?? line
  return what === '' || named === '' ? what || named : `${named}: ${what}`
}

function whence(entry: Purchase | HoursWorked): string {
  const { date } = entry
  const parts = 'amount' in entry ? [date, entry.supplier, entry.receipt] : [date, entry.who]
  return parts.filter((text) => text !== '').join(', ')
}

function sumWords(entries: readonly (Purchase | HoursWorked)[]): string {
  const money = entries.reduce((sum, entry) => sum + ('amount' in entry ? entry.amount : 0), 0)
  const hours = entries.reduce((sum, entry) => sum + ('amount' in entry ? 0 : entry.thousandths), 0)
  return entries.some((entry) => 'amount' in entry)
    ? `${plural(entries.length, 'purchase')}, ${printMoney(cents(money))}`
    : `${plural(entries.length, 'entry', 'entries')}, ${printThousandths(hours)} worker hours`
}
