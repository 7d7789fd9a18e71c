import { describe, expect, it } from 'vitest'
import { type SpareClass, type SpareLength, sparesFor } from '../../../core/cutting/spares/index.ts'
import { cents, feet, share } from '../../../core/units/index.ts'

const length = (ft: number, needed: number, price: number, more: Partial<SpareLength> = {}): SpareLength => ({
  stockId: `${ft}`,
  length: feet(ft),
  needed,
  price: cents(price),
  step: 1,
  most: null,
  ...more,
})
const one = (...lengths: SpareLength[]): SpareClass => ({ classId: 'joists', lengths })
const counts = (classes: readonly SpareClass[], unusable: number, target: number): Record<string, number> =>
  Object.fromEntries(
    sparesFor(classes, share(unusable * 100), share(target * 100)).lines.map((line) => [
      `${line.classId} ${line.stockId}`,
      line.count,
    ]),
  )

/** Numbers in 0 … 1 from a seed; Lehmer's generator with the multiplier 48271 (Park, Miller and Stockmeyer 1993). */
function numbersFrom(seed: number): () => number {
  let state = seed
  return () => {
    state = (state * 48_271) % 2_147_483_647
    return state / 2_147_483_647
  }
}

/** Share of days without a second trip, by throwing each board and letting the longest good ones stand in. */
function simulate(
  classes: readonly SpareClass[],
  spares: ReadonlyMap<string, number>,
  unusable: number,
  days: number,
): number {
  const next = numbersFrom(20_211)
  let fine = 0
  for (let day = 0; day < days; day++) {
    const finished = classes.every(({ classId, lengths }) => {
      const good: number[] = []
      const needs: number[] = []
      for (const { stockId, length: long, needed } of lengths) {
        for (let k = 0; k < needed + (spares.get(`${classId} ${stockId}`) ?? 0); k++)
          if (next() >= unusable) good.push(long)
        for (let k = 0; k < needed; k++) needs.push(long)
      }
      good.sort((a, b) => b - a)
      needs.sort((a, b) => b - a)
      return needs.every((need, k) => (good[k] ?? 0) >= need)
    })
    if (finished) fine++
  }
  return fine / days
}

