import { expect, test } from 'vitest'
import { type Block, layOutPages, type Sheet } from '../../../core/papers/index.ts'
import { widthOf } from '../../../core/papers/type/measure.ts'
import { ticks } from '../../../core/units/index.ts'
import { ABOUT } from '../../fixtures/about.ts'

// 14 in, 27-5/8 in and 35-7/8 in from the left end of a board of 16 ft: three short blocks
test('the first figures under a board stand beside or below each other, none over another', () => {
  const lines = [448, 884, 1148].map(ticks)
  const cuts = lines.map((to, i) => {
    const from = ticks(i === 0 ? 0 : (lines[i - 1] ?? 0) + 4)
    return { from, to, length: ticks(to - from) }
  })
  const block: Block = {
    kind: 'set-up',
    title: 'Set-up 1',
    stockId: '16',
    length: ticks(6144),
    // twice as long: the figures stand near each other
    longest: ticks(12_288),
    cuts,
    lines,
    offcut: ticks(0),
    fate: 'nothing left',
    boards: [{ name: '2x10-1', marks: ['K1', 'K2', 'K3'] }],
  } as Block
  const sheet: Sheet = { id: 'cutting', title: 'A sheet', audience: 'crew', across: false, blocks: [block] }
  const [page] = layOutPages([sheet], ABOUT, { paper: 'letter', scale: null })
  const figures = (page?.marks ?? []).flatMap((mark) => {
    if (mark.kind !== 'text' || !/^\d+'-/.test(mark.text) || mark.size !== 7.5) return []
    const wide = widthOf(mark.text, mark.size)
    const x0 = mark.anchor === 'end' ? mark.x - wide : mark.x
    return [{ x0, x1: x0 + wide, y: mark.y }]
  })
  expect(figures).toHaveLength(3)
  for (const [i, one] of figures.entries())
    for (const other of figures.slice(i + 1))
      expect(one.y !== other.y || one.x1 <= other.x0 || other.x1 <= one.x0).toBe(true)
})
