import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { FOUND_WAYS, printSettled, readFound, readJob, settledList } from '../../../core/job/index.ts'
import { inches, ticks } from '../../../core/units/index.ts'

const found = (text: string) => {
  const read = readFound(text)
  return read.ok ? read.value : `${read.error.message}; ${read.error.fix}`
}

describe('a hole found off its place, as typed', () => {
  it.each([
    ['3: 2 in right, 1 1/2 in out', { post: 3, dx: inches(2), dy: inches(1.5), barred: false }],
    ['hole 1 = 3/4" left', { post: 1, dx: inches(-0.75), dy: 0, barred: false }],
    ['P2: 4 in back, rock', { post: 2, dx: 0, dy: inches(-4), barred: true }],
    ['2: Pipe, 1 ft LEFT', { post: 2, dx: inches(-12), dy: 0, barred: true }],
    ['4: 6 in towards the house', { post: 4, dx: 0, dy: inches(-6), barred: false }],
  ])('%s', (text, read) => {
    expect(found(text)).toEqual(read)
  })

  it.each([
    ['2 in right', 'names no hole'],
    ['3: 2 in', 'says no distance and direction'],
    ['3: two right', 'hole 3'],
    ['3: 1 in right, 2 in left', 'off twice along the house'],
    ['3: rock', 'where else hole 3 was dug'],
    ['3:', 'is where the plan has it'],
    ['3: keep, 1 in right', 'is no place'],
  ])('%s is refused with a sentence', (text, sentence) => {
    expect(found(text)).toContain(sentence)
  })
})

describe('what was done about holes', () => {
  const off = fc.integer({ min: -2000, max: 2000 }).map(ticks)
  const settled = fc.record({
    post: fc.integer({ min: 1, max: 99 }),
    way: fc.constantFrom(...FOUND_WAYS),
    dx: off,
    dy: off,
    barred: fc.boolean(),
  })

  it('is read again as it was written', () => {
    fc.assert(
      fc.property(fc.array(settled, { maxLength: 5 }), (list) => {
        expect(settledList(list.map(printSettled).join('; '))).toEqual(list)
      }),
    )
  })

  it('is a fault at its field where a way is missing or the deck has no such post', () => {
    const faults = (text: string) => {
      const read = readJob({ ground: { found: text } })
      return read.ok ? [] : read.error.map(({ path, message }) => `${path}: ${message}`)
    }
    expect(faults('2: 1 in right').join()).toContain('ground.found: what was done about hole 2 is not said')
    expect(faults('77: keep, 1 in right').join()).toContain('ground.found: there is no post 77')
    expect(faults('1: keep, 1 in right; 1: shift the base, 2 in out')).toEqual([])
  })
})
