import { describe, expect, it } from 'vitest'
import { auditPlan, type CutJob, type CutPlan } from '../../../../core/cutting/index.ts'
import type { Cents, Ticks } from '../../../../core/units/index.ts'
import { RICH_JOB, RICH_PLAN } from './rich-plan.ts'

const said = (plan: CutPlan, job: CutJob = RICH_JOB): string[] =>
  auditPlan(job, plan).map(({ rule, where, message }) => `${rule}, ${where}: ${message}`)
const rules = (plan: CutPlan, job: CutJob = RICH_JOB): string[] =>
  auditPlan(job, plan).map((fault) => fault.rule)
const ofBound = (certificate: Partial<CutPlan['certificate']>): string[] =>
  said({ ...RICH_PLAN, certificate: { ...RICH_PLAN.certificate, ...certificate } }).filter((line) =>
    line.startsWith('bound'),
  )

describe('runs', () => {
  it('have no two neighbours jointed at one point, in the order that is laid', () => {
    const memberOrder = [{ runId: 'course', memberIds: ['course.1', 'course.3', 'course.2'] }]
    expect(said({ ...RICH_PLAN, memberOrder })).toEqual([
      'neighbours, Course: Two neighbours are both jointed at 70.',
    ])
  })

  it('list each joint once, and none that is not made', () => {
    const [first, second, ...others] = RICH_PLAN.joints
    if (first === undefined || second === undefined) throw new Error('no joints')
    const twice = { ...RICH_PLAN, joints: [first, first, ...others] }
    expect(said(twice)).toContain(
      'joint list, Beam: Joints listed and joints made differ: beam.1 at 80 (post at 80).',
    )
    const piece = RICH_PLAN.runPieces[1]
    if (piece === undefined) throw new Error('no pieces')
    const more = {
      ...RICH_PLAN,
      runPieces: [...RICH_PLAN.runPieces, piece],
      joints: [...RICH_PLAN.joints, { ...first, at: 110 as Ticks, label: 'post at 110' }],
    }
    expect(said(more)).toContain(
      'joint list, Beam: Joints listed and joints made differ: beam.1 at 110 (post at 110).',
    )
  })

  it('have no piece under the least length', () => {
    const runs = RICH_JOB.runs.map((run) => ({ ...run, minPiece: 41 as Ticks }))
    expect(said(RICH_PLAN, { ...RICH_JOB, runs })).toContain(
      'piece too short, Course, course2: course2-1 is 40 long; the least is 41.',
    )
  })

  it('may be limited at a point that is not there', () => {
    const runs = RICH_JOB.runs.map((run) => ({ ...run, windows: [{ points: [0, 9], cap: 0 }] }))
    expect(said(RICH_PLAN, { ...RICH_JOB, runs })).toContain(
      'stagger, Beam, post at 50 and : 1 joints lie close together; 0 may.',
    )
  })
})

describe('orders', () => {
  it('meet the least count of a stock', () => {
    const stock = RICH_JOB.stock.map((option) => (option.id === 'mid' ? { ...option, minimum: 8 } : option))
    expect(said(RICH_PLAN, { ...RICH_JOB, stock })).toContain(
      'minimum, order, mid: At least 8 must be bought.',
    )
  })

  it('count no length of which nothing is bought', () => {
    const line = { stockId: 'never', length: 200 as Ticks, count: 0, price: 1 as Cents, amount: 0 as Cents }
    expect(rules({ ...RICH_PLAN, order: [...RICH_PLAN.order, line] })).not.toContain('too many lengths')
  })
})

describe('boards', () => {
  it('are good to their right trim only', () => {
    const boards = RICH_PLAN.boards.map((board) =>
      board.number === 8
        ? { ...board, cuts: board.cuts.map((cut) => ({ ...cut, from: 13 as Ticks, to: 83 as Ticks })) }
        : board,
    )
    expect(said({ ...RICH_PLAN, boards })).toContain(
      'board too short, board 8: The last piece ends at 83; the board is good to 82.',
    )
  })
})

