import { describe, expect, it } from 'vitest'
import type { CodeTable } from '../../../core/data/index.ts'
import { lookUpRow } from '../../../core/rules/index.ts'

const SOURCE = { document: 'Invented', edition: '1', clause: 'T', confidence: 'verified', note: '' } as const

const loads = { name: 'load', unit: 'psf', entries: [40, 60], safeSide: 'up' } as const

/** An invented table with every kind of axis. */
function table(
  rowSide: 'up' | 'down' | 'lesser of neighbours',
  columnSide: 'up' | 'down' | 'lesser of neighbours',
): CodeTable {
  return {
    id: 'invented',
    title: 'Invented table',
    unit: 'in',
    blockAxes: [loads],
    rowAxis: { name: 'area', unit: 'sq ft', entries: [10, 20, 30], safeSide: rowSide },
    columnAxis: { name: 'span', unit: 'ft', entries: [6, 8, 10], safeSide: columnSide },
    blocks: [
      {
        at: [40],
        source: SOURCE,
        rows: { 10: [1, 2, 3], 20: [4, 5, 6], 30: [7, 2, null] },
        doubts: [{ row: 20, column: 8, source: { ...SOURCE, confidence: 'from memory' } }],
      },
    ],
  }
}

describe('looking a table up', () => {
  it('says "exact" where every axis is met', () => {
    expect(lookUpRow(table('up', 'up'), { at: [40], row: 10, column: 10 })).toMatchObject({
      value: 3,
      row: 10,
      column: 10,
      exact: true,
      sentence: 'load 40 psf, area 10 sq ft row, span 10 ft column',
    })
  })

  it('takes an axis up, and says from what', () => {
    const found = lookUpRow(table('up', 'up'), { at: [40], row: 10.5, column: 6.01 })
    expect(found).toMatchObject({ value: 5, exact: false })
    expect(found.sentence).toBe(
      'load 40 psf, area 20 sq ft row (taken up from 10.5), span 8 ft column (taken up from 6.01)',
    )
  })

  it('takes an axis down, and says from what', () => {
    const found = lookUpRow(table('down', 'down'), { at: [40], row: 29, column: 9 })
    expect(found).toMatchObject({ value: 5, exact: false })
    expect(found.sentence).toContain('area 20 sq ft row (taken down from 29)')
  })

  it('takes the lesser of the neighbours, on either side', () => {
    expect(lookUpRow(table('up', 'lesser of neighbours'), { at: [40], row: 20, column: 7 })).toMatchObject({
      value: 4,
      column: 6,
    })
    expect(lookUpRow(table('up', 'lesser of neighbours'), { at: [40], row: 30, column: 7 })).toMatchObject({
      value: 2,
      column: 8,
    })
  })

  it('holds "not permitted" for less than any number', () => {
    expect(lookUpRow(table('up', 'lesser of neighbours'), { at: [40], row: 30, column: 9 })).toMatchObject({
      value: null,
      column: 10,
    })
  })

  it('takes a value under the first entry up to it, where that is safe', () => {
    expect(lookUpRow(table('up', 'up'), { at: [40], row: 1, column: 1 })).toMatchObject({
      value: 1,
      exact: false,
    })
    expect(lookUpRow(table('up', 'lesser of neighbours'), { at: [40], row: 10, column: 1 })).toMatchObject({
      value: 1,
    })
  })

  it('is outside beyond the far end of an axis', () => {
    expect(lookUpRow(table('up', 'up'), { at: [40], row: 31, column: 6 })).toMatchObject({ kind: 'outside' })
    expect(lookUpRow(table('up', 'up'), { at: [40], row: 10, column: 11 })).toMatchObject({
      kind: 'outside',
      sentence: 'Invented table: no entry for span 11 ft',
    })
    expect(lookUpRow(table('down', 'up'), { at: [40], row: 9, column: 6 })).toMatchObject({ kind: 'outside' })
  })

  it('is outside where a page is missing, and for what is no number', () => {
    expect(lookUpRow(table('up', 'up'), { at: [50], row: 10, column: 6 })).toMatchObject({ kind: 'outside' })
    expect(lookUpRow(table('up', 'up'), { at: [Number.NaN], row: 10, column: 6 })).toMatchObject({
      kind: 'outside',
    })
    expect(lookUpRow(table('up', 'up'), { at: [40], row: 'x', column: 6 })).toMatchObject({ kind: 'outside' })
    expect(
      lookUpRow(table('up', 'up'), { at: [Number.POSITIVE_INFINITY], row: 10, column: 6 }),
    ).toMatchObject({ kind: 'outside' })
  })

  it('carries the doubt of a doubtful cell, not of its page', () => {
    expect(lookUpRow(table('up', 'up'), { at: [40], row: 20, column: 8 })).toMatchObject({
      source: { confidence: 'from memory' },
    })
    expect(lookUpRow(table('up', 'up'), { at: [40], row: 20, column: 6 })).toMatchObject({
      source: { confidence: 'verified' },
    })
  })
})

