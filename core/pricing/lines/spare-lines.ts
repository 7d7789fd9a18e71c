import type { Spares } from '../../cutting/index.ts'
import { printShare, toFeet } from '../../units/index.ts'
import { productKey, productName } from '../product-name.ts'
import type { Line } from '../types.ts'
import { countLine } from './line.ts'
import type { PlannedClass } from './lumber-lines.ts'

/** One line per product and length of spare board. */
export function spareLines(spares: Spares | null, plans: readonly PlannedClass[]): readonly Line[] {
  return (spares?.lines ?? []).flatMap(({ classId, stockId, length, count, price }) => {
    const planned = plans.find((one) => productKey(one.product) === classId)
    if (planned === undefined || spares === null) return []
    return [
      countLine(
        {
          id: `spare-${stockId}`,
          group: 'spares',
          label: `Spare ${productName(planned.product)}, ${toFeet(length)} ft`,
          code: planned.codes?.[stockId] ?? stockId,
          unit: 'each',
          part: 'material',
          cause: {
            fields: ['cutting.unusableShare', 'cutting.finishProbability'],
            ids: [],
            rule: `no second trip ${printShare(spares.probability)} of the time; ${printShare(spares.without)} without spares`,
          },
        },
        count,
        price,
      ),
    ]
  })
}
