import { beforeAll, describe, expect, it } from 'vitest'
import { auditPlan, type Board, type CutJob, type CutPlan, planCuts } from '../../../core/cutting/index.ts'
import { type Cents, feet, inches, type Ticks, ticks } from '../../../core/units/index.ts'
import { loadHighs } from '../../../main/workers/lp/index.ts'
import { jobOf, pointAt, runOf, stockOf } from './jobs.ts'

/** Two plies staggered over posts at 6, 11 and 16 ft, four blocks, an offcut on hand. */
const job: CutJob = jobOf({
  stock: [
    ...stockOf({ 6: 1190, 12: 2288, 16: 3074 }),
    { id: 'offcut', length: feet(7), price: 0 as Cents, supply: 1, offcut: true },
  ],
  pieces: [1, 2, 3, 4].map((k) => ({ id: `block${k}`, mark: `K${k}`, length: inches(14.5) })),
  runs: [
    runOf(
      'beam',
      2,
      feet(22),
      [6, 11, 16].map((at) => pointAt(feet(at), { cost: 850 as Cents, cap: 1 })),
    ),
  ],
  endTrim: ticks(0),
})

let sound: CutPlan
beforeAll(async () => {
  const result = planCuts(job, await loadHighs())
  if (!result.ok) throw new Error(result.error.message)
  sound = result.value
})

type Change = (plan: CutPlan) => CutPlan

const rules = (plan: CutPlan, of: CutJob = job): string[] => auditPlan(of, plan).map((fault) => fault.rule)

function onBoard(plan: CutPlan, number: number, change: (board: Board) => Board): CutPlan {
  return { ...plan, boards: plan.boards.map((board) => (board.number === number ? change(board) : board)) }
}

/** The first board with two cuts or more. */
function crowded(plan: CutPlan): Board {
  const board = plan.boards.find((candidate) => candidate.cuts.length > 1)
  if (board === undefined) throw new Error('no board holds two pieces')
  return board
}

const shift = (length: Ticks, by: number): Ticks => ticks(length + by)

