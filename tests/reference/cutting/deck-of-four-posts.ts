import type { CutJob, FixedPiece, JointPoint, RunGroup, StockOption } from '../../../core/cutting/index.ts'
import { type Cents, feet, inches, nearestSixteenth, type Ticks, ticks } from '../../../core/units/index.ts'

/**
 * The cutting jobs of a rectangular deck 13 ft 6 in deep with joists at 16 in and four posts, by the rules and the
 * invented prices of the project's worked example: every length derived by hand below, none by the program.
 */
type Prices = Readonly<Record<number, number>>

const PRICES = {
  '2x10': { 6: 899, 8: 1142, 10: 1475, 12: 1748, 14: 2072, 16: 2349, 18: 2847, 20: 3215, 22: 4312, 24: 4896 },
  '2x12': {
    6: 1190,
    8: 1499,
    10: 1931,
    12: 2288,
    14: 2705,
    16: 3074,
    18: 3749,
    20: 4219,
    22: 5640,
    24: 6390,
  },
  '6x6': { 8: 3975, 10: 4985, 12: 5960 },
  '5/4x6': { 8: 1056, 10: 1320, 12: 1572, 14: 1848, 16: 2096, 20: 2790 },
} as const satisfies Readonly<Record<string, Prices>>

export type DeckClass = keyof typeof PRICES

const DEPTH = 162
const COURSES = 29

function stockOf(prices: Prices): StockOption[] {
  return Object.entries(prices).map(([length, price]) => ({
    id: `${length} ft`,
    length: feet(Number(length)),
    price: price as Cents,
    supply: null,
    offcut: false,
  }))
}

function fixed(name: string, length: Ticks, count: number): FixedPiece[] {
  return Array.from({ length: count }, (_, k) => ({ id: `${name}${k + 1}`, mark: `${name}${k + 1}`, length }))
}

function point(at: Ticks, cost: number, cap: number | null): JointPoint {
  return { at, label: `at ${at / 32} in`, cost: cost as Cents, lap: ticks(0), cap, excess: null }
}

function run(
  name: string,
  count: number,
  length: Ticks,
  points: JointPoint[],
  more: Partial<RunGroup> = {},
): RunGroup {
  return {
    id: name,
    label: name,
    members: Array.from({ length: count }, (_, k) => ({ id: `${name}.${k + 1}`, mark: `${name}${k + 1}` })),
    length,
    points,
    supports: [],
    minSupports: 0,
    minPiece: ticks(0),
    maxJoints: null,
    neighboursApart: false,
    ...more,
  }
}

/** The job of one product class for a deck `width` inches wide. */
export function deckJob(product: DeckClass, width: number): CutJob {
  return {
    id: `${product} at ${width}`,
    label: product,
    kerf: ticks(4),
    endTrim: ticks(0),
    stock: stockOf(PRICES[product]),
    ...contentOf(product, width),
    handling: 0 as Cents,
    perCut: 0 as Cents,
    keep: null,
    objectives: ['least cost'],
  }
}

function contentOf(product: DeckClass, width: number): Pick<CutJob, 'pieces' | 'runs'> {
  const joists: number[] = []
  for (let at = 16; at < width - 0.75; at += 16) joists.push(at)
  const last = joists.at(-1) ?? 0
  switch (product) {
    case '2x10': {
      const pieces = [
        ...fixed('joist', inches(DEPTH - 3), joists.length),
        ...fixed('end joist', inches(DEPTH - 1.5), 2),
        ...fixed('first block', inches(16 - 0.75 - 1.5), 1),
        ...fixed('block', inches(14.5), joists.length - 1),
        ...fixed('last block', inches(width - 0.75 - last - 1.5), 1),
      ]
      // two whole bays on either side: the first joint lies between the second joist and the third
      const bays = joists.slice(1, -2).map((at) => at + 8)
      const ledger = run(
        'ledger',
        1,
        inches(width - 3),
        bays.map((at) => point(inches(at - 1.5), 300, null)),
      )
      const rim = run(
        'rim',
        1,
        inches(width),
        joists.map((at) => point(inches(at), 450, null)),
      )
      return { pieces, runs: [ledger, rim] }
    }
    case '2x12': {
      const posts = [1, 2].map((k) => nearestSixteenth((12 + ((width - 24) * k) / 3) * 32))
      const beam = run(
        'beam',
        2,
        inches(width),
        posts.map((at) => point(at, 850, 1)),
      )
      return { pieces: [], runs: [beam] }
    }
    case '6x6':
      // 20 5/8 in each and 3 in of order allowance
      return { pieces: fixed('post', inches(23.625), 4), runs: [] }
    case '5/4x6': {
      const supports = [0.75, ...joists, width - 0.75].map((at) => inches(at + 1))
      const courses = run(
        'decking',
        COURSES,
        inches(width + 2),
        joists.map((at) => point(inches(at + 1), 150, null)),
        { supports, minSupports: 3, neighboursApart: true },
      )
      return { pieces: [], runs: [courses] }
    }
  }
}
