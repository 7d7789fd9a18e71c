import type { AuditFault, Board, CutJob, CutPlan } from '../types.ts'
import { auditShapes, kerfAcross } from './audit-mitres.ts'
import { allowedStock } from './stock-rules.ts'

/** Each board is one the job allows, and its pieces with their kerfs lie between its trims. */
export function auditBoards(job: CutJob, plan: CutPlan): AuditFault[] {
  const faults: AuditFault[] = []
  const allowed = allowedStock(job)
  const cut = new Map<string, number>()
  plan.boards.forEach((board, index) => {
    const where = `board ${board.number}`
    if (board.number !== index + 1) {
      faults.push({
        rule: 'board number',
        where,
        message: `Boards are numbered from 1 in order; this is number ${index + 1}.`,
      })
    }
    cut.set(board.stockId, (cut.get(board.stockId) ?? 0) + 1)
    const stock = allowed.get(board.stockId)
    if (stock === undefined) {
      faults.push({
        rule: 'unknown stock',
        where,
        message: `${board.stockId} is not among the stock the job allows.`,
      })
      return
    }
    if (stock.option.length !== board.length) {
      faults.push({
        rule: 'board length',
        where,
        message: `${board.stockId} is ${stock.option.length} long, not ${board.length}.`,
      })
    }
    faults.push(...auditCuts(board, job.kerf, stock.trim, where))
  })
  for (const [id, count] of cut) {
    const most = allowed.get(id)?.most ?? 0
    if (count > most) {
      faults.push({
        rule: 'more than there are',
        where: id,
        message: `${count} boards are cut where ${most} can be had.`,
      })
    }
  }
  faults.push(...auditLengths(job, plan))
  return faults
}

function auditCuts(board: Board, kerf: number, trim: number, where: string): AuditFault[] {
  const faults: AuditFault[] = []
  if (board.cuts.length === 0) faults.push({ rule: 'empty board', where, message: 'Nothing is cut from it.' })
  const slants = board.cuts.some((cut) => cut.mitres !== undefined)
  let free = trim
  for (const cut of board.cuts) {
    if (cut.to - cut.from !== cut.length) {
      faults.push({
        rule: 'cut marks',
        where,
        message: `${cut.mark} runs from ${cut.from} to ${cut.to}, not over ${cut.length}.`,
      })
    }
    if (cut.from < (slants ? trim : free)) {
      const rule = free === trim ? 'end trim' : 'kerf'
      faults.push({ rule, where, message: `${cut.mark} begins at ${cut.from}; the saw leaves ${free}.` })
    }
    free = cut.to + Math.ceil(kerfAcross(kerf, cut.mitres, 1) - 1e-6)
  }
  if (slants) faults.push(...auditShapes(board, kerf, where))
  const end = board.cuts.at(-1)?.to ?? 0
  if (end > board.length - trim) {
    faults.push({
      rule: 'board too short',
      where,
      message: `The last piece ends at ${end}; the board is good to ${board.length - trim}.`,
    })
  }
  const left = Math.max(0, board.length - trim - free)
  if (left !== board.offcut) {
    faults.push({ rule: 'offcut', where, message: `What is left is ${left}, not ${board.offcut}.` })
  }
  return faults
}

function auditLengths(job: CutJob, plan: CutPlan): AuditFault[] {
  if (job.maxLengths === undefined) return []
  const offcuts = new Set(job.stock.filter((option) => option.offcut).map((option) => option.id))
  const bought = new Set(
    plan.order.filter((line) => line.count > 0 && !offcuts.has(line.stockId)).map((line) => line.length),
  )
  if (bought.size <= job.maxLengths) return []
  return [
    {
      rule: 'too many lengths',
      where: 'order',
      message: `${bought.size} different lengths are bought; the job allows ${job.maxLengths}.`,
    },
  ]
}
