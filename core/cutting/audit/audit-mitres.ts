import type { AuditFault, Board, CutJob, CutPlan, Mitres } from '../types.ts'

/** A cut line of a board, by where it meets the near and the far edge. */
interface Line {
  readonly near: number
  readonly far: number
  /** what the saw takes along the board */
  readonly kerf: number
}

const ROUNDING = 1e-6

function slantOf(mitres: Mitres | undefined, end: 0 | 1): number {
  return (mitres?.across ?? 0) * Math.tan(((mitres?.ends[end] ?? 0) / 18_000) * Math.PI)
}

/** Kerf along the board of a cut at one end of a piece, in parts of a tick. */
export function kerfAcross(kerf: number, mitres: Mitres | undefined, end: 0 | 1): number {
  return kerf / Math.cos(((mitres?.ends[end] ?? 0) / 18_000) * Math.PI)
}

function linesOf({ from, to, mitres }: Board['cuts'][number], kerf: number): { left: Line; right: Line } {
  const [left, right] = [slantOf(mitres, 0), slantOf(mitres, 1)]
  return {
    left: {
      near: from - Math.min(0, left),
      far: from + Math.max(0, left),
      kerf: kerfAcross(kerf, mitres, 0),
    },
    right: { near: to - Math.max(0, right), far: to + Math.min(0, right), kerf: kerfAcross(kerf, mitres, 1) },
  }
}

/** Pieces as they lie on a board seen from above: between any two there is room for the saw on both edges. */
export function auditShapes(board: Board, kerf: number, where: string): AuditFault[] {
  const faults: AuditFault[] = []
  const shapes = board.cuts.map((cut) => ({ cut, ...linesOf(cut, kerf) }))
  shapes.forEach(({ cut, left }, index) => {
    for (const { cut: before, right } of shapes.slice(0, index)) {
      const room = Math.min(left.near - right.near, left.far - right.far)
      const needed = Math.max(left.kerf, right.kerf)
      if (room < needed - ROUNDING) {
        const message = `Between ${before.mark} and ${cut.mark} there are ${room.toFixed(2)}; the saw takes ${needed.toFixed(2)}.`
        faults.push({ rule: 'kerf', where, message })
      }
    }
  })
  return faults
}

/** Every cut, and every piece of a run, slants as the job says. */
export function auditSlants(job: CutJob, plan: CutPlan): AuditFault[] {
  const wanted = new Map<string, string>()
  for (const piece of job.pieces) wanted.set(piece.id, slantsOf(piece.mitres))
  for (const piece of plan.runPieces) {
    const run = job.runs.find(({ id }) => id === piece.runId)
    const rule = run?.mitres
    if (rule === undefined) {
      wanted.set(piece.id, slantsOf(undefined))
      continue
    }
    const left = piece.from === 0 ? rule.ends[0] : rule.joint
    const atEnd = run?.wild === undefined ? rule.ends[1] : 0
    const right = piece.to === run?.length ? atEnd : rule.joint
    wanted.set(piece.id, slantsOf({ across: rule.across, ends: [left, right] }))
  }
  const cuts = plan.boards.flatMap(({ number, cuts: own }) =>
    own.map(({ pieceId, mark, mitres, turned }) => {
      const [left, right] = mitres?.ends ?? [0, 0]
      const inTheDeck =
        mitres === undefined || turned === undefined ? mitres : { ...mitres, ends: [right, left] }
      return {
        where: `board ${number}`,
        id: pieceId,
        mark,
        slants: slantsOf(inTheDeck as Mitres | undefined),
      }
    }),
  )
  const pieces = plan.runPieces.map(({ id, mark, mitres, runId }) => ({
    where: runId,
    id,
    mark,
    slants: slantsOf(mitres),
  }))
  return [...pieces, ...cuts].flatMap(({ where, id, mark, slants }) => {
    const real = wanted.get(id)
    if (real === undefined || real === slants) return []
    return [{ rule: 'mitre', where, message: `${mark} is to be ${real}, not ${slants}.` }]
  })
}

function slantsOf(mitres: Mitres | undefined): string {
  if (mitres === undefined || mitres.ends.every((end) => end === 0)) return 'square'
  return `cut ${mitres.ends.join(' and ')} over ${mitres.across}`
}
