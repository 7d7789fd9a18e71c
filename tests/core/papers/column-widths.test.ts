import { describe, expect, test } from 'vitest'
import { layOutPages, type Sheet } from '../../../core/papers/index.ts'
import { LITTLE_ABOUT as ABOUT } from '../../fixtures/about.ts'

/** Twelve short rows and one with a long cell in the first column. */
const rows = [
  ...Array.from({ length: 12 }, () => ({ what: 'post base', by: 'common practice, no source' })),
  { what: 'screws in treads, risers and landing, at each bearing, and more for loss '.repeat(4), by: '' },
]
const sheet: Sheet = {
  id: 'steps',
  title: 'Steps',
  audience: 'crew',
  across: false,
  blocks: [
    {
      kind: 'table',
      empty: '',
      table: {
        id: 'nails',
        title: '',
        columns: [
          { key: 'what', label: 'Joint', align: 'left' },
          { key: 'nail', label: 'Nail', align: 'left' },
          { key: 'each', label: 'How many', align: 'left' },
          { key: 'all', label: 'In all', align: 'right' },
          { key: 'by', label: 'By', align: 'left' },
        ],
        rows: rows.map((row) => ({
          nail: '16d common',
          each: 'two rows at 16 in',
          all: '1656 with loss',
          ...row,
        })),
      },
    },
  ],
}

test('one long cell breaks itself over lines, and not the short ones beside it in every row', () => {
  const texts = layOutPages([sheet], ABOUT, { paper: 'letter', scale: null })
    .flatMap(({ marks }) => marks)
    .flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []))
  expect(texts.filter((text) => text === 'common practice, no source')).toHaveLength(12)
  expect(texts.filter((text) => text === 'two rows at 16 in')).toHaveLength(13)
})

describe('a table that a page has almost room for', () => {
  const pagesOf = (count: number) =>
    layOutPages(
      [
        {
          id: 'order',
          title: 'Order',
          audience: 'yard',
          across: false,
          blocks: [
            {
              kind: 'table',
              empty: '',
              table: {
                id: 'goods',
                title: '',
                columns: [{ key: 'what', label: 'Goods', align: 'left' }],
                rows: Array.from({ length: count }, (_, i) => ({ what: `good ${i + 1}` })),
              },
            },
          ],
        },
      ],
      ABOUT,
      { paper: 'letter', scale: null },
    )

  // 680 points of page: 39 rows of 17 and one of heads
  test('is set a little closer, so that no row or two stand overleaf alone', () => {
    expect([39, 40, 43].map((count) => pagesOf(count).length)).toEqual([1, 1, 1])
    const [page] = pagesOf(43)
    const lowest = Math.max(
      ...(page?.marks ?? []).flatMap((mark) =>
        mark.kind === 'text' && mark.text.startsWith('good ') ? [mark.y] : [],
      ),
    )
    expect(lowest).toBeLessThan((page?.height ?? 0) - 50)
  })

  test('stands as usual where a page more is needed anyway, and where there is room', () => {
    expect(pagesOf(60)).toHaveLength(2)
    const rows = (count: number) =>
      (pagesOf(count)[0]?.marks ?? []).flatMap((mark) =>
        mark.kind === 'text' && mark.text.startsWith('good ') ? [mark.y] : [],
      )
    for (const count of [20, 60]) {
      const [first = 0, second = 0] = rows(count)
      expect(second - first).toBeCloseTo(17, 6)
    }
  })
})

test('a list in columns that would leave a row for another page is set closer too', () => {
  const rows = (count: number) =>
    Array.from({ length: count }, (_, i) => ({ what: `good ${i + 1}`, at: `${i}` }))
  const pages = (count: number) =>
    layOutPages(
      [
        {
          id: 'framing',
          title: 'Plan',
          audience: 'crew',
          across: false,
          blocks: [
            {
              kind: 'table',
              columns: 'members',
              empty: '',
              table: {
                id: 'members',
                title: '',
                columns: [
                  { key: 'what', label: 'W'.repeat(26), align: 'left' },
                  { key: 'at', label: 'At', align: 'left' },
                ],
                rows: rows(count),
              },
            },
          ],
        },
      ],
      ABOUT,
      { paper: 'letter', scale: null },
    ).length
  // two columns of 39 rows as usual, of 43 or more closer; 170 rows take a third page either way
  expect([78, 82, 170].map(pages)).toEqual([1, 1, 2])
  expect(pages(2 * 78 + 1)).toBe(2)
})
