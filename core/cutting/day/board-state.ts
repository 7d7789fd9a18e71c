import type { Ticks } from '../../units/index.ts'
import type { Board, Cut, CutJob, CutPlan } from '../types.ts'
import type { DayFault, DayState } from './types.ts'

/** One board of the plan as it is now. */
export interface BoardState {
  readonly board: Board
  readonly bought: boolean
  /** pieces that exist and are right, where they were sawn */
  readonly made: readonly Cut[]
  /** pieces of the plan that are still to be made from somewhere */
  readonly lacking: readonly Cut[]
  /** still to be sawn just as planned: nothing on it went wrong */
  readonly asPlanned: boolean
  /** not sawn at all and without a fault: it can be cut freely, or go back */
  readonly whole: boolean
  /** lengths that can be cut from it, ends good: what is left past the saw, and pieces that came out wrong */
  readonly usable: readonly Ticks[]
  /** the same once it is sawn as planned */
  readonly leftAsPlanned: readonly Ticks[]
}

export interface BoardStates {
  readonly states: readonly BoardState[]
  readonly faults: readonly DayFault[]
}

/**
 * What has become of each board. Pieces are sawn from the left end in the order of the plan, each followed by a
 * kerf; a bad stretch parts what is left into good lengths. A cut beside a bad stretch runs in the bad stretch.
 */
export function boardStates(job: CutJob, plan: CutPlan, day: DayState): BoardStates {
  const offcuts = new Set(job.stock.filter((option) => option.offcut).map((option) => option.id))
  const faults: DayFault[] = []
  const states = plan.boards.map((board) => {
    const entry = day.sawn.find((sawn) => sawn.board === board.number)
    const miscuts = new Map(
      day.miscuts
        .filter((miscut) => miscut.board === board.number)
        .map((miscut) => [miscut.pieceId, miscut.length]),
    )
    const culls = day.culls.filter((cull) => cull.board === board.number)
    const right = (cut: Cut): boolean =>
      !miscuts.has(cut.pieceId) && (entry?.pieces === 'all' || entry?.pieces.includes(cut.pieceId) === true)
    const trim = offcuts.has(board.stockId) ? 0 : job.endTrim
    const made: Cut[] = []
    const spoilt: Ticks[] = []
    let free: number = trim
    /** the cut before, where it was sawn as planned: the next one may share its slanting end */
    let before: Cut | undefined
    for (const cut of board.cuts) {
      const length = right(cut) ? cut.length : miscuts.get(cut.pieceId)
      if (length === undefined) {
        before = undefined
        continue
      }
      const from = (before === undefined ? free : free - job.kerf + cut.from - before.to) as Ticks
      const to = (from + (length ?? cut.length)) as Ticks
      if (right(cut)) made.push({ ...cut, from, to })
      else if (length !== null) spoilt.push(length)
      before = right(cut) ? cut : undefined
      free = to + job.kerf
    }
    const sawn = free > trim
    if (free - job.kerf > board.length - trim) {
      faults.push({
        where: `board ${board.number}`,
        message: 'More was sawn from it than it holds.',
        fix: 'Look again at the lengths that came out wrong.',
      })
    }
    if (sawn && culls.some((cull) => cull.from < free - job.kerf)) {
      faults.push({
        where: `board ${board.number}`,
        message: 'A bad stretch lies where pieces were sawn.',
        fix: 'Say of such a piece that it is lost; a stretch to leave out lies in what is left of the board.',
      })
    }
    const end = board.length - trim
    const touched = culls.some((cull) => cull.to > trim && cull.from < end)
    const lacking = board.cuts.filter((cut) => !right(cut))
    const last = board.cuts.at(-1)?.to ?? trim
    return {
      board,
      bought:
        sawn ||
        touched ||
        offcuts.has(board.stockId) ||
        day.bought === 'all' ||
        day.bought.includes(board.number),
      made,
      lacking,
      asPlanned:
        miscuts.size === 0 &&
        !culls.some((cull) => lacking.some((cut) => cull.from < cut.to && cull.to > cut.from)),
      whole: !sawn && !touched,
      usable: [...spoilt, ...(sawn || touched ? goodLengths(free, end, culls, job.kerf) : [])],
      leftAsPlanned: goodLengths(last + job.kerf, end, culls, job.kerf),
    }
  })
  return { states, faults }
}

/** Good stretches between `from` and `to` once the bad ones are out; a cut eats its kerf where the bad one is narrower. */
function goodLengths(
  from: number,
  to: number,
  culls: readonly { readonly from: Ticks; readonly to: Ticks }[],
  kerf: number,
): Ticks[] {
  const good: Ticks[] = []
  let at = from
  for (const cull of [...culls].sort((a, b) => a.from - b.from)) {
    if (cull.to <= at || cull.from >= to) continue
    if (cull.from > at) good.push((cull.from - at) as Ticks)
    at = Math.max(at, cull.to, cull.from > at ? cull.from + kerf : 0)
  }
  if (to > at) good.push((to - at) as Ticks)
  return good
}
