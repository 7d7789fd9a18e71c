import { describe, expect, it } from 'vitest'
import { compareWidths, explainRows } from '../../../core/compare/index.ts'
import * as papers from '../../../core/papers/index.ts'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { feet, inches, parseMoney } from '../../../core/units/index.ts'
import { engine, estimateOf } from '../../fixtures/engine.ts'
import { smallJob } from '../../fixtures/worked-job.ts'

const estimate = estimateOf(smallJob('12 ft'), SAMPLE_BOOK)
const owner = estimateOf(smallJob('11 ft 10 in', { builder: 'owner' }), SAMPLE_BOOK)
const unpriced = { ...estimate, pricing: null }

const moneyOf = (rows: readonly { readonly [key: string]: string }[], key: string) =>
  rows.reduce((sum, row) => {
    const read = parseMoney(row[key] ?? '')
    return read.ok ? sum + read.value : sum
  }, 0)

describe('tables of the papers', () => {
  it('have a cell for every column in every row', () => {
    const tables = [
      papers.memberSchedule(estimate),
      papers.orderTable(estimate),
      papers.cuttingTable(estimate),
      papers.hardwareTable(estimate, SAMPLE_BOOK.goods),
      papers.hoursTable(estimate),
      papers.costTable(estimate),
      papers.checksTable(estimate),
      papers.summaryTable(estimate),
    ]
    for (const table of tables) {
      expect(table.rows.length).toBeGreaterThan(0)
      for (const row of table.rows) {
        expect(Object.keys(row).sort()).toEqual(table.columns.map((column) => column.key).sort())
      }
    }
  })

  it('list every member once', () => {
    const counts = papers.memberSchedule(estimate).rows.map((row) => Number(row.count))
    expect(counts.reduce((a, b) => a + b, 0)).toBe(estimate.frame.members.length)
  })

  it('order what the cutting plans buy, to the cent', () => {
    expect(moneyOf(papers.orderTable(estimate).rows, 'amount')).toBe(
      estimate.plans.reduce((sum, { plan }) => sum + plan.stockCost, 0),
    )
  })

  it('order and cost what is stated by hand in the place of what was computed, and say so', () => {
    const board = estimate.plans[0]?.plan.order[0]
    if (board === undefined) throw new Error('boards are ordered')
    const lines = `lumber-${board.stockId}: ${board.count + 2} at $9.0001; good-joist-hanger-2x8: 1; good-gone: 2`
    const stated = estimateOf(smallJob('12 ft', { pricing: { lines } }), SAMPLE_BOOK)
    const ordered = papers.orderTable(stated).rows.find(({ code }) => code === board.stockId)
    expect(ordered).toMatchObject({ count: `${board.count + 2}`, price: '$9.0001' })
    expect(ordered?.product).toContain(`quantity stated, ${board.count} computed`)
    const { rows } = papers.costTable(stated)
    expect(rows.find(({ label }) => label?.includes(`${board.count} computed`))?.amount).toBe(ordered?.amount)
    const hangers = papers.hardwareTable(stated, SAMPLE_BOOK.goods).rows.find(({ code }) => code === '51008')
    expect(hangers?.bought).toBe('1')
    expect(hangers?.over).toBe(`${Number(hangers?.needed) - 1} short`)
  })

  it('give every board of the plan a row, with the marks of its pieces', () => {
    const { rows } = papers.cuttingTable(estimate)
    expect(rows).toHaveLength(estimate.plans.reduce((sum, { plan }) => sum + plan.boards.length, 0))
    const joists = estimate.frame.members.filter((member) => member.role === 'joist')
    const all = rows.map((row) => row.pieces).join(' + ')
    for (const { mark } of joists) expect(all).toMatch(new RegExp(`\\b${mark} `))
  })

  it('print cost lines that sum to the printed direct cost', () => {
    const { rows } = papers.costTable(estimate)
    const first = rows.findIndex((row) => row.label === 'Materials')
    const lines = moneyOf(rows.slice(0, first), 'amount')
    const tax = estimate.pricing?.totals.tax ?? 0
    expect(lines + tax).toBe(estimate.pricing?.totals.direct)
    expect(rows.some((row) => row.label === 'Price: margin 30 %')).toBe(true)
  })

  it('show an owner no price, margin or overhead', () => {
    const labels = papers.costTable(owner).rows.map((row) => row.label)
    expect(labels.some((label) => /^(Price|Overhead)/.test(label ?? ''))).toBe(false)
    expect(labels).toContain('Cost per square foot')
  })

  it('say what of a pack is left over', () => {
    const flashing = papers
      .hardwareTable(estimate, SAMPLE_BOOK.goods)
      .rows.find((row) => row.label?.includes('flashing'))
    // 11 ft 9 in of ledger from two 10 ft pieces
    expect(flashing).toMatchObject({ needed: '11.75', bought: '20', over: '8.25', unit: 'foot' })
  })

  it('tell clock hours from paid hours', () => {
    const closing = papers.hoursTable(estimate).rows.at(-1)
    expect(closing?.label).toContain('clock hours of the crew')
    expect(Number(closing?.workerHours)).toBeCloseTo((estimate.pricing?.totals.workerHours ?? 0) / 100, 2)
  })

  it('stay empty of money where there is no price, and say so in the summary', () => {
    expect(papers.costTable(unpriced).rows).toEqual([])
    expect(papers.summaryTable(unpriced).rows.some((row) => row.value?.startsWith('Not known'))).toBe(true)
  })

  it('set widths side by side with why they differ', () => {
    const rows = [
      ...compareWidths(smallJob(), SAMPLE_BOOK, engine, { from: feet(11), to: feet(12), step: inches(6) }),
    ]
    const table = papers.compareTable(explainRows(rows))
    expect(table.rows.map((row) => row.width)).toEqual(['11\'-0"', '11\'-6"', '12\'-0"'])
    expect(table.rows[2]?.why).not.toBe('')
  })
})
