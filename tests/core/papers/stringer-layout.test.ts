import { describe, expect, it } from 'vitest'
import { makeSheets } from '../../../core/papers/index.ts'
import { inches } from '../../../core/units/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'

// A square on a board's upper edge, by hand: the line of the edge is the line of the nosings, so that a point that lies so
// far level out and so far up from the lowest mark lies out × cos + up × sin along the edge, and out × sin − up × cos under it.
// 14 risers of 7.714 in, runs of 10-1/4 in: a slope of atan(7.714 ÷ 10.25), 36.97 degrees, 12.829 in from mark to mark.

const job = CATALOGUE.find(({ file }) => file === 'high-stairs-landing.json')?.job ?? {}
const source = paperSource(job)
const [sheet] = makeSheets(source, ['stairs'])
const words = JSON.stringify(sheet).replaceAll('\\"', '"')
const slope = Math.atan2(108 / 14, 10.25)

describe('the layout of a stringer', () => {
  it('begins at the end of the board: the lowest mark by its distance from there', () => {
    // the lowest notch is 7.714 − 1 in, and runs 6 in further down to the strip at the landing: its foot lies that × sin back
    const [upper, lower] = [12.714, 6.714].map((down) => down * Math.sin(slope))
    // 7.647 and 4.038 in, to the nearest 1/32 in
    expect([upper?.toFixed(2), lower?.toFixed(2)]).toEqual(['7.65', '4.04'])
    expect(words).toContain('Strike the lowest mark 7 21/32 in from the board’s lower end')
    expect(words).toContain('Strike the lowest mark 4 1/32 in from the board’s lower end')
  })

  it('has every mark on the wood that is ordered, from its lower end on', () => {
    const tables = (sheet?.blocks ?? []).flatMap((block) =>
      block.kind === 'table' && block.table.title === 'Marks along the edge' ? [block.table] : [],
    )
    expect(tables).toHaveLength(2)
    const boards = source.estimate.stairs[0]?.patterns ?? []
    for (const [i, { rows }] of tables.entries()) {
      const ends = rows.map(({ end }) => inchesOf(`${end}`))
      expect(rows).toHaveLength(6)
      for (const end of ends) expect(inches(end)).toBeLessThan(boards[i]?.length ?? 0)
      // the level line of the head, 9-3/8 or 9-1/4 in, brings the last mark to the board's upper end
      const head = (ends.at(-1) ?? 0) + (i === 0 ? 9.375 : 9.25) * Math.cos(slope)
      expect(Math.abs(head - (boards[i]?.length ?? 0) / 32)).toBeLessThan(1 / 16)
    }
    expect(words).toContain('from the uppermost mark the level line is 9 3/8 in long')
    expect(words).toContain('from the uppermost mark the level line is 9 1/4 in long')
  })

  it('is drawn so: no line goes past the board that is ordered', () => {
    const drawings = (sheet?.blocks ?? []).flatMap((block) =>
      block.kind === 'drawing' && block.drawing.id.startsWith('stringer-') ? [block.drawing] : [],
    )
    const boards = source.estimate.stairs[0]?.patterns ?? []
    for (const [i, { primitives }] of drawings.entries()) {
      const xs = primitives.flatMap((one) => (one.kind === 'line' ? [one.x1, one.x2] : []))
      const length = Math.max(...xs) - Math.min(...xs)
      expect((boards[i]?.length ?? 0) - length).toBeGreaterThanOrEqual(-1e-6)
      expect((boards[i]?.length ?? 0) - length).toBeLessThan(1)
    }
  })
})

function inchesOf(text: string): number {
  const [, feet = '0', whole = '0', part = '0', of = '1'] =
    /^(?:(\d+)'-)?(\d+)?(?: ?(\d+)\/(\d+))?"$/.exec(text) ?? []
  return Number(feet) * 12 + Number(whole) + Number(part) / Number(of)
}
