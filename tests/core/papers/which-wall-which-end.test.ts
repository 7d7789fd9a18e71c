import { describe, expect, test } from 'vitest'
import { design } from '../../../core/design.ts'
import { carriers } from '../../../core/frame/index.ts'
import { markingDrawing } from '../../../core/papers/drawings/marking-drawing.ts'
import { layoutHolesTable, layoutStringsTable } from '../../../core/papers/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

function deckOf(file: string) {
  const made = design(CATALOGUE.find((one) => one.file === file)?.job ?? {})
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value
}

// walls from (8', 0) to (8', 16') and on to (28', 16'): corners 2, 3 and 4; B2 runs away from the house at x = 1'
const wrap = deckOf('wrap-hip.json')

describe('a deck around the corner of a house', () => {
  test('each string is said to run as one of the two walls does, by that wall’s corners', () => {
    const runs = new Map(layoutStringsTable(wrap).rows.map(({ name, runs: words }) => [name, words]))
    expect(runs.get('left')).toBe('as wall 2-3')
    expect(runs.get('A')).toBe('as wall 3-4')
    expect(runs.get('a')).toBe('as wall 2-3')
  })

  test('a beam that runs away from the house lies on the left, and is not called the rear one', () => {
    expect(carriers(wrap, []).map(({ label }) => label)).toContain('left beam B2')
    const told = wrap.checks.flatMap(({ message, subjects }) =>
      subjects.some((id) => id.startsWith('beam-rear')) ? [message] : [],
    )
    expect(told.join(' ')).toContain('left beam B2')
    expect(wrap.checks.map(({ message }) => message).join(' ')).not.toContain('rear beam')
  })

  test('the hooked end of a board that runs away from the house is drawn at the left, and its figures grow to the right', () => {
    const all = carriers(wrap, [])
    for (const carrier of all.filter(({ from }) => from === 'rear')) {
      const first = carrier.marks[0]
      const drawn = markingDrawing([carrier]).primitives.flatMap((p) =>
        p.kind === 'text' && p.id === first?.memberId && p.layer === 'dimensions' ? [p.x] : [],
      )
      expect(drawn).toEqual([first?.at])
    }
    expect(all.filter(({ from }) => from === 'rear').map(({ mark }) => mark)).toEqual(['L2', 'R2', 'B2'])
  })
})

describe('the second proof of a hole', () => {
  test('goes to the next hole, as by hand: posts 6 ft 6 in apart, and from the last to the first', () => {
    const next = layoutHolesTable(wrap).rows.map(({ next: words }) => words)
    expect(next[0]).toBe('hole 2: 6\'-6"')
    // from (1', 23' - 1') back to ... the last, at (1', 17'-6"), lies 5'-6" from the first at (1', 23')
    expect(next[8]).toBe('hole 1: 5\'-6"')
    expect(next.every((words) => words !== '')).toBe(true)
  })

  test('does not go through the house: hole 5, before the front wall, has none of the other wing behind it', () => {
    const words = layoutHolesTable(wrap).rows[4]?.next ?? ''
    expect(words).toBe('hole 4: 6\'-6"')
  })

  test('stands beside the two diagonals of a deck before one wall: 24 by 14 ft, posts on one beam', () => {
    const plain = deckOf('rectangle-24-by-14.json')
    const holes = plain.frame.footings
    const words = layoutHolesTable(plain).rows[0]?.next ?? ''
    const apart = ((holes[1]?.x ?? 0) - (holes[0]?.x ?? 0)) / 32 / 12
    expect(words.startsWith('hole 2: ')).toBe(true)
    expect(words).toContain(`${Math.floor(apart)}'`)
  })
})
