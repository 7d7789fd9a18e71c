import type { Design } from '../../estimate-types.ts'
import type { Member } from '../../frame/index.ts'
import { printLength } from '../../units/index.ts'
import type { PaperTable } from '../types.ts'
import { tableOf } from './table.ts'

/** Every member by its marks: neighbours of one role, size and length stand in one row. */
export function memberSchedule({
  frame,
  stairs,
  guard,
}: Pick<Design, 'frame' | 'stairs' | 'guard'>): PaperTable {
  const groups: Member[][] = []
  for (const member of [
    ...frame.members,
    ...stairs.flatMap(({ members }) => members),
    ...(guard?.members ?? []),
  ]) {
    const group = groups.at(-1)
    if (group?.[0] !== undefined && alike(group[0], member) && rangesOf([...group, member]).length <= RANGES)
      group.push(member)
    else groups.push([member])
  }
  return tableOf(
    'members',
    'Member schedule',
    [
      ['marks', 'Marks', 'left'],
      ['role', 'Member', 'left'],
      ['size', 'Size', 'left'],
      ['count', 'Count', 'right'],
      ['length', 'Length, as laid', 'right'],
      ['rip', 'Ripped to', 'right'],
    ],
    groups.map((group) => ({
      marks: marksOf(group),
      role: group[0]?.role ?? '',
      size: group[0]?.product.size ?? '',
      count: `${group.length}`,
      length: group[0] === undefined ? '' : printLength(group[0].length),
      rip: group[0]?.ripTo == null ? '' : printLength(group[0].ripTo),
    })),
  )
}

function alike(a: Member, b: Member): boolean {
  return (
    a.role === b.role && a.product.size === b.product.size && a.length === b.length && a.ripTo === b.ripTo
  )
}

/** Marks of one row: longer rows would keep the table from standing in columns. */
const RANGES = 2

function marksOf(group: readonly Member[]): string {
  return rangesOf(group)
    .map(({ from, to }) => (from === to ? from : `${from} to ${to}`))
    .join(', ')
}

/** A range ends where the numbers before the last do not go on one by one under the same stem, such as J1 to J3. */
function rangesOf(group: readonly Member[]): readonly { readonly from: string; readonly to: string }[] {
  const ranges: { readonly from: string; to: string }[] = []
  for (const { mark } of group) {
    const range = ranges.at(-1)
    if (range !== undefined && isNext(range.to, mark)) range.to = mark
    else ranges.push({ from: mark, to: mark })
  }
  return ranges
}

/** J2 after J1; B1b after B1a; T1-1b after T1-1a and T1-2a after T1-1b. */
function isNext(before: string, mark: string): boolean {
  const [a, b] = [partsOf(before), partsOf(mark)]
  if (a === null || b === null || a.stem !== b.stem) return false
  if (b.number === a.number) return a.letter !== 0 && b.letter === a.letter + 1
  if (b.number !== a.number + 1) return false
  return a.letter === 0 ? b.letter === 0 : a.letter > 1 && b.letter === 1
}

/** A mark's last number, what stands before it, and the place in the alphabet of a small letter behind it, 0 for none. */
function partsOf(
  mark: string,
): { readonly stem: string; readonly number: number; readonly letter: number } | null {
  const [, stem, number, letter] = /^(.*?)(\d+)([a-z]?)$/.exec(mark) ?? []
  if (stem === undefined || number === undefined) return null
  return { stem, number: Number(number), letter: letter ? letter.charCodeAt(0) - 96 : 0 }
}
