import { describe, expect, it } from 'vitest'
import {
  bestNeighbours,
  type CompareRow,
  compareWidths,
  exactFitWidths,
  explainRows,
  neighbourMessage,
} from '../../../core/compare/index.ts'
import { design } from '../../../core/estimate.ts'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { feet, inches, type Ticks, ticks } from '../../../core/units/index.ts'
import { engine, estimateOf } from '../../fixtures/engine.ts'
import { smallJob } from '../../fixtures/worked-job.ts'

const range = { from: feet(11), to: feet(13), step: inches(6) }
const rows = [...compareWidths(smallJob('12 ft'), SAMPLE_BOOK, engine, range)]
const rowAt = (width: Ticks, from: readonly CompareRow[] = rows) => from.find((row) => row.width === width)

describe('widths compared', () => {
  it('come nearest to the deck’s own width first, the narrower of two first', () => {
    expect(rows.map((row) => row.width / 384)).toEqual([12, 11.5, 12.5, 11, 13])
  })

  it('cost what the whole estimate of that width costs', () => {
    for (const width of ['11 ft 6 in', '13 ft']) {
      const { pricing, plans, fit } = estimateOf(smallJob(width), SAMPLE_BOOK)
      const row = rowAt(width === '13 ft' ? feet(13) : ticks(11.5 * 384))
      expect(row).toMatchObject({
        cost: pricing?.totals.cost,
        price: pricing?.totals.price,
        perSquareFoot: pricing?.totals.perSquareFoot,
        lumber: plans.reduce((sum, { plan }) => sum + plan.cost, 0),
        boards: plans.reduce((sum, { plan }) => sum + plan.boards.length, 0),
        fitsStock: fit.fitsStock,
        fitsWithDecking: fit.fitsWithDecking,
        fault: null,
      })
    }
  })

  it('are made of parts that sum to the cost', () => {
    for (const row of rows) expect(row.parts.reduce((sum, part) => sum + part.amount, 0)).toBe(row.cost)
  })

  it('differ by changes that sum to the difference, the largest first', () => {
    const explained = explainRows(rows)
    explained.forEach((row, i) => {
      const before = explained[i - 1]
      if (before === undefined) return
      expect(row.changes.reduce((sum, { change }) => sum + change, 0)).toBe(row.cost - before.cost)
      const sizes = row.changes.map(({ change }) => Math.abs(change))
      expect(sizes).toEqual([...sizes].sort((a, b) => b - a))
    })
  })

  it('say why a width cannot be framed, and go on', () => {
    const wide = [
      ...compareWidths(smallJob('12 ft'), SAMPLE_BOOK, engine, {
        from: feet(2),
        to: feet(12),
        step: feet(5),
      }),
    ]
    expect(rowAt(feet(2), wide)?.fault).not.toBeNull()
    expect(rowAt(feet(12), wide)?.fault).toBeNull()
    expect(explainRows(wide).map((row) => row.changes.length > 0)).toEqual([false, false, true])
  })

  it('come quickly first where asked for, and once more with the proof where it was not there yet', () => {
    const options = { quickFirst: true }
    const twice = [...compareWidths(smallJob('12 ft'), SAMPLE_BOOK, engine, range, options)]
    const first = twice.slice(0, rows.length)
    expect(first.map((row) => row.width)).toEqual(rows.map((row) => row.width))
    const open = first.filter((row) => !row.proven)
    expect(twice.slice(rows.length).map((row) => row.width)).toEqual(open.map((row) => row.width))
    for (const row of first) {
      const least = rowAt(row.width)?.lumber ?? 0
      expect(row.lumber).toBeGreaterThanOrEqual(least)
      expect(row.bound).toBeLessThanOrEqual(least)
    }
    expect(explainRows(twice).map((row) => row.lumber)).toEqual(explainRows(rows).map((row) => row.lumber))
    expect(twice.slice(rows.length).every((row) => row.proven)).toBe(true)
  })

  it('are none for a job that is not valid', () => {
    expect([...compareWidths({ version: 1, size: 4 }, SAMPLE_BOOK, engine, range)]).toEqual([])
  })

  it('refuse a step that leads nowhere', () => {
    expect(() => [...compareWidths(smallJob(), SAMPLE_BOOK, engine, { ...range, step: ticks(0) })]).toThrow(
      RangeError,
    )
  })
})

describe('widths that fit stock exactly', () => {
  it('are those at which a rim, a ledger or a course is as long as a board', () => {
    const made = design(smallJob('12 ft'))
    if (!made.ok) throw new Error(JSON.stringify(made.error))
    const widths = exactFitWidths(made.value, SAMPLE_BOOK)
    expect(widths).toContain(feet(12))
    expect(widths).toContain(feet(12) + inches(3))
    expect(widths).toContain(feet(12) - inches(2))
  })

  it('stand among the compared ones where asked for', () => {
    const narrow = { from: ticks(feet(12) - inches(3)), to: feet(12), step: inches(3), exactFits: true }
    const widths = [...compareWidths(smallJob('12 ft'), SAMPLE_BOOK, engine, narrow)].map((row) => row.width)
    expect(widths).toEqual([feet(12), feet(12) - inches(2), feet(12) - inches(3)])
  })

  it('make the bargain beside a deck findable: two inches narrower, every course comes whole', () => {
    const near = { from: feet(11), to: feet(13), step: inches(6), exactFits: true }
    const compared = explainRows([...compareWidths(smallJob('12 ft'), SAMPLE_BOOK, engine, near)])
    const own = rowAt(feet(12), compared) as CompareRow
    const narrower = bestNeighbours(compared, own).find((one) => one.width < own.width) as CompareRow
    expect(narrower.width).toBe(feet(12) - inches(2))
    expect(neighbourMessage(narrower, own)).toMatch(
      /^2" narrower, 11'-10": saves \$.*every run and course then comes whole/,
    )
  })
})
