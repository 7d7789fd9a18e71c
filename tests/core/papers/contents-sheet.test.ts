import { describe, expect, test } from 'vitest'
import {
  aboutOf,
  layOutPages,
  makeSheets,
  type PageOptions,
  SHEET_IDS,
  type SheetId,
  USUAL_SHEETS,
} from '../../../core/papers/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'

const source = paperSource(CATALOGUE.find(({ file }) => file === 'high-stairs-landing.json')?.job ?? {})
const laidOut = (only: readonly SheetId[], page: Partial<PageOptions> = {}) =>
  layOutPages(makeSheets(source, only), aboutOf(source), { paper: 'letter', scale: null, ...page })

/** Texts of the first pages, line by line as they stand beside one another. */
function lines(pages: ReturnType<typeof laidOut>): readonly string[] {
  return pages
    .filter(({ sheet }) => sheet === 'contents')
    .flatMap(({ marks }) => {
      const texts = marks.flatMap((mark) => (mark.kind === 'text' ? [mark] : []))
      const byLine = Map.groupBy(texts, ({ y }) => y)
      return [...byLine].map(([, all]) =>
        all
          .toSorted((a, b) => a.x - b.x)
          .map(({ text }) => text)
          .join(' | '),
      )
    })
}

describe.each<Partial<PageOptions>>([{}, { paper: 'a3', metric: true }])(
  'the index of a set on %j',
  (page) => {
    const pages = laidOut(USUAL_SHEETS, page)

    test('comes first and has every other sheet with the pages on which it is', () => {
      expect(pages[0]?.sheet).toBe('contents')
      const said = lines(pages)
      const others = makeSheets(source).filter(({ id }) => id !== 'contents')
      expect(others.length).toBeGreaterThan(10)
      for (const { id, title } of others) {
        // counted from the pages themselves, not from what the index was made of
        const numbers = pages.filter(({ sheet }) => sheet === id).map(({ number }) => number)
        const [first] = numbers
        const last = numbers.at(-1)
        const wanted = first === last ? `${first}` : `${first} to ${last}`
        const line = said.find((each) => each.split(' | ')[1] === title)
        expect(line?.split(' | ')[0], title).toBe(wanted)
      }
    })

    test('counts its own pages among those of the set', () => {
      expect(pages.map(({ number }) => number)).toEqual(pages.map((_, i) => i + 1))
      expect(new Set(pages.map(({ of }) => of))).toEqual(new Set([pages.length]))
    })
  },
)

describe('the index', () => {
  test('says for whom each sheet is, and what is not handed on', () => {
    const said = lines(laidOut(USUAL_SHEETS))
    const of = (title: string) => said.find((line) => line.split(' | ')[1] === title) ?? ''
    expect(of('Framing plan')).toContain('permit office, crew')
    expect(of('Order for the yard')).toContain('yard')
    expect(of('Quote')).toContain('customer')
    expect(of('Cost breakdown, internal')).toContain('office only')
    expect(said.join('\n')).toMatch(/Kept in the office.*“Cost breakdown, internal” and “Job record”/)
  })

  test('of a set without office sheets does not speak of them', () => {
    expect(lines(laidOut(['contents', 'framing', 'footings'])).join('\n')).not.toContain('office only')
  })

  test('is not made of no sheets: a job that has nothing for the others has no pages', () => {
    // no quote was sent, so there is no change order
    expect(laidOut(['contents', 'change'])).toEqual([])
  })

  test('is a sheet that can be chosen, the first of them, and in the usual set', () => {
    expect(SHEET_IDS[0]).toBe('contents')
    expect(USUAL_SHEETS).toContain('contents')
  })
})
