import { beforeAll, describe, expect, test } from 'vitest'
import { type CutListRequest, faultWords, runCutList } from '../../../core/cut-list/index.ts'
import { auditPlan, type CutPlan, type LpEngine, planCuts } from '../../../core/cutting/index.ts'
import { cutListPiecesTable, cutListSheetTable } from '../../../core/papers/index.ts'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { feet, inches, ticks } from '../../../core/units/index.ts'
import { loadEngine } from '../../../main/workers/lp/index.ts'
import { jobOf, stockOf } from '../cutting/jobs.ts'

let engine: LpEngine
beforeAll(async () => {
  engine = await loadEngine()
})

const answer = (text: string, more: Partial<CutListRequest> = {}) =>
  runCutList({ text, kerf: inches(0), endTrim: inches(0), ...more }, SAMPLE_BOOK, engine)
const stockText = 'Length,Price\n16 ft,9\n20 ft,15\n'

function planned(text: string, more: Partial<CutListRequest> = {}) {
  const result = answer(text, { stockText, ...more })
  if (!result.ok) throw new Error(result.faults.map(faultWords).join('\n'))
  return result.result
}
function refused(text: string, more: Partial<CutListRequest> = {}) {
  const result = answer(text, more)
  return result.ok ? [] : result.faults.map(faultWords)
}

describe('pieces that run wild', () => {
  test('are cut so much longer, which decides the board, and say to what they are cut in place', () => {
    // by hand: 7 ft 10 in and 2 in wild are 8 ft, two to a 16; with 3 in wild neither a second fits, nor a 20 holds both
    const fits = planned('Qty,Length,Mark,Runs wild\n2,7 ft 10 in,J,2 in\n')
    expect(fits.plans[0]?.plan.order).toMatchObject([{ length: feet(16), count: 1 }])
    expect(fits.plans[0]?.plan.boards[0]?.cuts).toMatchObject([
      { mark: 'J', length: feet(8), wild: inches(2) },
      { mark: 'J', length: feet(8), wild: inches(2) },
    ])
    const longer = planned('Qty,Length,Mark,Runs wild\n2,7 ft 10 in,J,3 in\n')
    expect(longer.plans[0]?.plan.cost).toBe(1500)
  })

  test('stand so on the cutting sheet, and those that do not run wild as before', () => {
    const made = planned('Qty,Length,Mark,Runs wild\n1,7 ft 10 in,J,2\n1,8 ft,K,\n')
    expect(cutListSheetTable(made).rows[0]?.pieces).toBe(`J 8'-0" (in place to 7'-10") + K 8'-0"`)
    expect(cutListPiecesTable(made).rows.map(({ inPlace }) => inPlace)).toEqual([`7'-10"`, ''])
    const plain = planned('Qty,Length,Mark\n1,8 ft,K\n')
    expect(cutListPiecesTable(plain).columns.map(({ key }) => key)).not.toContain('inPlace')
  })

  test('by a number of feet where the heading says feet', () => {
    const made = planned('Length (ft),Wild (ft)\n7.5,0.5\n')
    expect(made.plans[0]?.plan.boards[0]?.cuts).toMatchObject([{ length: feet(8), wild: inches(6) }])
  })

  test('are refused where the amount is no length, is a slip of the column, or stands at stock', () => {
    expect(refused('Length,Runs wild\n8 ft,much\n')).toEqual([
      expect.stringMatching(/row 2.*B \(Runs wild\)/),
    ])
    expect(refused('Length,Runs wild\n8 ft,8 ft\n')).toEqual([
      expect.stringContaining('more than a piece runs'),
    ])
    expect(refused('Length,Runs wild,Kind\n8 ft,1 in,piece\n16 ft,1 in,stock\n')).toEqual([
      expect.stringContaining('only a piece runs wild'),
    ])
  })
})

describe('the auditor', () => {
  const job = jobOf({
    stock: stockOf({ 10: 900 }),
    pieces: [{ id: 'j', mark: 'J', length: feet(8), wild: inches(2) }],
  })
  const rules = (plan: CutPlan, of = job) => auditPlan(of, plan).map(({ rule }) => rule)
  const made = (): CutPlan => {
    const result = planCuts(job, engine)
    if (!result.ok) throw new Error(result.error.message)
    return result.value
  }
  const cutsWith = (wild: number): CutPlan => {
    const plan = made()
    const boards = plan.boards.map((board) => ({
      ...board,
      cuts: board.cuts.map((cut) => ({ ...cut, wild: ticks(wild) })),
    }))
    return { ...plan, boards }
  }

  test('accepts what the job says and refuses another amount, none, and more than there is of the piece', () => {
    expect(rules(made())).toEqual([])
    expect(rules(cutsWith(inches(1)))).toEqual(['cut in place'])
    expect(rules(cutsWith(0))).toEqual(['cut in place'])
    const all = { ...job, pieces: job.pieces.map((piece) => ({ ...piece, wild: piece.length })) }
    expect(rules(cutsWith(feet(8)), all)).toEqual(['cut in place'])
  })
})
