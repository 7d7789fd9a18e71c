import type { FrameRun } from '../../frame/index.ts'
import { printLength, toFeet } from '../../units/index.ts'
import { BEHIND_JOINT, boardsForBlocks, jointBlocks } from '../joint-blocks.ts'
import { productName } from '../product-name.ts'
import type { Line } from '../types.ts'
import { countLine } from './line.ts'
import type { PlannedClass } from './lumber-lines.ts'

/** Boards for the blocks behind joints of rims that no offcut gives, by the length that is cheapest. */
export function blockLines(runs: readonly FrameRun[], plans: readonly PlannedClass[]): readonly Line[] {
  return plans.flatMap(({ product, plan, onHand, codes = {} }) => {
    const blocks = jointBlocks(runs, plan)
    const bought = boardsForBlocks(blocks, plan, onHand)
    if (bought === null) return []
    const { stock, count } = bought
    return [
      countLine(
        {
          id: `blocks-${stock.stockId}`,
          group: 'lumber',
          label: `${productName(product)}, ${toFeet(stock.length)} ft, for blocks behind rim joints`,
          code: codes[stock.stockId] ?? stock.stockId,
          unit: 'each',
          part: 'material',
          cause: {
            fields: [],
            ids: blocks.memberIds,
            rule: `${blocks.wanted} blocks of ${printLength(BEHIND_JOINT)} behind ${blocks.joints} ${blocks.joints === 1 ? 'joint' : 'joints'}, ${blocks.found} of them off offcuts (common practice, no source)`,
          },
        },
        count,
        stock.price,
      ),
    ]
  })
}