describe('preferences', () => {
  it('weigh no joint at a point without a limit', () => {
    const runs = RICH_JOB.runs.map((run) => ({
      ...run,
      points: run.points.map((point) => (point.cap === null ? { ...point, excess: 9 as Cents } : point)),
    }))
    expect(rules(RICH_PLAN, { ...RICH_JOB, runs })).not.toContain('preference')
  })
})

describe('prices of a certificate', () => {
  const SIGN = 'bound, certificate: Its prices are not whole numbers of the right sign.'
  const LARGE = 'bound, certificate: Its prices are too large to be added exactly.'
  const withPrice = (price: number) => ({
    prices: RICH_PLAN.certificate.prices.map((entry, index) => (index === 3 ? { ...entry, price } : entry)),
  })

  it('are whole numbers of the right sign, of a scale of one or more', () => {
    expect(ofBound(withPrice(-1))).toEqual([SIGN])
    expect(ofBound(withPrice(0.5))).toEqual([SIGN])
    expect(ofBound(withPrice(2 ** 53))).toEqual([SIGN])
    expect(ofBound({ scale: 0 })).toEqual([SIGN])
    expect(ofBound({ scale: 1.5 })).toEqual([SIGN])
    expect(ofBound({ capPrices: [{ runId: 'beam', point: 0, price: 1, cap: 1 }] })).toEqual([SIGN])
    expect(ofBound({ scale: 1, prices: [], capPrices: [], dualBound: 0 as Cents })).toEqual([])
  })

  it('are backed by a hard limit, by a window over the point, and by no other', () => {
    const said = (entry: object, points: readonly number[], cap: number): boolean => {
      const runs = RICH_JOB.runs.map((run) => ({
        ...run,
        points: run.points.map((point) => (point.cap === null ? { ...point, excess: 9 as Cents } : point)),
        windows: [{ points, cap }],
      }))
      const capPrices = [{ runId: 'beam', point: 2, price: -8_000_000_000, cap: 0, ...entry }]
      const plan = { ...RICH_PLAN, certificate: { ...RICH_PLAN.certificate, capPrices } }
      return auditPlan({ ...RICH_JOB, runs }, plan).some(({ message }) =>
        message.includes('no rule of the job'),
      )
    }
    expect(said({}, [0, 1], 0)).toBe(true)
    expect(said({}, [1, 2], 0)).toBe(false)
    expect(said({ point: 0, cap: 1 }, [1], 9)).toBe(false)
    // a price above a limit that is not there
    expect(said({ runId: 'course', point: 0, cap: 1, price: -5 }, [1], 9)).toBe(true)
    expect(said({ runId: 'course', point: 0, cap: 2 }, [1], 9)).toBe(false)
  })

  it('prove no more than they prove where no search is recorded', () => {
    expect(ofBound({ search: null })).toEqual([
      'bound, certificate: 1557 cents are stated; the prices prove 1495 and no search is recorded.',
    ])
  })

  it('add up exactly', () => {
    expect(ofBound(withPrice(2 ** 53 - 1))).toEqual([LARGE])
    expect(ofBound({ scale: 2 ** 53 - 1, prices: [], capPrices: [] })).toEqual([LARGE])
  })

  it('are backed by a run of the job and a rule of it', () => {
    const unbacked = 'bound, certificate: A price of a limit on Beam has no rule of the job behind it.'
    const cap = (entry: object) =>
      ofBound({ capPrices: [{ runId: 'beam', point: 0, price: -1, cap: 1, ...entry }] })
    expect(cap({ point: 7 })).toEqual([unbacked])
    expect(cap({ cap: 0 })).toEqual([unbacked])
    expect(cap({ points: [0, 2], cap: 9 })).toEqual([unbacked])
    expect(cap({ points: [0, 1], cap: 1 })).toEqual([unbacked])
    // more than the stagger's own price
    expect(cap({ point: 2, cap: 0, price: -7_000_000_001 })).toEqual([unbacked])
  })
})

