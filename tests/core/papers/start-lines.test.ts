import { describe, expect, it } from 'vitest'
import { type StartLine, startLines, startWords } from '../../../core/papers/build/start-lines.ts'
import { deckingPlan } from '../../../core/papers/drawings/framing-plan.ts'
import { feet, inches } from '../../../core/units/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { designed } from '../../fixtures/designed.ts'

interface Spot {
  readonly x: number
  readonly y: number
}

/** How far a spot lies from the line through two others. */
function offLine({ x, y }: Spot, from: Spot, to: Spot): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y]
  return Math.abs((x - from.x) * dy - (y - from.y) * dx) / Math.hypot(dx, dy)
}

function ends({ marks }: StartLine): readonly [Spot, Spot] {
  return [marks[0].spot, marks[1].spot]
}

const slanting = CATALOGUE.map(({ file, job }) => ({ file, made: designed(job) })).filter(({ made }) =>
  made.frame.decked.some(({ degrees }) => degrees !== 0),
)

describe('the line that boards at an angle begin from', () => {
  it('runs along a board of each part that lies at an angle, from edge to edge of the frame', () => {
    expect(slanting.length).toBeGreaterThan(3)
    for (const { file, made } of slanting) {
      const lines = startLines(made)
      expect(lines.length, file).toBe(made.frame.decked.filter(({ degrees }) => degrees !== 0).length)
      for (const line of lines) {
        const [from, to] = ends(line)
        const along = (line.board.plan ?? []).filter((corner) => offLine(corner, from, to) <= 2)
        expect(along.length, `${file}: corners of ${line.board.mark} on its line`).toBeGreaterThanOrEqual(2)
        for (const { edge, spot } of line.marks) {
          expect(offLine(spot, edge.near, edge.far)).toBeLessThan(1)
          expect(Math.hypot(spot.x - edge.near.x, spot.y - edge.near.y)).toBeLessThanOrEqual(edge.length + 1)
        }
        expect(Math.abs(Math.hypot(to.x - from.x, to.y - from.y) - line.length)).toBeLessThanOrEqual(1)
      }
    }
  })

  it('lies at the angle that is stated, and the neighbour that it names on its other side', () => {
    for (const { file, made } of slanting)
      for (const line of startLines(made)) {
        const { degrees } = made.frame.decked.find(({ zone }) => zone === line.board.lay?.zone) ?? {}
        const [from, to] = ends(line)
        const found = (Math.atan2(Math.abs(to.y - from.y), Math.abs(to.x - from.x)) * 180) / Math.PI
        const stated = Math.abs(degrees ?? 0)
        expect(Math.min(Math.abs(found - stated), Math.abs(90 - found - stated)), file).toBeLessThan(0.05)
        const side = ({ box }: StartLine['board']) => {
          const middle = { x: (box.x0 + box.x1) / 2, y: (box.y0 + box.y1) / 2 }
          return Math.sign((middle.x - from.x) * (to.y - from.y) - (middle.y - from.y) * (to.x - from.x))
        }
        if (line.beside !== null) expect(side(line.beside), file).toBe(-side(line.board))
      }
  })

  it('goes at 45 degrees as far along a deck 12 ft deep as across it, and its marks are 12 ft times the root of 2 apart', () => {
    const made = slanting.find(({ file }) => file === 'diagonal.json')?.made
    const [line] = made === undefined ? [] : startLines(made)
    if (line === undefined) throw new Error('no start line')
    const [first, second] = line.marks
    expect(second.along - first.along).toBe(feet(12))
    expect(Math.abs(line.length - feet(12) * Math.SQRT2)).toBeLessThanOrEqual(inches(1) / 16)
    expect(startWords(line)).toBe(
      `S1 on the wall, 3'-5 5/8" from its left end; S2 on the front side, 15'-5 5/8" from its left end. The two come 16'-11 5/8" apart. D20 lies to that line, its edge beside D19.`,
    )
  })

  it('is drawn on the decking plan with the names of its ends, and only there where boards lie at an angle', () => {
    const drawn = (made: Parameters<typeof deckingPlan>[0]) =>
      deckingPlan(made).primitives.flatMap((p) =>
        p.kind === 'text' && /^S\d+$/.test(p.text) ? [p.text] : [],
      )
    for (const { made } of slanting) expect(drawn(made).slice(0, 2)).toEqual(['S1', 'S2'])
    const straight = CATALOGUE.find(({ file }) => file === 'l-shape.json')
    expect(drawn(designed(straight?.job ?? {}))).toEqual([])
  })
})