const FAULTS: readonly [what: string, rule: string, change: Change][] = [
  [
    'a piece too long by one tick',
    'wrong length',
    (plan) =>
      onBoard(plan, 1, (board) => ({
        ...board,
        cuts: board.cuts.map((cut, k) =>
          k === 0 ? { ...cut, length: shift(cut.length, 1), to: shift(cut.to, 1) } : cut,
        ),
      })),
  ],
  [
    'a kerf forgotten',
    'kerf',
    (plan) =>
      onBoard(plan, crowded(plan).number, (board) => ({
        ...board,
        cuts: board.cuts.map((cut, k) =>
          k === 1 ? { ...cut, from: shift(cut.from, -4), to: shift(cut.to, -4) } : cut,
        ),
      })),
  ],
  [
    'a board too short for its pieces',
    'board too short',
    (plan) =>
      onBoard(plan, 1, (board) => ({
        ...board,
        cuts: board.cuts.map((cut) => ({ ...cut, from: shift(cut.from, 9000), to: shift(cut.to, 9000) })),
      })),
  ],
  [
    'an offcut misstated',
    'offcut',
    (plan) => onBoard(plan, 1, (board) => ({ ...board, offcut: shift(board.offcut, 1) })),
  ],
  [
    'a joint off its bearing',
    'joint off its bearing',
    (plan) => ({
      ...plan,
      runPieces: plan.runPieces.map((piece, k) =>
        k === 0
          ? { ...piece, to: shift(piece.to, 1) }
          : k === 1
            ? { ...piece, from: shift(piece.from, 1) }
            : piece,
      ),
    }),
  ],
  [
    'two plies at one post',
    'stagger',
    (plan) => {
      const joint = plan.runPieces.find((piece) => piece.memberId === 'beam.1' && piece.from === 0)?.to
      return {
        ...plan,
        runPieces: plan.runPieces.map((piece) =>
          piece.memberId !== 'beam.2'
            ? piece
            : piece.from === 0
              ? { ...piece, to: joint ?? piece.to }
              : { ...piece, from: joint ?? piece.from },
        ),
      }
    },
  ],
  [
    'a member with a hole in it',
    'run not covered',
    (plan) => ({ ...plan, runPieces: plan.runPieces.slice(1) }),
  ],
  [
    'more boards than the yard has',
    'more than there are',
    (plan) => ({ ...plan, boards: plan.boards.map((board) => ({ ...board, stockId: 'offcut' })) }),
  ],
  [
    'stock that nobody offered',
    'unknown stock',
    (plan) => onBoard(plan, 1, (board) => ({ ...board, stockId: '18 ft' })),
  ],
  [
    'a price off by one cent',
    'price',
    (plan) => ({
      ...plan,
      order: plan.order.map((line, k) => (k === 0 ? { ...line, price: (line.price + 1) as Cents } : line)),
    }),
  ],
  [
    'an amount off by one cent',
    'amount',
    (plan) => ({
      ...plan,
      order: plan.order.map((line, k) => (k === 0 ? { ...line, amount: (line.amount + 1) as Cents } : line)),
    }),
  ],
  [
    'one board too few ordered',
    'order count',
    (plan) => ({
      ...plan,
      order: plan.order.map((line, k) => (k === 0 ? { ...line, count: line.count - 1 } : line)),
    }),
  ],
  [
    'stock cost off by one cent',
    'stock cost',
    (plan) => ({ ...plan, stockCost: (plan.stockCost + 1) as Cents }),
  ],
  [
    'joint cost off by one cent',
    'joint cost',
    (plan) => ({ ...plan, jointCost: (plan.jointCost - 1) as Cents }),
  ],
  ['a cost that is not the sum', 'cost', (plan) => ({ ...plan, cost: (plan.cost + 1) as Cents })],
  ['a preference made up', 'preference', (plan) => ({ ...plan, preference: 1 as Cents })],
  ['a gap misstated', 'gap', (plan) => ({ ...plan, gap: 7 as Cents })],
  ['a status that the gap denies', 'status', (plan) => ({ ...plan, status: 'feasible' })],
  [
    'waste misstated',
    'waste',
    (plan) => ({ ...plan, waste: { ...plan.waste, thrown: shift(plan.waste.thrown, 1) } }),
  ],
  [
    'a missing piece',
    'missing piece',
    (plan) => onBoard(plan, 1, (board) => ({ ...board, cuts: board.cuts.slice(1) })),
  ],
  [
    'a piece twice',
    'piece twice',
    (plan) => ({
      ...plan,
      boards: [...plan.boards, { ...(plan.boards[0] as Board), number: plan.boards.length + 1 }],
    }),
  ],
  ['a joint that is not listed', 'joint list', (plan) => ({ ...plan, joints: plan.joints.slice(1) })],
  [
    'a bound above what the prices prove',
    'bound',
    (plan) => ({
      ...plan,
      certificate: { ...plan.certificate, dualBound: (plan.certificate.dualBound + 1) as Cents },
    }),
  ],
  [
    'a bound above the plan',
    'bound',
    (plan) => ({ ...plan, bound: (plan.cost + 1) as Cents, gap: -1 as Cents }),
  ],
  [
    'prices that make a board worth more than it costs',
    'bound',
    (plan) => ({
      ...plan,
      certificate: {
        ...plan.certificate,
        prices: plan.certificate.prices.map((entry) => ({ ...entry, price: entry.price * 3 })),
      },
    }),
  ],
  [
    'prices that are not whole numbers',
    'bound',
    (plan) => ({
      ...plan,
      certificate: {
        ...plan.certificate,
        prices: plan.certificate.prices.map((entry) => ({ ...entry, price: entry.price + 0.5 })),
      },
    }),
  ],
  [
    'a cap price that no rule backs',
    'bound',
    (plan) => ({
      ...plan,
      certificate: {
        ...plan.certificate,
        capPrices: [{ runId: 'beam', point: 0, price: -1_000_000, cap: 0 }],
      },
    }),
  ],
]

describe('the auditor', () => {
  it('finds nothing wrong with a sound plan', () => {
    expect(sound.joints.length).toBeGreaterThan(0)
    expect(auditPlan(job, sound)).toEqual([])
  })

  it.each(FAULTS)('names %s', (_, rule, change) => {
    expect(rules(change(sound))).toContain(rule)
  })

  it('names a piece under the least length, too few supports and too many joints', () => {
    const [run] = job.runs
    if (run === undefined) throw new Error('no run')
    const strict = { ...job, runs: [{ ...run, minPiece: feet(12), minSupports: 4, maxJoints: 0 }] }
    expect(rules(sound, strict)).toEqual(
      expect.arrayContaining(['piece too short', 'too few supports', 'too many joints']),
    )
  })

  it('names neighbours jointed at one point, and an order that leaves a member out', () => {
    const [run] = job.runs
    if (run === undefined) throw new Error('no run')
    const apart = {
      ...job,
      runs: [{ ...run, neighboursApart: true, points: run.points.map((point) => ({ ...point, cap: null })) }],
    }
    const both = {
      ...sound,
      runPieces: sound.runPieces.map((piece) =>
        piece.from === 0 ? { ...piece, to: feet(11) } : { ...piece, from: feet(11) },
      ),
    }
    const order = { runId: 'beam', memberIds: ['beam.1', 'beam.2'] }
    expect(rules({ ...both, memberOrder: [order] }, apart)).toContain('neighbours')
    expect(rules({ ...both, memberOrder: [{ ...order, memberIds: ['beam.1'] }] }, apart)).toContain(
      'member order',
    )
  })

  it('names more different lengths than the job allows', () => {
    expect(rules(sound, { ...job, maxLengths: 1 })).toContain('too many lengths')
  })
})
