import type { Member } from '../../../../core/frame/index.ts'
import { productName } from '../../../../core/pricing/index.ts'
import { printLength, ticks } from '../../../../core/units/index.ts'
import { empty, formula, inchesOf, number, text } from '../cell.ts'
import { type Sheet, SheetBuilder } from '../sheet.ts'
import type { Source } from '../source.ts'

/** Every member at its finished length, like ones together, then the posts where they stand. */
export function membersSheet({ estimate }: Source): Sheet {
  const sheet = new SheetBuilder('Members', [14, 52, 36, 8, 14, 12, 14], true)
  sheet.title('Member schedule')
  sheet.note(
    'Finished lengths. Members that are jointed are given whole; their pieces stand in the cutting plan.',
  )
  sheet.gap()
  sheet.header(['Member', 'Marks', 'Lumber', '>Count', '>Length', '>Inches', '>All, feet'])
  const first = sheet.next
  for (const like of alike(membersOf(estimate))) {
    const [member] = like
    if (member === undefined) continue
    const row = sheet.next
    const rip = member.ripTo === null ? '' : `, ripped to ${printLength(member.ripTo)}`
    sheet.row([
      text(member.role),
      text(marksOf(like), { wrap: true }),
      text(`${productName(member.product)}${rip}`, { wrap: true }),
      number(like.length, 'count'),
      text(printLength(member.length), { right: true }),
      number(inchesOf(member.length), 'inches'),
      formula(`D${row}*F${row}/12`, (like.length * inchesOf(member.length)) / 12, 'fixed'),
    ])
  }
  const count = membersOf(estimate).length
  const feet = membersOf(estimate).reduce((sum, member) => sum + inchesOf(member.length), 0) / 12
  sheet.row([
    text('All', { bold: true, rule: 'thin' }),
    empty,
    empty,
    formula(`SUM(D${first}:D${sheet.next - 1})`, count, 'count', { bold: true }),
    empty,
    empty,
    formula(`SUM(G${first}:G${sheet.next - 1})`, feet, 'fixed', { bold: true }),
  ])
  writePosts(sheet, estimate)
  return sheet.done()
}

function writePosts(sheet: SheetBuilder, { frame }: Source['estimate']): void {
  sheet.gap()
  sheet.heading('Posts')
  sheet.note(
    'Places are to the post’s centre, from the deck’s left corner at the wall. Measure each post on its own pier before ' +
      'it is cut.',
  )
  sheet.header(['Post', 'Place', 'Ground at the post, above the datum', '', '>Length', '>Inches'], false)
  for (const post of frame.posts) {
    sheet.row([
      text(`${post.number}`),
      text(`${printLength(post.x)} along the wall, ${printLength(post.y)} away from it`),
      text(printLength(ticks(Math.round(post.ground)))),
      empty,
      text(printLength(post.length), { right: true }),
      number(inchesOf(post.length), 'inches'),
    ])
  }
}

/** Members of one role, lumber and length, in the order they first come. */
/** Of the deck, its stairs and its guard. */
function membersOf({ frame, stairs, guard }: Source['estimate']): readonly Member[] {
  return [...frame.members, ...stairs.flatMap(({ members }) => members), ...(guard?.members ?? [])]
}

function alike(members: readonly Member[]): readonly (readonly Member[])[] {
  const groups = new Map<string, Member[]>()
  for (const member of members) {
    const key = [member.role, productName(member.product), member.length, member.ripTo].join('|')
    const group = groups.get(key)
    if (group === undefined) groups.set(key, [member])
    else group.push(member)
  }
  return [...groups.values()]
}

/** J1, J2, J3, J5 as J1–J3, J5. */
function marksOf(members: readonly Member[]): string {
  const runs: { first: string; last: string; stem: string; end: number }[] = []
  for (const { mark } of members) {
    const [, stem = mark, digits = ''] = /^(.*?)(\d+)$/.exec(mark) ?? []
    const number = digits === '' ? Number.NaN : Number(digits)
    const before = runs.at(-1)
    if (before !== undefined && before.stem === stem && number === before.end + 1) {
      before.last = mark
      before.end = number
    } else runs.push({ first: mark, last: mark, stem, end: number })
  }
  return runs.map(({ first, last }) => (first === last ? first : `${first} to ${last}`)).join(', ')
}
