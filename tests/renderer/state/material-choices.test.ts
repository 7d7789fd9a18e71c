import { describe, expect, test } from 'vitest'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { materialChoices } from '../../../renderer/state/material-choices.ts'
import { jobOf } from '../../core/costing/worked-costing.ts'

const names = (statement: object, book = SAMPLE_BOOK) =>
  materialChoices(jobOf(statement), book).map(({ name }) => name)

describe('materials that a deck could be walked on', () => {
  test('are those of the price book, the present one first', () => {
    expect(names({})).toEqual([
      '5/4x6 Southern Pine No.2, treated',
      '5/4x6 grooved Southern Pine No.2, treated on hidden clips',
      '2x6 Southern Pine No.2, treated',
      '2x4 Southern Pine No.2, treated',
    ])
    expect(names({ decking: { size: '2x6' } })[0]).toBe('2x6 Southern Pine No.2, treated')
  })

  test('leave out grooved boards where the book has no clips for them', () => {
    const book = { ...SAMPLE_BOOK, goods: SAMPLE_BOOK.goods.filter(({ sku }) => sku !== 'deck-clip') }
    expect(names({}, book).some((name) => name.includes('grooved'))).toBe(false)
  })

  test('are of another wood only where the book has the joists in it too', () => {
    const cedar = (size: '5/4x6' | '2x10') => ({
      ...(SAMPLE_BOOK.lumber.find(
        ({ product }) => product.size === size,
      ) as (typeof SAMPLE_BOOK.lumber)[number]),
      product: { size, species: 'WC', grade: 'No.2', treatment: 'untreated' } as const,
    })
    const decking = { ...SAMPLE_BOOK, lumber: [...SAMPLE_BOOK.lumber, cedar('5/4x6')] }
    expect(names({}, decking)).toEqual(names({}))
    const whole = { ...decking, lumber: [...decking.lumber, cedar('2x10')] }
    const [other] = materialChoices(jobOf({}), whole).filter(({ changes }) =>
      changes.some(({ value }) => value === 'WC'),
    )
    expect(other?.changes).toContainEqual({ path: 'frame.treatment', value: 'untreated' })
  })
})