describe('what a look-up says at the edges', () => {
  const named: CodeTable = {
    ...table('up', 'lesser of neighbours'),
    blockAxes: [
      { name: 'load', unit: 'psf', entries: [40, 60], safeSide: 'up' },
      {
        name: 'species',
        unit: '',
        entries: ['SP', 'DF'],
        safeSide: 'exact',
        labels: { SP: 'Southern Pine' },
      },
    ],
    rowAxis: { name: 'ratio', unit: '', entries: [10, 20, 30], safeSide: 'up' },
    blocks: [{ at: [40, 'SP'], source: SOURCE, rows: { 10: [1, 2, 3], 20: [4] } }],
  }

  it('names labels, and units where an axis has one', () => {
    expect(lookUpRow(named, { at: [33.333, 'SP'], row: 10, column: 7 })).toMatchObject({
      value: 1,
      exact: false,
      sentence:
        'load 40 psf (taken up from 33.33), Southern Pine, ratio 10 row, span 6 ft column (the lesser neighbour of 7)',
    })
  })

  it('holds a demand for met within rounding, and not beyond', () => {
    expect(lookUpRow(named, { at: [40, 'SP'], row: 10 + 1e-9, column: 6 })).toMatchObject({
      exact: true,
      row: 10,
    })
    expect(lookUpRow(named, { at: [40, 'SP'], row: 10 + 1e-6, column: 6 })).toMatchObject({
      exact: false,
      row: 20,
    })
    expect(lookUpRow(named, { at: [40, 'SP'], row: 10 - 1e-9, column: 6 })).toMatchObject({
      exact: true,
      row: 10,
    })
  })

  it('lists no part, no row and no cell where they are missing, each in its own words, with its source where one is known', () => {
    const outside = (at: readonly (number | string)[], row: number | string, column: number) =>
      lookUpRow(named, { at, row, column })
    expect(outside([60, 'SP'], 10, 6)).toEqual({
      kind: 'outside',
      paged: false,
      source: null,
      sentence: 'Invented table lists nothing for load 60 psf, Southern Pine',
    })
    expect(outside([40, 'DF'], 10, 6).sentence).toBe('Invented table lists nothing for load 40 psf, DF')
    expect(outside([40, 'XX'], 10, 6)).toEqual({
      kind: 'outside',
      paged: false,
      source: SOURCE,
      sentence: 'Invented table: no entry for XX',
    })
    expect(outside([40, 'SP'], 30, 6)).toEqual({
      kind: 'outside',
      paged: true,
      source: SOURCE,
      sentence: 'Invented table: no entry for ratio 30',
    })
    expect(outside([40, 'SP'], 20, 8).sentence).toBe('Invented table: no entry for span 8 ft')
    expect(outside([Number.POSITIVE_INFINITY, 'SP'], 10, 6).sentence).toBe(
      'Invented table: no entry for so great a load',
    )
    expect(outside([40, 'SP'], Number.NaN, 6).sentence).toBe('Invented table: no entry for so great a ratio')
    expect(outside([40], 10, 6).kind).toBe('outside')
    expect(outside([], 10, 6).kind).toBe('outside')
  })

  it('goes beyond no end: neighbours need one above, and a page without entries has no source', () => {
    expect(lookUpRow(named, { at: [40, 'SP'], row: 10, column: 10.5 })).toMatchObject({ kind: 'outside' })
    expect(lookUpRow({ ...named, blocks: [] }, { at: [61, 'SP'], row: 10, column: 6 })).toEqual({
      kind: 'outside',
      paged: false,
      source: null,
      sentence: 'Invented table: no entry for load 61 psf',
    })
    expect(lookUpRow(table('down', 'up'), { at: [40], row: 31, column: 6 })).toMatchObject({
      value: 7,
      row: 30,
    })
  })

  it('takes the lesser of four cells where both axes have neighbours, the first of equal ones', () => {
    const both = table('lesser of neighbours', 'lesser of neighbours')
    expect(lookUpRow(both, { at: [40], row: 15, column: 7 })).toMatchObject({ value: 1, row: 10, column: 6 })
    expect(lookUpRow(both, { at: [40], row: 25, column: 9 })).toMatchObject({
      value: null,
      row: 30,
      column: 10,
    })
    expect(lookUpRow(both, { at: [40], row: 25, column: 7 })).toMatchObject({ value: 2, row: 30, column: 8 })
  })

  it('takes no number between the entries of an axis that may not be rounded', () => {
    const exact = {
      ...table('up', 'up'),
      columnAxis: { ...table('up', 'up').columnAxis, safeSide: 'exact' },
    } as const
    expect(lookUpRow(exact, { at: [40], row: 10, column: 8 })).toMatchObject({ value: 2, exact: true })
    expect(lookUpRow(exact, { at: [40], row: 10, column: 7 })).toEqual({
      kind: 'outside',
      paged: true,
      source: SOURCE,
      sentence: 'Invented table: no entry for span 7 ft',
    })
  })

  it('has no page under the first of an axis that is taken down', () => {
    const pages = { ...table('up', 'up'), blockAxes: [{ ...loads, safeSide: 'down' }] } as const
    expect(lookUpRow(pages, { at: [59], row: 10, column: 6 })).toMatchObject({ kind: 'row', at: [40] })
    expect(lookUpRow(pages, { at: [30], row: 10, column: 6 }).sentence).toBe(
      'Invented table: no entry for load 30 psf',
    )
  })

  it('takes the first of equal neighbours, and of two that are not permitted', () => {
    const level = {
      ...table('up', 'lesser of neighbours'),
      blocks: [{ at: [40], source: SOURCE, rows: { 10: [5, 5, 9], 20: [null, null, 9], 30: [0, 0, 0] } }],
    }
    expect(lookUpRow(level, { at: [40], row: 10, column: 7 })).toMatchObject({ value: 5, column: 6 })
    expect(lookUpRow(level, { at: [40], row: 20, column: 7 })).toMatchObject({ value: null, column: 6 })
    expect(lookUpRow(level, { at: [40], row: 20, column: 9 })).toMatchObject({ value: null, column: 8 })
  })

  it('keeps a doubt to its own row and its own column', () => {
    const plain = table('up', 'up')
    for (const [row, column] of [
      [10, 8],
      [20, 10],
      [30, 8],
    ] as const)
      expect(lookUpRow(plain, { at: [40], row, column })).toMatchObject({
        source: { confidence: 'verified' },
      })
  })
})

describe('the page of a table', () => {
  const invented = table('up', 'up')
  const at = (load: number, row = 10, column = 10) => lookUpRow(invented, { at: [load], row, column }).paged

  it('is there for what it covers, and beyond its rows and columns', () => {
    expect(at(40)).toBe(true)
    expect(at(40, 31)).toBe(true)
    expect(at(40, 10, 11)).toBe(true)
  })

  it('is there for a doubtful cell of it, for others of it can be relied on', () => {
    expect(at(40, 20, 8)).toBe(true)
  })

  it('is not there for loads that the table leaves out or ends before', () => {
    expect(at(60)).toBe(false)
    expect(at(61)).toBe(false)
  })

  it('is not there where it is recalled and nothing reproduces it', () => {
    const paged = (confidence: 'from memory' | 'from memory; reproduced') => {
      const [block] = invented.blocks
      if (block === undefined) throw new Error('no page')
      const recalled = { ...invented, blocks: [{ ...block, source: { ...SOURCE, confidence } }] }
      return [10, 31].map((row) => lookUpRow(recalled, { at: [40], row, column: 10 }).paged)
    }
    expect(paged('from memory')).toEqual([false, false])
    expect(paged('from memory; reproduced')).toEqual([true, true])
  })
})
