import type { Carrier } from '../../frame/index.ts'
import { printLength, type Ticks } from '../../units/index.ts'
import type { PaperTable } from '../types.ts'

/** One row for each joist with its line on every carrier that it meets, from the carrier's own hooked end. */
export function markingTable(carriers: readonly Carrier[]): PaperTable {
  const members = new Map<string, { readonly mark: string; readonly at: Map<string, Ticks> }>()
  let order: readonly string[] = []
  for (const carrier of carriers) {
    for (const { memberId, mark, at } of carrier.marks) {
      const row = members.get(memberId) ?? { mark, at: new Map<string, Ticks>() }
      row.at.set(carrier.id, at)
      members.set(memberId, row)
    }
    order = merged(
      order,
      carrier.marks.map(({ memberId }) => memberId),
    )
  }
  const rows = order.flatMap((id) => members.get(id) ?? [])
  return {
    id: 'marking',
    title: 'Every line by its figure',
    columns: [
      { key: 'mark', label: 'Joist', align: 'left' },
      ...carriers.map(({ id, label, from, hookedAt }) => ({
        key: id,
        label: `${label}, from its ${hookedAt === undefined ? from : `${hookedAt === 'house' ? 'house' : 'rim'}`} end`,
        align: 'right' as const,
      })),
    ],
    rows: rows.map(({ mark, at }) => ({
      mark,
      ...Object.fromEntries([...at].map(([id, length]) => [id, printLength(length)])),
    })),
  }
}

/** The same in tables of joists that meet the same carriers, so that no table is mostly empty. */
export function markingTables(carriers: readonly Carrier[]): readonly PaperTable[] {
  const { columns, rows, ...named } = markingTable(carriers)
  const groups: { keys: ReadonlySet<string>; readonly rows: PaperTable['rows'][number][] }[] = []
  for (const row of rows) {
    const keys = new Set(Object.keys(row).filter((key) => key !== 'mark'))
    const last = groups.at(-1)
    if (last !== undefined && (isWithin(keys, last.keys) || isWithin(last.keys, keys))) {
      last.keys = new Set([...last.keys, ...keys])
      last.rows.push(row)
    } else {
      groups.push({ keys, rows: [row] })
    }
  }
  return groups.map((group, i) => ({
    ...named,
    id: groups.length === 1 ? named.id : `${named.id}-${i + 1}`,
    title: groups.length === 1 ? named.title : `${named.title}: ${marksOf(group.rows)}`,
    columns: columns.filter(({ key }) => key === 'mark' || group.keys.has(key)),
    rows: group.rows,
  }))
}

function isWithin(some: ReadonlySet<string>, all: ReadonlySet<string>): boolean {
  return [...some].every((key) => all.has(key))
}

function marksOf(rows: PaperTable['rows']): string {
  const marks = rows.flatMap(({ mark }) => mark ?? [])
  return marks.length === 1 ? `${marks[0]}` : `${marks[0]} to ${marks.at(-1)}`
}

/** Two orders as one: what only the second has stands after what it follows there, or before what it goes before. */
function merged(first: readonly string[], second: readonly string[]): readonly string[] {
  const both = [...first]
  second.forEach((id, i) => {
    if (both.includes(id)) return
    const before = both.indexOf(second[i - 1] ?? '')
    const next = second.slice(i + 1).find((later) => both.includes(later))
    const at = before >= 0 ? before + 1 : next === undefined ? both.length : both.indexOf(next)
    both.splice(at, 0, id)
  })
  return both
}

/** Posts and joints along each carrier: bare lines, with no X beside them. */
export function carrierLinesTable(carriers: readonly Carrier[]): PaperTable {
  return {
    id: 'carrier-lines',
    title: 'Posts and joints along them',
    columns: [
      { key: 'carrier', label: 'On', align: 'left' },
      { key: 'what', label: 'Line', align: 'left' },
      { key: 'at', label: 'From the hooked end', align: 'right' },
    ],
    rows: carriers.flatMap(({ label, lines }) =>
      lines.map(({ label: what, at }) => ({
        carrier: label,
        what: what.startsWith('post') ? `centre of ${what}` : what,
        at: printLength(at),
      })),
    ),
  }
}
