import type { AuditFault, CutJob, CutPlan } from '../types.ts'

/** Every fixed piece and every piece of a run is cut exactly once, at its length and with its mark. */
export function auditPieces(job: CutJob, plan: CutPlan): AuditFault[] {
  const faults: AuditFault[] = []
  const wanted = new Map<string, { mark: string; length: number; wild: number; cut: number }>()
  for (const piece of [...job.pieces, ...plan.runPieces]) {
    if (wanted.has(piece.id)) {
      faults.push({
        rule: 'piece named twice',
        where: piece.mark,
        message: `Two pieces carry the id ${piece.id}.`,
      })
    }
    const wild = piece.wild ?? 0
    if (wild < 0 || wild >= piece.length) {
      const message = `${wild} are to be cut off in place of ${piece.length}.`
      faults.push({ rule: 'cut in place', where: piece.mark, message })
    }
    wanted.set(piece.id, { mark: piece.mark, length: piece.length, wild, cut: 0 })
  }
  for (const board of plan.boards) {
    for (const cut of board.cuts) {
      const piece = wanted.get(cut.pieceId)
      const where = `board ${board.number}`
      if (piece === undefined) {
        faults.push({ rule: 'unknown piece', where, message: `${cut.mark} is cut, but nobody asked for it.` })
        continue
      }
      piece.cut++
      if (cut.length !== piece.length) {
        faults.push({
          rule: 'wrong length',
          where,
          message: `${cut.mark} is cut to ${cut.length} where ${piece.length} is wanted.`,
        })
      }
      if ((cut.wild ?? 0) !== piece.wild) {
        const message = `${cut.mark} loses ${piece.wild} in place, not ${cut.wild ?? 0}.`
        faults.push({ rule: 'cut in place', where, message })
      }
      if (cut.mark !== piece.mark) {
        faults.push({
          rule: 'wrong mark',
          where,
          message: `${cut.mark} should carry the mark ${piece.mark}.`,
        })
      }
    }
  }
  for (const piece of wanted.values()) {
    if (piece.cut === 0)
      faults.push({
        rule: 'missing piece',
        where: piece.mark,
        message: `${piece.mark} is cut from no board.`,
      })
    if (piece.cut > 1) {
      faults.push({
        rule: 'piece twice',
        where: piece.mark,
        message: `${piece.mark} is cut ${piece.cut} times.`,
      })
    }
  }
  return faults
}
