import { describe, expect, it } from 'vitest'
import { auditPlan, type CutJob, type CutPlan, planCuts } from '../../../core/cutting/index.ts'
import { patternOf } from '../../../core/cutting/model/board-cost.ts'
import { buildProblem } from '../../../core/cutting/model/build-problem.ts'
import { costsInCents } from '../../../core/cutting/model/costs.ts'
import { solutionOf } from '../../../core/cutting/solve/solution.ts'
import { fewerSetUps } from '../../../core/cutting/tidy/fewer-set-ups.ts'
import { feet, ticks } from '../../../core/units/index.ts'
import { loadHighs } from '../../../main/workers/lp/highs.ts'
import { jobOf, pointAt, runOf, stockOf } from './jobs.ts'

const engine = await loadHighs()

const piecesOf = (mark: string, count: number, length: number): CutJob['pieces'] =>
  Array.from({ length: count }, (_, k) => ({
    id: `${mark}${k + 1}`,
    mark: `${mark}${k + 1}`,
    length: feet(length),
  }))

function planOf(job: CutJob): CutPlan {
  const result = planCuts(job, engine)
  if (!result.ok) throw new Error(result.error.message)
  expect(auditPlan(job, result.value)).toEqual([])
  return result.value
}

/** Boards of a job without runs cut as given, by lengths in feet, and made tidier. */
function tidied(job: CutJob, boards: readonly (readonly number[])[]) {
  const built = buildProblem(job)
  if (!built.ok) throw new Error(built.error.message)
  const problem = built.value
  const itemOf = (length: number): number => problem.items.findIndex((item) => item.size === feet(length))
  const given = boards.map((lengths) => {
    const items = [...new Set(lengths)].map(itemOf).sort((a, b) => a - b)
    const counts = items.map((item) => lengths.filter((length) => itemOf(length) === item).length)
    return { pattern: patternOf(problem, 0, items, counts), count: 1 }
  })
  const solution = solutionOf(problem, costsInCents(problem), given, [])
  if (solution === null) throw new Error('these boards do not do the job')
  const made = fewerSetUps(problem, costsInCents(problem), solution)
  expect(made.cost).toBeLessThanOrEqual(solution.cost)
  return made.boards
    .map(({ pattern, count }) => {
      const lengths = pattern.items.flatMap((item, k) =>
        Array.from({ length: pattern.counts[k] ?? 0 }, () => (problem.items[item]?.size ?? 0) / feet(1)),
      )
      return `${count} × ${lengths.join(' + ')}`
    })
    .sort()
}

const plain = (pieces: CutJob['pieces'], more: Partial<CutJob> = {}): CutJob =>
  jobOf({ kerf: ticks(0), stock: stockOf({ 20: 2000 }), pieces, ...more })

describe('set-ups of the saw', () => {
  it('are one where two boards can be cut alike', () => {
    const job = plain([...piecesOf('A', 2, 8), ...piecesOf('B', 2, 6)])
    expect(
      tidied(job, [
        [8, 8],
        [6, 6],
      ]),
    ).toEqual(['2 × 8 + 6'])
  })

  it('stay as they are where no other way has fewer', () => {
    const job = plain([...piecesOf('A', 2, 12), ...piecesOf('B', 2, 8)])
    expect(
      tidied(job, [
        [12, 8],
        [12, 8],
      ]),
    ).toEqual(['2 × 12 + 8'])
  })

  it('leave one long offcut rather than two crumbs where there are as many', () => {
    const job = plain([
      ...piecesOf('A', 1, 10),
      ...piecesOf('B', 1, 9),
      ...piecesOf('C', 1, 5),
      ...piecesOf('D', 1, 4),
    ])
    // 20 − 10 − 4 and 20 − 9 − 5 leave 6 and 6; 10 + 5 + 4 and 9 leave 1 and 11
    expect(
      tidied(job, [
        [10, 4],
        [9, 5],
      ]),
    ).toEqual(['1 × 10 + 5 + 4', '1 × 9'])
  })

  it('cost no offcut that is worth money', () => {
    const pieces = [...piecesOf('A', 2, 8), ...piecesOf('B', 2, 6)]
    const keep = { from: feet(8), centsPerFoot: 10 }
    // 8 + 8 and 6 + 6 leave 4 and 8, worth 80 cents; 8 + 6 twice leave 6 and 6, worth nothing
    expect(
      tidied(plain(pieces, { keep }), [
        [8, 8],
        [6, 6],
      ]),
    ).not.toContain('2 × 8 + 6')
  })

  it('drop what a pattern holds beyond what is wanted', () => {
    const job = plain(piecesOf('A', 3, 6))
    expect(
      tidied(job, [
        [6, 6, 6],
        [6, 6, 6],
      ]),
    ).toEqual(['1 × 6 + 6 + 6'])
  })
})

describe('joints that cost nothing', () => {
  it('are left out where boards for as much do without them', () => {
    // a dollar a foot, so that very many ways cost the same
    const job = jobOf({
      kerf: ticks(0),
      stock: stockOf({ 19: 1900, 21: 2100, 29: 2900 }),
      pieces: piecesOf('P', 1, 6),
      runs: [
        runOf('r', 2, feet(18), [pointAt(feet(10)), pointAt(feet(12))], { minSupports: 0 }),
        runOf('q', 1, feet(10), []),
      ],
    })
    const made = planOf(job)
    expect(made.joints).toEqual([])
  })

  it('are made where they spare a board, and only there', () => {
    // 20 dollars for 20 ft and 10 for 10: a beam of 20 costs the same in one piece and in two
    const job = jobOf({
      kerf: ticks(0),
      stock: stockOf({ 10: 1000, 20: 2000 }),
      runs: [runOf('beam', 3, feet(20), [pointAt(feet(10))])],
    })
    expect(planOf(job).joints).toEqual([])
  })
})

describe('boards for one place of the deck', () => {
  it('come one after another, each with pieces of that place where the lengths are the same', () => {
    const job = plain([...piecesOf('J', 4, 10), ...piecesOf('K', 2, 10)], {
      runs: [runOf('rim', 2, feet(10), [])],
    })
    const places = planOf(job).boards.map((board) =>
      [...new Set(board.cuts.map((cut) => cut.mark.replace(/\d+$/, '')))].join(),
    )
    expect(places).toEqual(['J', 'J', 'K', 'rim'])
  })

  it('keep boards of one length together, longest first', () => {
    const job = jobOf({
      stock: stockOf({ 8: 700, 16: 1500 }),
      pieces: [...piecesOf('A', 2, 8), ...piecesOf('B', 1, 16), ...piecesOf('C', 1, 8)],
    })
    expect(planOf(job).boards.map((board) => board.length / feet(1))).toEqual([16, 8, 8, 8])
  })

  it('mark pieces of equal length in the order of the list', () => {
    const job = plain(piecesOf('J', 6, 10))
    const marks = planOf(job).boards.flatMap((board) => board.cuts.map((cut) => cut.mark))
    expect(marks).toEqual(['J1', 'J2', 'J3', 'J4', 'J5', 'J6'])
  })
})
