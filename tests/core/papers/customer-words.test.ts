import { describe, expect, test } from 'vitest'
import { aboutOf, layOutPages, quoteWarnings, type Sheet } from '../../../core/papers/index.ts'
import { paperSource } from '../../fixtures/paper-source.ts'
import { smallJob } from '../../fixtures/worked-job.ts'

const source = paperSource(smallJob())

function footOf(audience: Sheet['audience']): string {
  const sheet: Sheet = { id: 'quote', title: 'Quote', audience, across: false, blocks: [] }
  return layOutPages([sheet], aboutOf(source), { paper: 'letter', scale: null })
    .flatMap(({ marks }) => marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])))
    .join(' ')
}

describe('the foot of a page', () => {
  test('tells a customer the date of the prices and not whose list they are from, and the office both', () => {
    expect(footOf('customer')).toContain(source.book.date)
    expect(footOf('customer')).not.toContain(source.book.name)
    expect(footOf('office')).toContain(source.book.name)
  })
})

describe('the warning before a quote', () => {
  test('names every kind of check that does not pass, and not only the first', () => {
    const [one] = source.estimate.checks
    if (one === undefined) throw new Error('there are checks')
    const checks = ['Beam span', 'Uplift', 'Uplift'].map((title) => ({
      ...one,
      title,
      status: 'fails' as const,
    }))
    const words = quoteWarnings({ ...source, estimate: { ...source.estimate, checks } }).join(' ')
    expect(words).toContain('3 checks do not pass by a table (Beam span, Uplift):')
  })
})
