import { boardFeetThousandths } from '../data/index.ts'
import type { Member } from '../frame/index.ts'
import type { BoardFeet } from './types.ts'

/** Board feet by product class: finished lengths, order allowances left out; a ripped board counts whole. */
export function boardFeetOf(members: readonly Member[]): readonly BoardFeet[] {
  const sizes = [...new Set(members.map((member) => member.product.size))]
  return sizes.flatMap((size) => {
    const own = members.filter((member) => member.product.size === size)
    const product = own[0]?.product
    if (product === undefined) return []
    return [
      {
        product,
        thousandths: boardFeetThousandths(
          size,
          own.reduce((sum, member) => sum + member.length, 0),
        ),
      },
    ]
  })
}
