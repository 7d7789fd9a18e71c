import { describe, expect, it } from 'vitest'
import type { CodeLimit, CodeTable, TableEntry } from '../../core/data/index.ts'
import * as data from '../../core/data/index.ts'
import { lookUpRow } from '../../core/rules/index.ts'

/**
 * The closing test of the data: every table, page, row and cell is reached by a look-up that meets it exactly, the one
 * before it is safer than the one after it on every axis that is taken to a side, and every figure names its source.
 */
const tables = Object.values(data).filter((value): value is CodeTable => isTable(value))
const limits = Object.values(data.IRC_LIMITS) as readonly CodeLimit[]

function isTable(value: unknown): value is CodeTable {
  return typeof value === 'object' && value !== null && 'blocks' in value && 'columnAxis' in value
}

function cellsOf(
  table: CodeTable,
): readonly { at: readonly TableEntry[]; row: TableEntry; column: TableEntry; value: number | null }[] {
  return table.blocks.flatMap((block) =>
    table.rowAxis.entries.flatMap((row) =>
      table.columnAxis.entries.map((column, i) => {
        const value = block.rows[String(row)]?.[i]
        if (value === undefined) throw new Error(`${table.id} lacks ${row}, ${column}`)
        return { at: block.at, row, column, value }
      }),
    ),
  )
}

describe.each(tables.map((table) => [table.id, table] as const))('%s', (_id, table) => {
  it('gives back each of its cells, exactly met', () => {
    for (const { at, row, column, value } of cellsOf(table)) {
      const found = lookUpRow(table, { at, row, column })
      expect(found).toMatchObject({ kind: 'row', value, row, column, at, exact: true })
    }
  })

  it('has as many rows and columns as its axes, in order, and no page twice', () => {
    for (const axis of [...table.blockAxes, table.rowAxis, table.columnAxis]) {
      const numbers = axis.entries.filter((entry) => typeof entry === 'number')
      expect(numbers).toEqual([...numbers].sort((a, b) => a - b))
      expect(new Set(axis.entries).size).toBe(axis.entries.length)
      expect(axis.safeSide === 'exact' || numbers.length === axis.entries.length).toBe(true)
    }
    for (const block of table.blocks) {
      expect(Object.keys(block.rows).sort()).toEqual(table.rowAxis.entries.map(String).sort())
      for (const cells of Object.values(block.rows))
        expect(cells.length).toBe(table.columnAxis.entries.length)
    }
    const pages = table.blocks.map((block) => block.at.join('|'))
    expect(new Set(pages).size).toBe(pages.length)
  })

  it('never allows more, nor asks for less, on the safe side of an axis', () => {
    // cells that are allowed (spans, heights) fall, cells that are asked for (footings) rise
    const asked = table.id.includes('footing')
    for (const block of table.blocks) {
      for (const cells of Object.values(block.rows)) {
        if (table.columnAxis.safeSide === 'up') expectOrder(cells, asked ? 1 : -1)
        if (table.columnAxis.safeSide === 'down') expectOrder([...cells].reverse(), asked ? 1 : -1)
      }
      if (table.rowAxis.safeSide !== 'up') continue
      for (const [i] of table.columnAxis.entries.entries()) {
        expectOrder(
          table.rowAxis.entries.map((row) => block.rows[String(row)]?.[i] ?? null),
          asked ? 1 : -1,
        )
      }
    }
  })

  it('names the source of every page and every doubt', () => {
    for (const block of table.blocks) {
      for (const source of [block.source, ...(block.doubts ?? []).map((doubt) => doubt.source)]) {
        for (const part of [source.document, source.edition, source.clause, source.note])
          expect(part).not.toBe('')
      }
      for (const doubt of block.doubts ?? []) {
        expect(lookUpRow(table, { at: block.at, row: doubt.row, column: doubt.column })).toMatchObject({
          source: doubt.source,
        })
      }
    }
  })
})

function expectOrder(cells: readonly (number | null)[], direction: 1 | -1): void {
  for (const [i, cell] of cells.slice(1).entries()) {
    expect(((cell ?? 0) - (cells[i] ?? 0)) * direction).toBeGreaterThanOrEqual(0)
  }
}

describe('the span tables page by page', () => {
  it('allow no longer a span under a greater load', () => {
    const { entries } = data.JOIST_SPANS.rowAxis
    for (const group of ['SP', 'DF_HF_SPF', 'RW_WC_PP_RP']) {
      for (const row of entries) {
        for (const column of data.JOIST_SPANS.columnAxis.entries) {
          const spans = [40, 50, 60, 70].map((load) => {
            const found = lookUpRow(data.JOIST_SPANS, { at: [load, group], row, column })
            return found.kind === 'row' ? found.value : null
          })
          expectOrder(spans, -1)
        }
      }
    }
  })
})

describe('single limits', () => {
  it.each(limits.map((limit) => [limit.id, limit] as const))(
    '%s has a source, a clause and a sentence',
    (id, limit) => {
      expect(id).toMatch(/^irc-2021\//)
      expect(limit.value).toBeGreaterThan(0)
      for (const part of [limit.says, limit.source.clause, limit.source.note]) expect(part).not.toBe('')
    },
  )

  it('are told apart by their ids', () => {
    expect(new Set(limits.map((limit) => limit.id)).size).toBe(limits.length)
  })
})

describe('the data as a whole', () => {
  it('holds the tables that the checks look up', () => {
    expect(tables.map((table) => table.id).sort()).toEqual([
      'dca-6/beam-spans',
      'dca-6/footing-rounds',
      'dca-6/footing-thicknesses',
      'dca-6/joist-overhangs',
      'dca-6/post-heights',
      'irc-2021/beam-spans',
      'irc-2021/decking-spans',
      'irc-2021/footing-rounds',
      'irc-2021/footing-squares',
      'irc-2021/footing-thicknesses',
      'irc-2021/joist-cantilevers',
      'irc-2021/joist-spans',
      'irc-2021/ledger-spacing',
      'irc-2021/post-heights',
    ])
  })

  it('knows what soils carry, the poorest least', () => {
    const bearings = data.SOIL_BEARING.rows.map((row) => row.psf)
    expect(bearings).toEqual([1500, 2000, 3000, 4000])
    expect(data.SOIL_BEARING.source.clause).toBe('Table R401.4.1')
  })
})
