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
    if (group?.[0] !== undefined && alike(group[0], member)) group.push(member)
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
      ['length', 'Length each, as laid', 'right'],
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

function marksOf(group: readonly Member[]): string {
  const [first, last] = [group[0]?.mark ?? '', group.at(-1)?.mark ?? '']
  return first === last ? first : `${first} to ${last}`
}