/** Boards of one stock with one piece of 10 each, and a price for that piece. */
function simple(stock: Partial<CutJob['stock'][number]>, more: Partial<CutJob>, price: number) {
  const option = { id: 's', length: 10 as Ticks, price: 10 as Cents, supply: null, offcut: false, ...stock }
  const job: CutJob = {
    ...RICH_JOB,
    kerf: 0 as Ticks,
    endTrim: 0 as Ticks,
    stock: [option],
    pieces: [1, 2, 3].map((k) => ({ id: `p${k}`, mark: `P${k}`, length: 10 as Ticks })),
    runs: [],
    handling: 0 as Cents,
    perCut: 0 as Cents,
    keep: null,
    ...more,
  }
  const faults = (dualBound: number): string[] =>
    said(
      {
        ...RICH_PLAN,
        certificate: {
          scale: 1,
          prices: [{ length: 10 as Ticks, price }],
          capPrices: [],
          search: null,
          dualBound: dualBound as Cents,
        },
        bound: 0 as Cents,
      },
      { ...job, onlyStock: ['s'] },
    ).filter((line) => line.startsWith('bound'))
  /** greatest bound that is accepted; null where none is */
  return {
    proven:
      Array.from({ length: 200 }, (_, k) => 100 - k).find((bound) => faults(bound).length === 0) ?? null,
    faults: faults(0),
  }
}

describe('the scale of prices', () => {
  const run = RICH_JOB.runs[0]
  const job: CutJob = {
    ...RICH_JOB,
    stock: [
      {
        id: 's',
        length: 200 as Ticks,
        price: 10 as Cents,
        supply: null,
        offcut: false,
        breaks: [{ from: 4, price: 12 as Cents }],
      },
    ],
    onlyStock: ['s'],
    handling: 5 as Cents,
    perCut: 0 as Cents,
    runs:
      run === undefined
        ? []
        : [
            {
              ...run,
              points: run.points.map((point) => ({ ...point, cost: 4 as Cents, excess: 3 as Cents })),
            },
          ],
  }
  const isTooLarge = (of: CutJob, scale: number): boolean => {
    const certificate = { ...RICH_PLAN.certificate, scale, prices: [], capPrices: [] }
    return said({ ...RICH_PLAN, certificate }, of).some((line) =>
      line.includes('too large to be added exactly'),
    )
  }

  it('leaves room for a board with its joint and its handling', () => {
    // 12 + (4 + 3) + 5
    expect(isTooLarge(job, Math.floor(Number.MAX_SAFE_INTEGER / 24))).toBe(false)
    expect(isTooLarge(job, Math.floor(Number.MAX_SAFE_INTEGER / 24) + 1)).toBe(true)
  })

  it('is a whole number at the most where nothing costs anything', () => {
    const free = {
      ...job,
      runs: [],
      handling: 0 as Cents,
      stock: job.stock.map(({ breaks: _none, ...option }) => ({ ...option, price: 0 as Cents })),
    }
    expect(isTooLarge(free, Number.MAX_SAFE_INTEGER)).toBe(false)
    const costly = { ...free, stock: free.stock.map((option) => ({ ...option, price: 2 as Cents })) }
    expect(isTooLarge(costly, Number.MAX_SAFE_INTEGER)).toBe(true)
    expect(isTooLarge(costly, 2 ** 52 - 1)).toBe(false)
  })
})

