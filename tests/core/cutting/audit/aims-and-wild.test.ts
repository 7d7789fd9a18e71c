import { describe, expect, it } from 'vitest'
import { auditPlan, type CutJob, type CutPlan, type Objective } from '../../../../core/cutting/index.ts'
import type { Ticks } from '../../../../core/units/index.ts'
import { RICH_JOB, RICH_PLAN } from './rich-plan.ts'

const said = (plan: CutPlan, job: CutJob): string[] =>
  auditPlan(job, plan).map(({ rule, where, message }) => `${rule}, ${where}: ${message}`)

type Aims = NonNullable<CutPlan['aims']>
/** By hand: six joints; 3 × 120 + 6 × 84 + 60 + the 47 on hand are 971; 120, 84 and 60 are bought; 1498 + 59 are 1557. */
const COUNTED: Aims = [
  { objective: 'fewest joints', value: 6, bound: 4 },
  { objective: 'least waste', value: 971, bound: 971 },
  { objective: 'fewest lengths', value: 3, bound: 1 },
  { objective: 'least cost', value: 1557, bound: 1557 },
]
const asked = (objectives: readonly Objective[]): CutJob => ({ ...RICH_JOB, objectives })
const ALL = asked(['fewest joints', 'least waste', 'fewest lengths'])
const aiming = (aims: Aims): CutPlan => ({ ...RICH_PLAN, aims })

describe('what a plan says of its objectives', () => {
  it('is counted again, the least cost last where it is not named', () => {
    expect(said(aiming(COUNTED), ALL)).toEqual([])
    expect(said(aiming(COUNTED), asked(COUNTED.map(({ objective }) => objective)))).toEqual([])
  })

  it('is refused where one count is another', () => {
    COUNTED.forEach(({ objective, value }, at) => {
      const wrong = COUNTED.map((aim, k) => (k === at ? { ...aim, value: value + 1 } : aim))
      expect(said(aiming(wrong), ALL)).toEqual([
        `aim, ${objective}: It should be ${value}, not ${value + 1}.`,
      ])
    })
  })

  it('may have no bound above the count, and one as high', () => {
    COUNTED.forEach(({ objective, value }, at) => {
      const bounded = (bound: number) => COUNTED.map((aim, k) => (k === at ? { ...aim, bound } : aim))
      expect(said(aiming(bounded(value)), ALL)).toEqual([])
      expect(said(aiming(bounded(value + 1)), ALL)).toEqual([
        `aim, ${objective}: The bound ${value + 1} lies above the plan’s own ${value}.`,
      ])
    })
  })

  it('stands there for each objective asked for, in its order, and for no other', () => {
    expect(said(RICH_PLAN, ALL)).toEqual([
      'aims, plan: It should be chosen for fewest joints, least waste, fewest lengths, least cost, not for that alone.',
    ])
    expect(said(aiming(COUNTED.toReversed()), ALL)).toEqual([
      'aims, plan: It should be chosen for fewest joints, least waste, fewest lengths, least cost, not for least cost, fewest lengths, least waste, fewest joints.',
    ])
    expect(said(aiming(COUNTED.slice(3)), RICH_JOB)).toEqual([
      'aims, plan: It should be chosen for the least cost alone, not for least cost.',
    ])
    expect(said(aiming([]), RICH_JOB)).toEqual([])
    const two = asked(['least cost', 'fewest joints'])
    const [joints, , , cost] = COUNTED
    if (joints === undefined || cost === undefined) throw new Error('counts')
    expect(said(aiming([cost, joints]), two)).toEqual([])
    expect(said(aiming([joints, cost]), two)).toHaveLength(1)
  })
})

/** The rich job with 4 of the 14 of block 2, and 6 at the far end of the courses, cut off in place. */
const WILD_JOB: CutJob = {
  ...RICH_JOB,
  pieces: RICH_JOB.pieces.map((piece) => (piece.id === 'block2' ? { ...piece, wild: 4 as Ticks } : piece)),
  runs: RICH_JOB.runs.map((run) => (run.id === 'course' ? { ...run, wild: 6 as Ticks } : run)),
}
const AT_FAR_END = ['course.1/2', 'course.2/2', 'course.3/2']
const wildOf = (id: string): number | undefined =>
  id === 'block2' ? 4 : AT_FAR_END.includes(id) ? 6 : undefined

function wildPlan(inRuns = wildOf, onBoards = wildOf): CutPlan {
  const saying = <T extends object>(thing: T, wild: number | undefined): T =>
    wild === undefined ? thing : { ...thing, wild }
  return {
    ...RICH_PLAN,
    runPieces: RICH_PLAN.runPieces.map((piece) => saying(piece, inRuns(piece.id))),
    boards: RICH_PLAN.boards.map((board) => ({
      ...board,
      cuts: board.cuts.map((cut) => saying(cut, onBoards(cut.pieceId))),
    })),
  }
}

describe('what is cut off in place', () => {
  it('is said of the pieces that run wild, at every cut of them', () => {
    expect(said(wildPlan(), WILD_JOB)).toEqual([])
  })

  it('is refused at a cut that says another amount, or none, or says it of another piece', () => {
    const cuts = (of: typeof wildOf): string[] => said(wildPlan(wildOf, of), WILD_JOB)
    expect(cuts((id) => (id === 'block2' ? 5 : wildOf(id)))).toEqual([
      'cut in place, board 5: K2 loses 4 in place, not 5.',
    ])
    expect(cuts((id) => (id === 'block2' ? undefined : wildOf(id)))).toEqual([
      'cut in place, board 5: K2 loses 4 in place, not 0.',
    ])
    expect(cuts((id) => (id === 'block1' ? 1 : wildOf(id)))).toEqual([
      'cut in place, board 4: K1 loses 0 in place, not 1.',
    ])
  })

  it('is refused of a run’s piece that does not lie at the far end, or with another amount there', () => {
    const runs = (of: typeof wildOf): string[] => said(wildPlan(of, of), WILD_JOB)
    expect(runs((id) => (id === 'course.2/1' ? 6 : wildOf(id)))).toEqual([
      'cut in place, Course, course2: course2-1 loses 0 in place, not 6.',
    ])
    expect(runs((id) => (id === 'course.2/2' ? undefined : wildOf(id)))).toEqual([
      'cut in place, Course, course2: course2-2 loses 6 in place, not 0.',
    ])
    expect(said(wildPlan(), RICH_JOB)).toContain(
      'cut in place, Course, course1: course1-2 loses 0 in place, not 6.',
    )
  })

  it('leaves something of a piece, and adds nothing to it', () => {
    const job = (wild: number): CutJob => ({
      ...RICH_JOB,
      pieces: RICH_JOB.pieces.map((piece) =>
        piece.id === 'block2' ? { ...piece, wild: wild as Ticks } : piece,
      ),
    })
    const plan = (wild: number) =>
      wildPlan(
        () => undefined,
        (id) => (id === 'block2' ? wild : undefined),
      )
    expect(said(plan(13), job(13))).toEqual([])
    expect(said(plan(14), job(14))).toEqual(['cut in place, K2: 14 are to be cut off in place of 14.'])
    expect(said(plan(15), job(15))).toEqual(['cut in place, K2: 15 are to be cut off in place of 14.'])
    expect(said(plan(-1), job(-1))).toEqual(['cut in place, K2: -1 are to be cut off in place of 14.'])
  })
})
