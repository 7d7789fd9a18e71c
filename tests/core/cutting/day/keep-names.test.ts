import { describe, expect, it } from 'vitest'
import { keepNames } from '../../../../core/cutting/day/keep-names.ts'
import { type CutJob, type CutPlan, planCuts } from '../../../../core/cutting/index.ts'
import { type Cents, feet } from '../../../../core/units/index.ts'
import { loadHighs } from '../../../../main/workers/lp/highs.ts'
import { jobOf, pointAt, runOf, stockOf } from '../jobs.ts'

const engine = await loadHighs()

function planOf(job: CutJob): CutPlan {
  const plan = planCuts(job, engine)
  if (!plan.ok) throw new Error(plan.error.message)
  return plan.value
}

const marks = ({ boards }: CutPlan): string[] =>
  boards.map(({ cuts }) => cuts.map(({ mark }) => mark).join(' '))

const pieces = (mark: string, count: number, length: number): CutJob['pieces'] =>
  Array.from({ length: count }, (_, k) => ({
    id: `${mark}${k + 1}`,
    mark: `${mark}${k + 1}`,
    length: feet(length),
  }))

describe('names in a plan of the rest', () => {
  const job = jobOf({ stock: stockOf({ 20: 2000 }), pieces: [...pieces('J', 4, 12), ...pieces('K', 4, 7)] })
  const before = planOf(job)

  it('stay as they were where boards are cut as before, in whatever order they come', () => {
    expect(marks(before)).toEqual(['J1 K1', 'J2 K2', 'J3 K3', 'J4 K4'])
    const other = {
      ...before,
      boards: before.boards.map((board) => ({
        ...board,
        cuts: board.cuts.map((cut) => {
          const mark = `${cut.mark[0]}${5 - Number(cut.mark[1])}`
          return { ...cut, pieceId: mark, mark }
        }),
      })),
    }
    expect(marks(other)).toEqual(['J4 K4', 'J3 K3', 'J2 K2', 'J1 K1'])
    expect(marks(keepNames(job, before, other)).sort()).toEqual(marks(before))
  })

  it('follow the old boards where some of them are gone', () => {
    const left: CutJob = { ...job, pieces: job.pieces.filter(({ id }) => id !== 'J1' && id !== 'K1') }
    expect(marks(keepNames(left, before, planOf(left)))).toEqual(['J2 K2', 'J3 K3', 'J4 K4'])
  })

  it('give a piece without its old board the place that is left', () => {
    // K4 is made already: J4 stays alone
    const left: CutJob = { ...job, pieces: job.pieces.filter(({ id }) => id !== 'K4') }
    const named = marks(keepNames(left, before, planOf(left)))
    expect(named.join(' ').split(' ').sort()).toEqual(left.pieces.map(({ mark }) => mark).sort())
    expect(named).toContain('J1 K1')
    expect(named).toContain('J4')
  })

  it('keep the member that was whole whole, and the jointed one jointed', () => {
    const runs = jobOf({
      stock: stockOf({ 16: 1600 }),
      pieces: pieces('P', 1, 9),
      runs: [runOf('beam', 2, feet(16), [pointAt(feet(10), { cost: 1 as Cents })])],
    })
    const begun = planOf(runs)
    const swap = (text: string): string =>
      text.replace(/([12])(?=$|[-/])/, (digit) => (digit === '1' ? '2' : '1'))
    const swapped: CutPlan = {
      ...begun,
      runPieces: begun.runPieces.map((piece) => ({
        ...piece,
        id: piece.id.replace(piece.memberId, swap(piece.memberId)),
        mark: piece.mark.replace(/^beam./, swap),
        memberId: swap(piece.memberId),
      })),
      joints: begun.joints.map((joint) => ({ ...joint, memberId: swap(joint.memberId) })),
    }
    const memberOf = (plan: CutPlan): string[] => plan.joints.map((joint) => joint.memberId)
    if (begun.joints.length === 1) expect(memberOf(swapped)).not.toEqual(memberOf(begun))
    expect(memberOf(keepNames(runs, begun, swapped))).toEqual(memberOf(begun))
  })
})
