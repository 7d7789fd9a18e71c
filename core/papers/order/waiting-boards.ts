import { membersNamed } from '../../checks/index.ts'
import type { Estimate } from '../../estimate-types.ts'
import { type Hold, speaksOf } from './holds.ts'

/** A board from which a member in doubt is sawn: all of it waits. */
export interface WaitingBoard {
  /** of the cutting plan that it belongs to */
  readonly planId: string
  readonly number: number
  readonly stockId: string
  /** off the rack: nothing is bought */
  readonly onHand: boolean
  readonly by: readonly Hold[]
  /** ids of all that is sawn from it */
  readonly members: readonly string[]
}

type Source = Pick<Estimate, 'plans' | 'takeoff' | 'frame' | 'stairs' | 'guard'>

/** Boards that wait for one of some holds, in the order in which they are sawn. */
export function waitingBoards(
  { plans, takeoff }: Pick<Source, 'plans' | 'takeoff'>,
  holds: readonly Hold[],
): readonly WaitingBoard[] {
  const pieces = new Map(takeoff.pieces.map(({ id, memberId }) => [id, memberId]))
  return plans.flatMap(({ plan, onHand }) => {
    const runs = new Map(plan.runPieces.map(({ id, memberId }) => [id, memberId]))
    return plan.boards.flatMap(({ number, stockId, cuts }) => {
      const members = cuts.map(({ pieceId }) => pieces.get(pieceId) ?? runs.get(pieceId) ?? '')
      const by = holds.filter((hold) => members.some((id) => speaksOf(hold, id)))
      return by.length === 0
        ? []
        : [{ planId: plan.jobId, number, stockId, onHand: onHand.includes(stockId), by, members }]
    })
  })
}

/** By their marks, pieces that a hold does not speak of and that are sawn from the boards it holds; empty where none are. */
export function waitingWith(source: Source, { name, doubt }: Hold, boards: readonly WaitingBoard[]): string {
  const ids = boards
    .filter(({ by }) => by.some((hold) => hold.name === name))
    .flatMap(({ members }) => members.filter((id) => !doubt.ids.has(id)))
  const { frame, stairs, guard } = source
  const members = [...frame.members, ...stairs.flatMap((plan) => plan.members), ...(guard?.members ?? [])]
  return membersNamed({ frame: { ...frame, members }, joistIds: ids })
}
