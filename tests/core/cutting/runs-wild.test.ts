import { beforeAll, describe, expect, test } from 'vitest'
import { forceJoint } from '../../../core/cutting/explain/force-joint.ts'
import {
  auditPlan,
  type CutJob,
  type CutPlan,
  type DayState,
  type LpEngine,
  planCuts,
  replan,
} from '../../../core/cutting/index.ts'
import { feet, inches, share, ticks } from '../../../core/units/index.ts'
import { loadHighs } from '../../../main/workers/lp/index.ts'
import { jobOf, pointAt, runOf, stockOf } from './jobs.ts'

let engine: LpEngine
beforeAll(async () => {
  engine = await loadHighs()
})

const WILD = inches(2)
/** Two courses 16 ft long that run wild by 2 in, so that they are cut 16'-2"; joists at 6, 10 and 12 ft for the joint. */
const job: CutJob = jobOf({
  stock: stockOf({ 10: 1000, 12: 1200, 16: 1600, 20: 2600 }),
  runs: [
    runOf(
      'course',
      2,
      ticks(feet(16) + WILD),
      [6, 10, 12].map((at) => pointAt(feet(at))),
      { wild: WILD },
    ),
  ],
})

function plan(of: CutJob): CutPlan {
  const result = planCuts(of, engine)
  if (!result.ok) throw new Error(result.error.message)
  expect(auditPlan(of, result.value)).toEqual([])
  return result.value
}

describe('courses that run wild', () => {
  test('are cut so much longer at their far end only, and say to what that piece is cut in place', () => {
    // by hand: 32'-4" in all at a dollar a foot from even feet: 34 dollars at least, and 12 + 4'-2", 10 + 6'-2" come
    // from two 12s and a 10, the short ones together; from 16s they would come only where they do not run wild
    const made = plan(job)
    expect(made.cost).toBe(3400)
    const ends = made.runPieces.filter((piece) => piece.to === job.runs[0]?.length)
    expect(ends.map(({ wild }) => wild)).toEqual([WILD, WILD])
    const others = made.runPieces.filter((piece) => !ends.includes(piece))
    expect(others).toHaveLength(2)
    expect(others.every(({ wild }) => wild === undefined)).toBe(true)
    const cuts = made.boards.flatMap((board) => board.cuts)
    for (const piece of made.runPieces)
      expect(cuts.find((cut) => cut.pieceId === piece.id)?.wild).toBe(piece.wild)
  })

  test('come whole from a 16 where they do not', () => {
    const square = { ...job, runs: [runOf('course', 2, feet(16), job.runs[0]?.points.map((p) => p) ?? [])] }
    expect(plan(square).cost).toBe(2 * 1600)
  })

  test('are refused by the auditor where the plan says another amount, or says it of another piece', () => {
    const made = plan(job)
    const said = (wild: number | undefined): CutPlan => ({
      ...made,
      runPieces: made.runPieces.map(({ wild: had, ...piece }) =>
        had === undefined || wild === undefined ? piece : { ...piece, wild: ticks(wild) },
      ),
    })
    const swapped: CutPlan = {
      ...made,
      runPieces: made.runPieces.map(({ wild: had, ...piece }) =>
        had === undefined ? { ...piece, wild: WILD } : piece,
      ),
    }
    for (const wrong of [said(undefined), said(WILD + 1), swapped])
      expect(auditPlan(job, wrong).map(({ rule }) => rule)).toContain('cut in place')
  })

  test('keep it at their far end when a joint is forced', () => {
    const forced = forceJoint(job, 'course', feet(10))
    const halves = forced?.job.runs.filter(({ id }) => id !== 'course')
    expect(halves?.map(({ wild }) => wild)).toEqual([undefined, WILD])
  })

  test('keep it at their far end when the day is planned again', () => {
    const made = plan(job)
    const [first] = made.boards
    if (first === undefined) throw new Error('a board')
    const day: DayState = {
      bought: 'all',
      sawn: [],
      miscuts: [],
      culls: [{ board: first.number, from: ticks(0), to: first.length }],
      yard: [],
      spares: [],
      refund: share(0),
    }
    const again = replan(job, made, day, engine)
    if (!again.ok) throw new Error(JSON.stringify(again.error))
    const ends = again.value.runPieces.filter((piece) => piece.to === job.runs[0]?.length)
    expect(ends.map(({ wild }) => wild)).toEqual([WILD, WILD])
  })
})
