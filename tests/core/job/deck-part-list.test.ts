import { describe, expect, it } from 'vitest'
import { deckPartList, readJob } from '../../../core/job/index.ts'

describe('parts laid another way, as typed', () => {
  it('are read by number, angle, lean and breakers', () => {
    expect(deckPartList("2: 45 left; 3: straight, breaker 8'\n4: 30° right")).toEqual([
      { part: 2, angle: 45, leans: 'left', breakers: null },
      { part: 3, angle: 0, leans: 'right', breakers: [8 * 384] },
      { part: 4, angle: 30, leans: 'right', breakers: null },
    ])
  })

  it('may leave out the breakers of the rest', () => {
    expect(deckPartList('1: no breaker')[0]?.breakers).toEqual([])
  })

  it.each([
    ['45 left', '"45 left" names no part and how it is laid'],
    ['0: straight', '"0: straight" names no part and how it is laid'],
    ['2: slanting', '"slanting" says no way of laying boards'],
    ['2: 60 left', '60 degrees are more than 45'],
    ['2: straight; 2: 45 left', 'part 2 is named twice'],
    ['2: breaker 0 ft', '"breaker 0 ft" is not over 0'],
  ])('"%s" is told at its field', (parts, message) => {
    const read = readJob({ decking: { parts } })
    expect(read.ok).toBe(false)
    if (read.ok) return
    expect(read.error.map((fault) => [fault.path, fault.message])).toEqual([['decking.parts', message]])
  })
})

describe('fields of the decking that do not go together', () => {
  it.each([
    [
      { fastening: 'hidden clips' },
      'decking.fastening',
      'hidden clips hold grooved boards, and these are solid',
    ],
    [{ edges: 'grooved', size: '2x6' }, 'decking.edges', 'grooved boards come as 5/4x6, not as 2x6'],
    [
      { border: 1, overhang: '3 in' },
      'decking.border',
      'a border that reaches 3" past the frame has too little under its outer board',
    ],
    [{ angle: 60 }, 'decking.angle', 'Decking angle is 60, more than 45'],
  ])('%j are told at the first of them', (decking, path, message) => {
    const read = readJob({ decking })
    expect(read.ok).toBe(false)
    if (read.ok) return
    expect(read.error.map((fault) => [fault.path, fault.message])).toEqual([[path, message]])
  })
})
