import type { CutPlan } from '../../cutting/index.ts'
import type { ProductClass } from '../../frame/index.ts'
import type { Job } from '../../job/index.ts'
import type { Piece } from '../../takeoff/index.ts'
import { printLength, toFeet } from '../../units/index.ts'
import { productName } from '../product-name.ts'
import type { Line } from '../types.ts'
import { countLine } from './line.ts'

/** A product class with the yard's code and its plan. */
export interface PlannedClass {
  readonly product: ProductClass
  readonly code: string
  /** stock ids of offcuts on hand */
  readonly onHand: readonly string[]
  /** the supplier's code of stock whose id is another */
  readonly codes?: { readonly [stockId: string]: string }
  readonly plan: CutPlan
}

/** One line per product and stock length, as ordered; each leads to the members that are cut from it. */
export function lumberLines(
  job: Job,
  pieces: readonly Piece[],
  plans: readonly PlannedClass[],
): readonly Line[] {
  const memberOfPiece = new Map(pieces.map((piece) => [piece.id, piece.memberId]))
  return plans.flatMap(({ product, plan, onHand, codes = {} }) => {
    const memberOfRunPiece = new Map(plan.runPieces.map((piece) => [piece.id, piece.memberId]))
    const name = productName(product)
    return plan.order.map((ordered) => {
      const cut = plan.boards
        .filter((board) => board.stockId === ordered.stockId)
        .flatMap((board) => board.cuts)
      const members = cut.map(
        ({ pieceId }) => memberOfPiece.get(pieceId) ?? memberOfRunPiece.get(pieceId) ?? pieceId,
      )
      return countLine(
        {
          id: `lumber-${ordered.stockId}`,
          group: isDecking(job, product) ? 'decking' : 'lumber',
          label: onHand.includes(ordered.stockId)
            ? `${name}, offcut on hand of ${printLength(ordered.length)}`
            : `${name}, ${toFeet(ordered.length)} ft`,
          code: onHand.includes(ordered.stockId) ? '' : (codes[ordered.stockId] ?? ordered.stockId),
          unit: 'each',
          part: 'material',
          cause: { fields: [], ids: [...new Set(members)], rule: `cutting plan of ${name}: ${plan.status}` },
        },
        ordered.count,
        ordered.price,
      )
    })
  })
}

/** Decking and framing of one size are one order, and stand under lumber. */
function isDecking(job: Job, product: ProductClass): boolean {
  const { joists, beams, postSize } = job.frame
  const framed = [joists.size, beams.front.size, beams.rear.size, postSize]
  return product.size === job.decking.size && !framed.includes(product.size)
}