describe('spare boards', () => {
  it('are none where no board is unusable', () => {
    expect(sparesFor([one(length(12, 20, 900))], share(0), share(9500))).toMatchObject({
      lines: [],
      cost: 0,
      probability: 10_000,
      without: 10_000,
      reached: true,
      proven: true,
    })
  })

  it('follow the binomial distribution where one length is bought', () => {
    // 10 boards at 10 %: 0.9^10 = 34.86 %. Of 11 at most 1 bad: 0.9^11 + 11·0.1·0.9^10 = 69.73 %. Of 12 at most 2
    // bad: 88.91 %. Of 13 at most 3 bad: 96.58 %. By hand, from the binomial terms.
    const class10 = [one(length(12, 10, 900))]
    expect(sparesFor(class10, share(1000), share(3400))).toMatchObject({ lines: [], without: 3486 })
    expect(sparesFor(class10, share(1000), share(6900))).toMatchObject({ probability: 6973, cost: 900 })
    expect(sparesFor(class10, share(1000), share(8800))).toMatchObject({ probability: 8891, cost: 1800 })
    expect(sparesFor(class10, share(1000), share(9500))).toMatchObject({ probability: 9658, cost: 2700 })
  })

  it('are long boards where one long spare serves two lengths, and short ones where those are far cheaper', () => {
    // one 12 and one 16, 10 % each: 81 %. One spare 16 covers one bad board of either: 0.9·0.9·(1 + 2·0.1) = 97.2 %.
    // at 97 % one 16 is enough; a spare 12 alone gives (1 − 0.01)·0.9 = 89.1 %, which is enough at 89 %.
    const two = [one(length(12, 1, 500), length(16, 1, 900))]
    expect(counts(two, 10, 97)).toEqual({ 'joists 16': 1 })
    expect(sparesFor(two, share(1000), share(9700)).probability).toBe(9720)
    expect(counts(two, 10, 89)).toEqual({ 'joists 12': 1 })
    expect(sparesFor(two, share(1000), share(8900)).probability).toBe(8910)
  })

  it('may be of a length that the plan does not use', () => {
    expect(counts([one(length(10, 5, 1200), length(12, 0, 1000))], 5, 95)).toEqual({ 'joists 12': 1 })
  })

  it('share one probability among all classes', () => {
    const beams: SpareClass = { classId: 'beams', lengths: [length(16, 2, 4000)] }
    const both = sparesFor([one(length(12, 10, 900)), beams], share(200), share(9500))
    expect(both.reached && both.proven).toBe(true)
    expect(both.probability).toBeGreaterThanOrEqual(9500)
    // beams alone: 0.98² = 96.04 %; joists then need 98.9 %: of 11 at most 1 bad 98.05 %, of 12 at most 2 99.85 %
    expect(both.lines.map((line) => `${line.classId} ${line.count}`)).toEqual(['joists 2'])
    expect(both.cost).toBe(1800)
  })

  it('keep to packs and to what the yard has, and say when that is not enough', () => {
    expect(counts([one(length(12, 10, 900, { step: 4 }))], 10, 95)).toEqual({ 'joists 12': 4 })
    const few = sparesFor([one(length(12, 10, 900, { most: 1 }))], share(1000), share(9500))
    expect(few).toMatchObject({ reached: false, probability: 6973, cost: 900 })
  })

  it('cost the least of all choices that reach the probability, by trying them all', () => {
    const next = numbersFrom(7)
    const pick = (n: number): number => Math.floor(next() * n)
    for (let round = 0; round < 60; round++) {
      const lengths = [8, 12, 16].map((ft) => length(ft, pick(5), 300 + pick(900)))
      if (lengths.every(({ needed }) => needed === 0)) continue
      const unusable = 200 + pick(1500)
      const target = 8000 + pick(1900)
      const found = sparesFor([one(...lengths)], share(unusable), share(target))
      let least = Number.POSITIVE_INFINITY
      for (let a = 0; a <= 7; a++) {
        for (let b = 0; b <= 7; b++) {
          for (let c = 0; c <= 7; c++) {
            const spares = [a, b, c]
            const cost = spares.reduce((sum, n, k) => sum + n * (lengths[k]?.price ?? 0), 0)
            if (cost < least && exactChance(lengths, spares, unusable / 10_000) >= target / 10_000)
              least = cost
          }
        }
      }
      expect(found.proven).toBe(true)
      expect(found.cost).toBe(least)
    }
  })

  it('keep their promise in forty thousand simulated days', () => {
    const classes = [
      one(length(8, 6, 600), length(12, 14, 900), length(16, 9, 1500)),
      { classId: 'beams', lengths: [length(12, 2, 2500), length(20, 4, 5200)] },
    ]
    const found = sparesFor(classes, share(400), share(9000))
    const spares = new Map(found.lines.map((line) => [`${line.classId} ${line.stockId}`, line.count]))
    const seen = simulate(classes, spares, 0.04, 40_000)
    // three standard errors in 40,000 days: 0.45 % of a share near 0.9, 0.75 % of one half
    expect(Math.abs(seen - found.probability / 10_000)).toBeLessThan(0.0045)
    expect(Math.abs(simulate(classes, new Map(), 0.04, 40_000) - found.without / 10_000)).toBeLessThan(0.0075)
  })
})

/** Sum over every number of bad boards of each of three lengths, shortest first. */
function exactChance(lengths: readonly SpareLength[], spares: readonly number[], p: number): number {
  const term = (k: number, bad: number): number => {
    const boards = (lengths[k]?.needed ?? 0) + (spares[k] ?? 0)
    let choose = 1
    for (let i = 0; i < bad; i++) choose = (choose * (boards - i)) / (i + 1)
    return choose * p ** bad * (1 - p) ** (boards - bad)
  }
  const boards = (k: number): number => (lengths[k]?.needed ?? 0) + (spares[k] ?? 0)
  let sum = 0
  for (let c = 0; c <= (spares[2] ?? 0); c++) {
    for (let b = 0; b <= boards(1); b++) {
      for (let a = 0; a <= boards(0); a++) {
        const over = [0, 1, 2].map((k) => (spares[k] ?? 0) - ([a, b, c][k] ?? 0))
        const fine =
          (over[2] ?? 0) >= 0 && (over[2] ?? 0) + (over[1] ?? 0) >= 0 && over.reduce((x, y) => x + y, 0) >= 0
        if (fine) sum += term(0, a) * term(1, b) * term(2, c)
      }
    }
  }
  return sum
}
