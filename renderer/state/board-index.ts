import type { Board } from '../../core/cutting/index.ts'
import type { Estimate, Planned } from '../../core/estimate-types.ts'

/** Where one piece comes from. */
export interface PieceSource {
  readonly planned: Planned
  readonly board: Board
  readonly pieceId: string
  readonly mark: string
  readonly length: number
}

/** One member's pieces in order along it; several where it is jointed. */
export interface MemberCut {
  readonly sources: readonly (PieceSource & { readonly from: number; readonly to: number })[]
  /** joints of the member: place along it and what it lies over */
  readonly joints: readonly { readonly at: number; readonly label: string }[]
}

export interface BoardIndex {
  readonly byMember: ReadonlyMap<string, MemberCut>
  /** member that a piece belongs to */
  readonly memberOf: ReadonlyMap<string, string>
}

/** Which board each piece of each member comes from, and back. */
export function indexBoards(estimate: Estimate): BoardIndex {
  const sourceOf = new Map<string, PieceSource>()
  for (const planned of estimate.plans) {
    for (const board of planned.plan.boards) {
      for (const cut of board.cuts) {
        sourceOf.set(cut.pieceId, {
          planned,
          board,
          pieceId: cut.pieceId,
          mark: cut.mark,
          length: cut.length,
        })
      }
    }
  }
  const spans = [
    ...estimate.takeoff.pieces.map((piece) => ({
      id: piece.id,
      memberId: piece.memberId,
      from: 0,
      to: piece.length as number,
    })),
    ...estimate.plans.flatMap(({ plan }) =>
      plan.runPieces.map(({ id, memberId, from, to }) => ({
        id,
        memberId,
        from: from as number,
        to: to as number,
      })),
    ),
  ].sort((a, b) => a.from - b.from)
  const jointsOf = Map.groupBy(
    estimate.plans.flatMap(({ plan }) => plan.joints),
    (joint) => joint.memberId,
  )
  const memberOf = new Map(spans.map(({ id, memberId }) => [id, memberId]))
  const byMember = new Map<string, MemberCut>()
  for (const [memberId, parts] of Map.groupBy(spans, (span) => span.memberId)) {
    const sources = parts.flatMap(({ id, from, to }) => {
      const source = sourceOf.get(id)
      return source ? [{ ...source, from, to }] : []
    })
    const joints = (jointsOf.get(memberId) ?? []).map(({ at, label }) => ({ at, label }))
    byMember.set(memberId, { sources, joints })
  }
  return { byMember, memberOf }
}
