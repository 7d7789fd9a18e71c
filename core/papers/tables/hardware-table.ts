import type { Estimate } from '../../estimate-types.ts'
import { type Line, type LineGroup, labelOfLine } from '../../pricing/index.ts'
import { printMoney } from '../../units/index.ts'
import type { PaperTable } from '../types.ts'
import { jointGoods } from './joint-goods.ts'
import { orderNote } from './order-notes.ts'
import { quantity, tableOf } from './table.ts'

const groups: readonly LineGroup[] = ['hardware', 'fasteners', 'concrete', 'other material', 'joints']

/**
 * Goods that are bought by count, box, bag or roll: what is needed, what is bought in whole packs, what is left. What
 * joints take is among them: whatever is costed is ordered.
 * @param wanted lines of one supplier; all where absent
 */
export function hardwareTable(
  estimate: Pick<Estimate, 'pricing' | 'takeoff' | 'frame' | 'job'>,
  wanted: ReadonlySet<string> | null = null,
): PaperTable {
  const { pricing, takeoff } = estimate
  const needed = new Map(takeoff.goods.map((good) => [good.id, good.thousandths]))
  const lines = (pricing?.lines ?? []).filter(
    ({ id, group, part }) =>
      part === 'material' && groups.includes(group) && (wanted === null || wanted.has(id)),
  )
  return tableOf(
    'hardware',
    'Hardware, fasteners and concrete',
    [
      ['code', 'Code', 'left'],
      ['label', 'Goods', 'left'],
      ['needed', 'Needed', 'right'],
      ['bought', 'Bought', 'right'],
      ['unit', 'Unit', 'left'],
      ['over', 'Left over', 'right'],
      ['amount', 'Amount', 'right'],
    ],
    lines.map((line) => {
      const joints = jointGoods(line)
      if (joints !== null) {
        const count = quantity(joints.thousandths)
        return {
          // a joint's own name in the price book is no code that a yard knows
          code: line.code.startsWith('joint-') ? '' : line.code,
          label: joints.label,
          needed: count,
          bought: count,
          unit: joints.unit,
          over: '',
          amount: printMoney(line.amount),
        }
      }
      const need = neededOf(line, needed)
      return {
        code: line.code,
        label: `${labelOfLine(line)}${toAsk(line)}${orderNote(line.cause.ids, estimate)}`,
        needed: quantity(need),
        bought: quantity(line.thousandths),
        unit: line.unit,
        over: leftOver(line.thousandths - need),
        amount: printMoney(line.amount),
      }
    }),
  )
}

/** In thousandths; a joint takes what is counted for it, and none is left. */
function neededOf({ cause, group, thousandths }: Line, needed: ReadonlyMap<string, number>): number {
  return group === 'joints' ? thousandths : cause.ids.reduce((sum, id) => sum + (needed.get(id) ?? 0), 0)
}

/** Goods stated by hand may be fewer than are needed. */
function leftOver(thousandths: number): string {
  if (thousandths === 0) return ''
  return thousandths > 0 ? quantity(thousandths) : `${quantity(-thousandths)} short`
}

/** A hanger for the two plies of a hip: no table covers its joint at the house. */
function toAsk({ code, id }: Line): string {
  return /joist-hanger-double-skewed/.test(`${id} ${code}`) ? ' (ask the designer before it is ordered)' : ''
}
