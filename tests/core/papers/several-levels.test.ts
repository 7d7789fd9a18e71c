import { describe, expect, test } from 'vitest'
import { checkFrame } from '../../../core/checks/index.ts'
import { design } from '../../../core/design.ts'
import type { Design } from '../../../core/estimate-types.ts'
import { outsideWords } from '../../../core/papers/build/outside-words.ts'
import { squareWords } from '../../../core/papers/build/square-words.ts'
import { scopeWords } from '../../../core/papers/quote/scope-words.ts'
import { footingLoadWords, footingScheduleTable } from '../../../core/papers/tables/ground-footings.ts'
import { guardTable } from '../../../core/papers/tables/guard-table.ts'
import { memberSchedule } from '../../../core/papers/tables/member-schedule.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

function designOf(file: string): Design {
  const made = design(CATALOGUE.find((one) => one.file === file)?.job ?? {})
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value
}

// by hand: 30 by 20, 24 by 15 and 20 by 12 ft; together from 0 to 44 ft along the house and from 0 to 35 ft away from it
const largest = designOf('largest.json')

describe('papers of a deck on several levels', () => {
  test('promise the customer the extent and the area of all levels, not of the first', () => {
    expect(scopeWords(largest)[0]).toContain(
      `A deck on 3 levels, 44'-0" along the house and 35'-0" away from it`,
    )
    expect(scopeWords(largest)[0]).toContain('1,200 square feet in all')
  })

  test('state the frame’s outside over all levels', () => {
    expect(outsideWords(largest)).toBe(`44'-0" × 35'-0" over all, on 3 levels, 1,200 square feet in all`)
  })

  test('say each level’s own diagonals, each by its name', () => {
    // √(360² + 240²) = 432.67 in; √(288² + 180²) = 339.62 in; √(240² + 144²) = 279.89 in
    const words = squareWords(largest)
    for (const [level, diagonal] of [
      [1, `36'-0 11/16"`],
      [2, `28'-3 5/8"`],
      [3, `23'-3 7/8"`],
    ])
      expect(words).toMatch(new RegExp(`level ${level}[^;]* ${diagonal}`))
  })
})

describe('papers of an L on one level', () => {
  test('say that its outline is not a rectangle, and its area', () => {
    // by hand: 24 by 14 ft without 10 by 6 ft
    const [deck = ''] = scopeWords(designOf('l-shape.json'))
    expect(deck).toContain(
      `24'-0" along the house and 14'-0" away from it over all (its outline is not a rectangle`,
    )
    expect(deck).toContain('276 square feet')
    expect(outsideWords(designOf('l-shape.json'))).toContain('no rectangle, 276 square feet')
  })

  test('and of a rectangle no such thing', () => {
    expect(outsideWords(designOf('rectangle-24-by-14.json'))).toBe(`24'-0" × 14'-0"`)
  })
})

describe('the member schedule', () => {
  test('ends a range of marks where others stand between, or the stem changes', () => {
    const rows = memberSchedule(largest).rows
    expect(rows.find(({ marks }) => marks?.startsWith('B1a'))?.marks).toBe('B1a to B1c, B3a to B3c')
    const read = (mark: string) => /^(.*?)(\d+)([a-z]?)$/.exec(mark) ?? []
    for (const { marks = '', count } of rows) {
      let sum = 0
      for (const range of marks.split(', ')) {
        const [from = '', to = from] = range.split(' to ')
        const [[, stem, first, letter], [, other, last, end]] = [read(from), read(to)]
        if (from !== to) expect(other, marks).toBe(stem)
        const letters = letter ? (end ?? '').charCodeAt(0) - letter.charCodeAt(0) + 1 : 1
        sum += from === to ? 1 : (Number(last) - Number(first) + 1) * letters
      }
      expect(sum, marks).toBe(Number(count))
    }
  })
})

describe('footings under a continuous beam', () => {
  const rows = footingScheduleTable(largest).rows
  const seven = rows.find(({ number }) => number === '7')

  test('show the pressure of the greatest reaction, and that it is more than the soil carries', () => {
    // by hand: 4,918 lb on a base of 24 in, π ft² = 3.1416 sq ft, is 1,565.4 psf; the soil carries 1,500
    expect(seven?.worst).toBe('4,918 lb')
    expect(seven?.worstPressure).toMatch(/^1,56[56] psf, too much$/)
    const { cautions } = footingLoadWords(largest)
    // 4,918 lb on 1,500 psf need 3.2787 sq ft: 2·√(3.2787/π) = 2.0431 ft, 24.52 in, so 25
    expect(cautions.find((words) => words.startsWith('Footing 7:'))).toContain(`make its base 2'-1" across`)
    expect(cautions.some((words) => words.startsWith('Footing 9:'))).toBe(true)
  })

  test('are named by the remark of their check, and told in its row', () => {
    const check = checkFrame(largest.job, largest.layout, largest.frame).find(({ message }) =>
      message.startsWith('Footing 7 is'),
    )
    expect(check?.message).toContain(`2'-1" by the beam’s greatest reaction`)
    expect(check?.remedy).toContain('Footing 7: ')
  })
})

describe('edges on the papers', () => {
  test('are named by side and level, on a rectangle by the side alone', () => {
    if (largest.guard === null) throw new Error('it has a guard')
    const edges = guardTable(largest.guard, largest).rows.map(({ edge }) => edge ?? '')
    for (const edge of edges)
      expect(edge).toMatch(/^(left|right|front|rear) side of level [123] \(edge \d+, from corner \d+\)$/)
    const plain = designOf('rectangle-24-by-14.json')
    if (plain.guard !== null)
      for (const { edge } of guardTable(plain.guard, plain).rows)
        expect(edge).toMatch(/^(left|right|front) side$/)
  })
})