describe('the bound, by hand', () => {
  it('is what the pieces are worth where no board is worth more than it costs', () => {
    expect(simple({}, {}, 10).proven).toBe(30)
    expect(simple({}, {}, 7).proven).toBe(21)
  })

  it('is none where an endless board is worth more than it costs', () => {
    const message = 's is endless and worth more than it costs, so that the prices prove nothing.'
    expect(simple({}, {}, 11).faults).toEqual([`bound, certificate: ${message}`])
    expect(simple({ price: 3 as Cents }, { handling: 3 as Cents }, 7).faults).toHaveLength(1)
    expect(simple({ price: 3 as Cents }, { handling: 3 as Cents }, 6).proven).toBe(18)
  })

  it('loses what a limited board is worth above its cost, for each that there is', () => {
    // 3 × 12 − 2 × (12 − 10)
    expect(simple({ supply: 2 }, {}, 12).proven).toBe(32)
    expect(simple({ supply: 2 }, { atMost: [{ stockId: 's', count: 1 }] }, 12).proven).toBe(34)
  })

  it('counts no more free boards than there are pieces', () => {
    expect(simple({ price: 0 as Cents }, {}, 5).proven).toBe(0)
  })

  it('takes boards by the pack in the counts in which they come', () => {
    // 3 × 15, less 5 on each of the 4 that are the only count between the least of 3 and 3 pieces and a pack more
    expect(simple({ pack: 2, minimum: 3 }, {}, 15).proven).toBe(25)
    // from 4 they cost 8, and 6 are a pack more than there are pieces: 45 − 6 × 7
    expect(simple({ pack: 2, breaks: [{ from: 4, price: 8 as Cents }] }, {}, 15).proven).toBe(45 - 6 * 7)
    expect(simple({ pack: 2, supply: 2 }, {}, 15).proven).toBe(35)
    // handling is paid for each
    expect(simple({ pack: 2, supply: 2 }, { handling: 2 as Cents }, 15).proven).toBe(39)
  })

  it('spares the cut of a board that is used to its end', () => {
    // the piece needs no cut: 3 × 10 where the board is worth 10 − 1 + 1
    expect(simple({}, { perCut: 1 as Cents }, 10).proven).toBe(30)
    expect(simple({ length: 11 as Ticks }, { perCut: 1 as Cents }, 11).proven).toBe(33)
    expect(simple({ length: 11 as Ticks }, { perCut: 1 as Cents }, 12).faults).toHaveLength(1)
    // a trimmed board needs both
    const trimmed = { perCut: 1 as Cents, endTrim: 1 as Ticks }
    expect(simple({ length: 12 as Ticks }, trimmed, 12).proven).toBe(36)
    expect(simple({ length: 12 as Ticks }, trimmed, 13).faults).toHaveLength(1)
  })

  it('spares the worth of an offcut that is kept', () => {
    const keep = { from: 4 as Ticks, centsPerFoot: 384 }
    // 4 of 14 are left, worth 4 cents, never more than the board
    expect(simple({ length: 14 as Ticks }, { keep }, 6).proven).toBe(18)
    expect(simple({ length: 14 as Ticks }, { keep }, 7).faults).toHaveLength(1)
    expect(simple({ length: 13 as Ticks }, { keep }, 10).proven).toBe(30)
    expect(simple({ length: 18 as Ticks, price: 3 as Cents }, { keep }, 0).proven).toBe(0)
  })

  it('has a run go the cheapest way that its rules and the boards leave', () => {
    const run = {
      id: 'r',
      label: 'r',
      members: [{ id: 'm', mark: 'm' }],
      length: 10 as Ticks,
      points: [],
      supports: [],
      minSupports: 0,
      minPiece: 0 as Ticks,
      maxJoints: null,
      neighboursApart: false,
    }
    // in one piece just as long as the board
    expect(simple({}, { pieces: [], runs: [run] }, 10).proven).toBe(10)
    const point = { at: 10 as Ticks, label: 'x', cost: 4 as Cents, lap: 0 as Ticks, cap: null, excess: null }
    // 20 long in two pieces of 10 with a joint of 4
    const two = { ...run, length: 20 as Ticks, points: [point] }
    expect(simple({}, { pieces: [], runs: [two] }, 10).proven).toBe(24)
    expect(simple({}, { pieces: [], runs: [{ ...two, minPiece: 10 as Ticks }] }, 10).proven).toBe(24)
  })
})
