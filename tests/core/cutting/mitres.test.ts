import { beforeAll, describe, expect, it } from 'vitest'
import { auditPlan, type CutJob, type CutPlan, type LpEngine, planCuts } from '../../../core/cutting/index.ts'
import { cents, ticks } from '../../../core/units/index.ts'
import { loadHighs } from '../../../main/workers/lp/index.ts'

let engine: LpEngine
beforeAll(async () => {
  engine = await loadHighs()
})

// A board 5-1/2 in wide (176 ticks) at 45°: the slant is as long as the board is wide, 176; the saw of 1/8 in (4 ticks)
// takes 4 × √2 = 5.66, rounded up 6 along the board.
const WIDE = ticks(176)

function jobOf(
  lengths: readonly number[],
  ends: readonly (readonly [number, number])[],
  board: number,
): CutJob {
  return {
    id: 'mitred',
    label: 'mitred',
    kerf: ticks(4),
    endTrim: ticks(0),
    stock: [{ id: 'board', length: ticks(board), price: cents(100), supply: null, offcut: false }],
    pieces: lengths.map((length, k) => ({
      id: `p${k}`,
      mark: `P${k + 1}`,
      length: ticks(length),
      mitres: { across: WIDE, ends: ends[k] ?? [0, 0] },
    })),
    runs: [],
    handling: cents(0),
    perCut: cents(0),
    keep: null,
    objectives: ['least cost'],
  }
}

function planOf(job: CutJob): CutPlan {
  const planned = planCuts(job, engine)
  if (!planned.ok) throw new Error(planned.error.message)
  return planned.value
}

/** Boards that the pieces take; every plan is proven and sound. */
function boardsFor(job: CutJob): number {
  const plan = planOf(job)
  expect(auditPlan(job, plan)).toEqual([])
  expect(plan.status).toBe('proven optimal')
  return plan.boards.length
}

/** Two parallelograms of 1000 ticks, of boards of one length. */
function twoAlike(board: number): CutJob {
  const alike = [4500, 4500] as const
  return jobOf([1000, 1000], [alike, alike], board)
}

describe.each([
  // 3 × 1000 − 2 × 176 + 2 × 6
  {
    what: 'three pieces with both ends alike',
    lengths: [1000, 1000, 1000],
    ends: [
      [4500, 4500],
      [4500, 4500],
      [4500, 4500],
    ],
    takes: 2660,
  },
  // the second turned end for end
  {
    what: 'a piece whose ends lean to each other and its like',
    lengths: [1000, 1000],
    ends: [
      [-4500, 4500],
      [-4500, 4500],
    ],
    takes: 1830,
  },
  {
    what: 'two pieces with one slanting end',
    lengths: [1000, 900],
    ends: [
      [0, 4500],
      [4500, 0],
    ],
    takes: 1730,
  },
  // slants outward, square ends with a plain kerf between them
  {
    what: 'two pieces whose slants are not alike',
    lengths: [1000, 900],
    ends: [
      [0, 4500],
      [0, -4500],
    ],
    takes: 1904,
  },
  // 45° and 30° share no cut: the wider kerf of the two ends at the best place, square ends first
  {
    what: 'slants of two angles',
    lengths: [1000, 900],
    ends: [
      [0, 4500],
      [0, 3000],
    ],
    takes: 1904,
  },
] as const)('$what', ({ lengths, ends, takes }) => {
  it('fit a board of just that length, and not one a tick shorter', () => {
    expect(boardsFor(jobOf(lengths, ends, takes))).toBe(1)
    expect(boardsFor(jobOf(lengths, ends, takes - 1))).toBe(2)
  })
})

describe('a plan with shared cuts', () => {
  it('takes a corner that is less than the board wide to its long points', () => {
    // 300 at the long edge, 300 − 2 × 176 < 0 at the other: its cuts meet within the board, and 6 for the saw lie between
    const ends = [
      [-4500, 4500],
      [-4500, 4500],
    ] as const
    const boards = [1306, 1305].map((length) => {
      const job = jobOf([300, 1000], ends, length)
      const planned = planCuts(job, engine)
      expect(planned.ok && auditPlan(job, planned.value)).toEqual([])
      return planned.ok ? planned.value.boards.length : 0
    })
    expect(boards).toEqual([1, 2])
  })

  it('counts what two pieces share once in the wood that is used', () => {
    const { used, kerf, kept, thrown } = planOf(twoAlike(2000)).waste
    // to the long points 0 … 1000 and 830 … 1830
    expect(used).toBe(1830)
    expect(kerf).toBe(6)
    expect(kept + thrown).toBe(164)
  })

  it('is refused by the auditor where a piece lies a tick nearer than the saw allows', () => {
    const job = twoAlike(2000)
    const plan = planOf(job)
    const boards = plan.boards.map((board) => ({
      ...board,
      cuts: board.cuts.map((cut, k) =>
        k === 0 ? cut : { ...cut, from: ticks(cut.from - 1), to: ticks(cut.to - 1) },
      ),
    }))
    const rules = auditPlan(job, { ...plan, boards }).map(({ rule }) => rule)
    expect(rules).toContain('kerf')
  })

  it('is refused where its bound takes every piece to its long points', () => {
    const job = twoAlike(2000)
    const plan = planOf(job)
    const { shared: _left, ...certificate } = plan.certificate
    expect(auditPlan(job, { ...plan, certificate }).map(({ rule }) => rule)).toContain('bound')
  })

  it('is not looked for where something else than the cost comes first', () => {
    const job = twoAlike(1900)
    const wished = planCuts({ ...job, objectives: ['fewest joints', 'least cost'] }, engine)
    expect(wished.ok && wished.value.boards.length).toBe(2)
    expect(boardsFor(job)).toBe(1)
  })
})

describe('a search for shared cuts', () => {
  it('tells of sound plans only, each with its bound', () => {
    const ends = Array.from({ length: 12 }, (_, k) =>
      k % 3 === 0 ? ([4500, 4500] as const) : ([0, 4500] as const),
    )
    const lengths = ends.map((_, k) => 700 + 61 * k)
    const job = jobOf(lengths, ends, 2600)
    const told: number[] = []
    const planned = planCuts(job, engine, {
      onPlan: (plan) => {
        expect(auditPlan(job, plan)).toEqual([])
        told.push(plan.cost)
      },
    })
    expect(planned.ok && told.at(-1)).toBe(planned.ok && planned.value.cost)
    expect(told.length).toBeGreaterThan(1)
  })
})
