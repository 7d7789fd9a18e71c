import { shapeOfCut } from '../mitres/shape.ts'
import type { Board, CutJob, CutPlan, RunGroup, RunPiece } from '../types.ts'

/**
 * A plan of the rest with names as the crew knows them: members of a run that come out jointed as some member was are
 * that member, and boards cut as some board was meant to be carry its pieces. Only names of like things change places.
 * @param before the plan that was begun
 */
export function keepNames(job: CutJob, before: CutPlan, rest: CutPlan): CutPlan {
  const members = new Map(job.runs.flatMap((run) => [...sameMembers(run, before, rest)]))
  return sameBoards(before, renameMembers(job, rest, members))
}

const jointsOf = (pieces: readonly RunPiece[], runId: string, memberId: string): string =>
  pieces
    .filter((piece) => piece.runId === runId && piece.memberId === memberId && piece.from > 0)
    .map((piece) => piece.from)
    .sort((a, b) => a - b)
    .join(',')

/** For each member of a run the one whose name it gets. */
function sameMembers(run: RunGroup, before: CutPlan, rest: CutPlan): Map<string, string> {
  const free = new Set(run.members.map(({ id }) => id))
  const names = new Map<string, string>()
  const take = (member: string, name: string | undefined): void => {
    if (name === undefined) return
    names.set(member, name)
    free.delete(name)
  }
  const was = new Map(run.members.map(({ id }) => [id, jointsOf(before.runPieces, run.id, id)]))
  const is = new Map(run.members.map(({ id }) => [id, jointsOf(rest.runPieces, run.id, id)]))
  for (const { id } of run.members) if (was.get(id) === is.get(id)) take(id, id)
  for (const { id } of run.members)
    if (!names.has(id))
      take(
        id,
        [...free].find((name) => was.get(name) === is.get(id)),
      )
  for (const { id } of run.members) if (!names.has(id)) take(id, free.has(id) ? id : [...free][0])
  return names
}

function renameMembers(job: CutJob, rest: CutPlan, names: ReadonlyMap<string, string>): CutPlan {
  const markOf = new Map(job.runs.flatMap((run) => run.members.map(({ id, mark }) => [id, mark])))
  const nameOf = (id: string): string => names.get(id) ?? id
  const pieces = new Map<string, RunPiece>()
  for (const piece of rest.runPieces) {
    const name = nameOf(piece.memberId)
    const end = piece.id.slice(piece.memberId.length)
    const mark = `${markOf.get(name) ?? ''}${end.replace('/', '-')}`
    pieces.set(piece.id, { ...piece, id: `${name}${end}`, memberId: name, mark })
  }
  return {
    ...rest,
    runPieces: [...pieces.values()],
    joints: rest.joints.map((joint) => ({ ...joint, memberId: nameOf(joint.memberId) })),
    memberOrder: rest.memberOrder.map((order) => ({ ...order, memberIds: order.memberIds.map(nameOf) })),
    boards: rest.boards.map((board) => ({
      ...board,
      cuts: board.cuts.map((cut) => {
        const piece = pieces.get(cut.pieceId)
        return piece === undefined ? cut : { ...cut, pieceId: piece.id, mark: piece.mark }
      }),
    })),
  }
}

/** Gives each board the pieces of the board of the old plan that it shares most lengths with, each old board once. */
function sameBoards(before: CutPlan, rest: CutPlan): CutPlan {
  const waiting = new Map(rest.boards.flatMap(({ cuts }) => cuts.map((cut) => [cut.pieceId, cut])))
  const old = before.boards.map(({ cuts }) =>
    cuts.filter((cut) => {
      const now = waiting.get(cut.pieceId)
      return now !== undefined && shapeOfCut(now) === shapeOfCut(cut)
    }),
  )
  const partner = partners(rest.boards, old)
  const given = rest.boards.map((board, index) => {
    const own = [...(old[partner[index] ?? -1] ?? [])]
    return board.cuts.map((cut) => {
      const at = own.findIndex(
        (candidate) => shapeOfCut(candidate) === shapeOfCut(cut) && waiting.has(candidate.pieceId),
      )
      const [piece] = at < 0 ? [] : own.splice(at, 1)
      if (piece === undefined) return cut
      waiting.delete(piece.pieceId)
      return { ...cut, pieceId: piece.pieceId, mark: piece.mark, kept: true }
    })
  })
  const left = [...waiting.values()]
  const boards = rest.boards.map((board, index) => ({
    ...board,
    cuts: (given[index] ?? []).map((cut) => {
      if ('kept' in cut) {
        const { kept: _isNamed, ...named } = cut
        return named
      }
      const [piece] = left.splice(
        left.findIndex((candidate) => shapeOfCut(candidate) === shapeOfCut(cut)),
        1,
      )
      return piece === undefined ? cut : { ...cut, pieceId: piece.pieceId, mark: piece.mark }
    }),
  }))
  return { ...rest, boards }
}

/** For each board the index of the old board with most lengths in common, those with most in common first. */
function partners(boards: readonly Board[], old: readonly Board['cuts'][]): (number | undefined)[] {
  const pairs = boards.flatMap((board, index) =>
    old.map((cuts, other) => ({ index, other, shared: inCommon(board.cuts, cuts) })),
  )
  const partner: (number | undefined)[] = boards.map(() => undefined)
  const taken = new Set<number>()
  for (const { index, other, shared } of pairs.sort((a, b) => b.shared - a.shared)) {
    if (shared === 0 || partner[index] !== undefined || taken.has(other)) continue
    partner[index] = other
    taken.add(other)
  }
  return partner
}

function inCommon(some: Board['cuts'], others: Board['cuts']): number {
  const shapes = others.map(shapeOfCut)
  let shared = 0
  for (const cut of some) {
    const at = shapes.indexOf(shapeOfCut(cut))
    if (at < 0) continue
    shapes.splice(at, 1)
    shared++
  }
  return shared
}
