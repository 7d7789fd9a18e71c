import { shapeOf, shapeOfCut } from '../mitres/shape.ts'
import type { Board, Cut, CutJob, CutPlan } from '../types.ts'

/** Times that boards are ordered and their pieces named again. */
const ROUNDS = 3

interface Named {
  readonly id: string
  readonly mark: string
  readonly shape: string
  readonly place: string
  /** order of the job's list */
  readonly rank: number
}

/**
 * The same cuts with boards for one place of the deck next to each other: boards of one length stay together, and of
 * them those cut alike; pieces of equal shape go to the boards so that a board serves few places. Pieces of one run
 * belong to one place, and so do fixed pieces whose marks differ in their numbers only.
 */
export function byPlace(job: CutJob, plan: CutPlan): CutPlan {
  const named = new Map(piecesOf(job, plan).map((piece) => [piece.id, piece]))
  let best = plan.boards
  let least = restless(best, named)
  for (let round = 0; round < ROUNDS; round++) {
    const next = renamed(ordered(job, best, named), named)
    const measure = restless(next, named)
    if (measure >= least) break
    best = next
    least = measure
  }
  return { ...plan, boards: best }
}

function piecesOf(job: CutJob, plan: CutPlan): Named[] {
  const fixed = job.pieces.map(({ id, mark, length, mitres }) => ({
    id,
    mark,
    shape: shapeOf(length, mitres),
    place: mark.replace(/[\d-]+$/, ''),
  }))
  const ofRuns = plan.runPieces.map(({ id, mark, length, mitres, runId }) => ({
    id,
    mark,
    shape: shapeOf(length, mitres),
    place: `run ${runId}`,
  }))
  return [...fixed, ...ofRuns].map((piece, rank) => ({ ...piece, rank }))
}

/** Places that boards serve, each counted for each board, and again where the board before does not serve it. */
function restless(boards: readonly Board[], named: ReadonlyMap<string, Named>): number {
  let count = 0
  let before = new Set<string>()
  for (const { cuts } of boards) {
    const places = new Set(cuts.map((cut) => named.get(cut.pieceId)?.place ?? ''))
    for (const place of places) count += before.has(place) ? 1 : 2
    before = places
  }
  return count
}

/** Longest boards first, boards cut alike together, then by the first place that they serve. */
function ordered(job: CutJob, boards: readonly Board[], named: ReadonlyMap<string, Named>): Board[] {
  const stock = new Map(job.stock.map((option, index) => [option.id, index]))
  const kind = ({ stockId, cuts }: Board): string => `${stockId}:${cuts.map(shapeOfCut).join(',')}`
  const first = ({ cuts }: Board): number => Math.min(...cuts.map((cut) => named.get(cut.pieceId)?.rank ?? 0))
  const firstOfKind = new Map<string, number>()
  for (const board of boards)
    firstOfKind.set(
      kind(board),
      Math.min(first(board), firstOfKind.get(kind(board)) ?? Number.POSITIVE_INFINITY),
    )
  return [...boards].sort(
    (a, b) =>
      b.length - a.length ||
      (stock.get(a.stockId) ?? 0) - (stock.get(b.stockId) ?? 0) ||
      (firstOfKind.get(kind(a)) ?? 0) - (firstOfKind.get(kind(b)) ?? 0) ||
      first(a) - first(b),
  )
}

/** Boards numbered in this order; each cut takes the next piece of its shape, one of a place the board serves before others. */
function renamed(boards: readonly Board[], named: ReadonlyMap<string, Named>): Board[] {
  const waiting = new Map<string, Named[]>()
  for (const piece of [...named.values()].sort((a, b) => a.rank - b.rank))
    waiting.set(piece.shape, [...(waiting.get(piece.shape) ?? []), piece])
  return boards.map((board, index) => {
    const places = new Set<string>()
    const cuts = board.cuts.map((cut): Cut => {
      const list = waiting.get(shapeOfCut(cut)) ?? []
      const same = list.findIndex((piece) => places.has(piece.place))
      const [piece] = list.splice(Math.max(0, same), 1)
      if (piece === undefined) throw new RangeError('more pieces are cut than the plan has')
      places.add(piece.place)
      return { ...cut, pieceId: piece.id, mark: piece.mark }
    })
    return { ...board, number: index + 1, cuts }
  })
}
