import { describe, expect, test } from 'vitest'
import { previewOf } from '../../../renderer/views/cut-list/preview.ts'

describe('the preview of a list', () => {
  test('shows the first rows as they stand, with what each column was found to hold', () => {
    const rows = Array.from({ length: 9 }, (_, index) => `${index + 1},9 ft,J${index}`).join('\n')
    const preview = previewOf(`Qty,Length,Mark\n${rows}\n`)
    expect(preview?.found).toEqual(['quantity', 'length', 'mark'])
    expect(preview?.rows[1]?.cells).toEqual(['1', '9 ft', 'J0'])
    expect([preview?.rows.length, preview?.more]).toEqual([6, 4])
  })

  test('keeps the rows’ own numbers past blank ones, and says where pieces and stock stand below each other', () => {
    const preview = previewOf('\nPieces\nLength\n9 ft\n\nStock\nLength\n12 ft\n')
    expect(preview?.rows.map(({ number }) => number)).toEqual([3, 4, 7, 8])
    expect(preview?.blocks).toBe(true)
  })

  test('of nothing, or of a text that breaks off, is nothing', () => {
    expect(previewOf('  \n')).toBeNull()
    expect(previewOf('"open')).toBeNull()
  })
})
