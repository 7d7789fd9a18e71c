import type { CutPlan } from '../cutting/index.ts'
import type { FrameRun } from '../frame/index.ts'
import { inches, type Ticks } from '../units/index.ts'

/** A foot of wood on either side of the joist carries an end each over the nails: common practice, no source. */
export const BEHIND_JOINT = inches(12)

/** of a saw: blocks are no precise pieces */
const KERF = inches(1 / 8)

/** Blocks behind the joints of rims in one plan: two at each, off what is left of its boards as far as that goes. */
export interface JointBlocks {
  readonly joints: number
  readonly wanted: number
  /** that offcuts give */
  readonly found: number
  /** members that are jointed */
  readonly memberIds: readonly string[]
}

export function jointBlocks(runs: readonly FrameRun[], plan: CutPlan): JointBlocks {
  const rims = new Set(runs.filter(({ kind }) => kind === 'rim').map(({ id }) => id))
  const joints = plan.joints.filter(({ runId }) => rims.has(runId))
  const found = plan.boards.reduce((sum, { offcut }) => sum + blocksIn(offcut), 0)
  return {
    joints: joints.length,
    wanted: 2 * joints.length,
    found: Math.min(found, 2 * joints.length),
    memberIds: [...new Set(joints.map(({ memberId }) => memberId))],
  }
}

/** The boards that give the blocks which no offcut gives, of the lengths that the plan orders; null where none are needed. */
export function boardsForBlocks(
  { wanted, found }: JointBlocks,
  { order }: CutPlan,
  onHand: readonly string[],
): { readonly stock: CutPlan['order'][number]; readonly count: number } | null {
  const missing = wanted - found
  if (missing <= 0) return null
  const [cheapest] = order
    .filter(({ stockId, length }) => !onHand.includes(stockId) && blocksIn(length) > 0)
    .map((stock) => ({ stock, count: Math.ceil(missing / blocksIn(stock.length)) }))
    .toSorted((a, b) => a.count * a.stock.price - b.count * b.stock.price || a.stock.length - b.stock.length)
  return cheapest ?? null
}

function blocksIn(length: Ticks): number {
  return Math.floor(length / (BEHIND_JOINT + KERF))
}
