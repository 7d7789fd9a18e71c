import type { Estimate } from '../../estimate-types.ts'
import { type Line, type LineGroup, labelOfLine, type PriceBook } from '../../pricing/index.ts'
import { type Cents, printMoney } from '../../units/index.ts'
import { type HeldPart, partOf } from '../order/held-lines.ts'
import type { PaperTable } from '../types.ts'
import { type JointGoods, jointGoods, jointPurchase } from './joint-goods.ts'
import { isToldByPart, orderNote } from './order-notes.ts'
import { holdCell } from './order-table.ts'
import { packsText } from './packs.ts'
import { quantity, tableOf } from './table.ts'

const groups: readonly LineGroup[] = ['hardware', 'fasteners', 'concrete', 'other material', 'joints']

const COLUMNS = [
  ['code', 'Code', 'left'],
  ['label', 'Goods', 'left'],
  ['needed', 'Needed', 'right'],
  ['bought', 'Bought', 'right'],
  ['unit', 'Unit', 'left'],
  ['packs', 'As sold', 'left'],
  ['over', 'Left over', 'right'],
  ['amount', 'Amount', 'right'],
] as const

/** What is held is not bought. */
const WANTED = ['bought', 'Wanted', 'right'] as const

type Source = Pick<Estimate, 'checks' | 'pricing' | 'takeoff' | 'frame' | 'job' | 'guard' | 'stairs'>

/**
 * Goods that are bought by count, box, bag or roll: what is needed, what is bought in whole packs, what is left. What
 * joints take is among them: whatever is costed is ordered.
 * @param wanted lines of one supplier; all where absent
 * @param only what is free to be bought, or what is held; both together where absent
 */
export function hardwareTable(
  estimate: Source,
  goods: PriceBook['goods'],
  wanted: ReadonlySet<string> | null = null,
  only: HeldPart | null = null,
): PaperTable {
  const lines = (estimate.pricing?.lines ?? []).filter(
    ({ id, group, part }) =>
      part === 'material' && groups.includes(group) && (wanted === null || wanted.has(id)),
  )
  const rows = lines.flatMap((line) => {
    const share = only === null ? line : partOf(line, only)
    if (share === null) return []
    const joints = jointGoods(line, estimate)
    const cells =
      joints === null
        ? goodCells(estimate, goods, line, share.thousandths, only)
        : jointCells(estimate, goods, line, joints)
    return [{ ...cells, amount: printMoney(share.amount as Cents), ...holdCell(only, line.id) }]
  })
  return only?.part === 'held'
    ? tableOf(
        'hardware-held',
        'Goods on hold',
        [...COLUMNS.map((column) => (column[0] === 'bought' ? WANTED : column)), ['hold', 'Hold', 'left']],
        rows.map((row) => ({ hold: '', ...row })),
      )
    : tableOf('hardware', 'Hardware, fasteners and concrete', COLUMNS, rows)
}

function goodCells(
  estimate: Source,
  goods: PriceBook['goods'],
  line: Line,
  thousandths: number,
  only: HeldPart | null,
) {
  const { takeoff } = estimate
  const wanted = takeoff.goods.filter(({ id }) => line.cause.ids.includes(id))
  const whole = thousandths === line.thousandths
  const need = whole ? wanted.reduce((sum, good) => sum + good.thousandths, 0) : thousandths
  const note = orderNote(line.cause.ids, estimate, only)
  const good = goods.find(({ sku }) => wanted[0]?.sku === sku)
  return {
    code: line.code,
    label: `${labelOfLine(line)}${note === '' ? '' : ` (${whole || isToldByPart(line.cause.ids) ? '' : `of all ${quantity(line.thousandths)}: `}${note})`}`,
    needed: quantity(need),
    bought: quantity(thousandths),
    unit: line.unit,
    packs: packsText({ ...line, thousandths }, good),
    over: leftOver(thousandths - need),
  }
}

/** What joints take comes out of the packs of the good that it is a part of, where enough is left of those. */
function jointCells(estimate: Source, goods: PriceBook['goods'], line: Line, joints: JointGoods) {
  const count = quantity(joints.thousandths)
  const plain = {
    // a joint's own name in the price book is no code that a yard knows
    code: line.code.startsWith('joint-') ? '' : line.code,
    label: joints.label,
    needed: count,
    bought: count,
    unit: joints.unit,
    packs: '',
    over: '',
  }
  const purchase = jointPurchase(estimate, goods, joints)
  if (purchase === null) return plain
  const { part, good, left, bought } = purchase
  if (good.pack === 1000 && part.unit === 'each') return { ...plain, code: part.code }
  if (bought === 0)
    return {
      ...plain,
      code: part.code,
      bought: '0',
      packs: `out of the ${quantity(left)} left over of ${part.code}`,
    }
  return {
    ...plain,
    code: part.code,
    bought: quantity(bought),
    packs: packsText({ ...part, thousandths: bought }, good),
    over: leftOver(bought - joints.thousandths),
  }
}

/** Goods stated by hand may be fewer than are needed. */
function leftOver(thousandths: number): string {
  if (thousandths === 0) return ''
  return thousandths > 0 ? quantity(thousandths) : `${quantity(-thousandths)} short`
}
