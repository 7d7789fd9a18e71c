import { printLength } from '../../units/index.ts'
import type { Board, CutJob, CutPlan } from '../types.ts'
import type { DayFault, DayState } from './types.ts'

/** What a stated day says that cannot be of this plan; empty where it can. */
export function dayFaults(job: CutJob, plan: CutPlan, day: DayState): readonly DayFault[] {
  const faults: DayFault[] = []
  const boards = new Map(plan.boards.map((board) => [board.number, board]))
  const say = (where: string, message: string, fix: string): void => {
    faults.push({ where, message, fix })
  }
  const known = (number: number, where: string): Board | null => {
    const board = boards.get(number)
    if (board === undefined) {
      say(
        where,
        `There is no board ${number}.`,
        `The plan of ${job.label} has boards 1 to ${plan.boards.length}.`,
      )
    }
    return board ?? null
  }
  const onBoard = (board: Board, pieceId: string, where: string): void => {
    if (board.cuts.some((cut) => cut.pieceId === pieceId)) return
    const marks = board.cuts.map((cut) => cut.mark).join(', ')
    say(where, `"${pieceId}" is not cut from board ${board.number}.`, `Its pieces are ${marks}.`)
  }
  const once = (numbers: readonly number[], where: string): void => {
    const twice = numbers.find((number, index) => numbers.indexOf(number) !== index)
    if (twice !== undefined) say(where, `Board ${twice} is named twice.`, 'Name each board once.')
  }

  if (day.bought !== 'all') for (const number of day.bought) known(number, 'bought')
  once(
    day.sawn.map((entry) => entry.board),
    'sawn',
  )
  for (const { board: number, pieces } of day.sawn) {
    const board = known(number, 'sawn')
    if (board !== null && pieces !== 'all') for (const id of pieces) onBoard(board, id, 'sawn')
  }
  const spoilt = new Set<string>()
  for (const { board: number, pieceId, length } of day.miscuts) {
    const board = known(number, 'miscuts')
    if (board === null) continue
    onBoard(board, pieceId, 'miscuts')
    if (spoilt.has(pieceId))
      say('miscuts', `Piece "${pieceId}" is named twice.`, 'Say once what became of it.')
    spoilt.add(pieceId)
    const cut = board.cuts.find((candidate) => candidate.pieceId === pieceId)
    if (cut !== undefined && length === cut.length) {
      say(
        'miscuts',
        `${cut.mark} came out as it should, ${printLength(length)}.`,
        'Name it among the sawn pieces.',
      )
    }
    if (length !== null && (length <= 0 || length > board.length)) {
      say(
        'miscuts',
        `A piece of ${printLength(length)} cannot come out of board ${number}.`,
        `The board is ${printLength(board.length)} long.`,
      )
    }
  }
  for (const { board: number, from, to } of day.culls) {
    const board = known(number, 'culls')
    if (board !== null && (from < 0 || to <= from || to > board.length)) {
      say(
        'culls',
        `Board ${number} has no stretch from ${printLength(from)} to ${printLength(to)}.`,
        `Give two lengths from its left end, the smaller first, up to ${printLength(board.length)}.`,
      )
    }
  }
  const stock = new Set(job.stock.map((option) => option.id))
  const lengths = `Known are ${job.stock.map((option) => option.id).join(', ')}.`
  for (const { stockId, left } of day.yard) {
    if (!stock.has(stockId)) say('yard', `"${stockId}" is no stock of ${job.label}.`, lengths)
    if (left !== null && left < 0) say('yard', `${left} boards cannot be left.`, 'Give 0 or more.')
  }
  for (const { stockId, count } of day.spares) {
    if (!stock.has(stockId)) say('spares', `"${stockId}" is no stock of ${job.label}.`, lengths)
    if (count < 0) say('spares', `${count} boards cannot lie there.`, 'Give 0 or more.')
  }
  return faults
}
