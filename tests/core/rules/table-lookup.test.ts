import { describe, expect, it } from 'vitest'
import type { CodeTable } from '../../../core/data/index.ts'
import { lookUpRow } from '../../../core/rules/index.ts'

const SOURCE = { document: 'Invented', edition: '1', clause: 'T', confidence: 'verified', note: '' } as const

/** An invented table with every kind of axis. */
function table(
  rowSide: 'up' | 'down' | 'lesser of neighbours',
  columnSide: 'up' | 'down' | 'lesser of neighbours',
): CodeTable {
  return {
    id: 'invented',
    title: 'Invented table',
    unit: 'in',
    blockAxes: [{ name: 'load', unit: 'psf', entries: [40, 60], safeSide: 'up' }],
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
      sentence: 'page load 40 psf, row area 10 sq ft, column span 10 ft',
    })
  })

  it('takes an axis up, and says from what', () => {
    const found = lookUpRow(table('up', 'up'), { at: [40], row: 10.5, column: 6.01 })
    expect(found).toMatchObject({ value: 5, exact: false })
    expect(found.sentence).toBe(
      'page load 40 psf, row area 20 sq ft (taken up from 10.5), column span 8 ft (taken up from 6.01)',
    )
  })

  it('takes an axis down, and says from what', () => {
    const found = lookUpRow(table('down', 'down'), { at: [40], row: 29, column: 9 })
    expect(found).toMatchObject({ value: 5, exact: false })
    expect(found.sentence).toContain('row area 20 sq ft (taken down from 29)')
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
