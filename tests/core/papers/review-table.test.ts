import { describe, expect, it } from 'vitest'
import { reviewTable } from '../../../core/papers/tables/review-table.ts'
import { deckWith } from '../checks/worked-deck.ts'

const { checks } = deckWith()
const { rows } = reviewTable(checks)
const rowOf = (title: string) => {
  const row = rows.find((one) => one.title === title)
  if (row === undefined) throw new Error(`there is no row ${title}`)
  return row
}

describe('every check as a reviewer reads it', () => {
  it('sets no capacity below the demand beside what passes', () => {
    checks.forEach(({ status, governing }, i) => {
      if (status !== 'passes' || governing?.capacity == null) return
      const { demand, capacity } = governing
      if (demand.unit === capacity.unit && demand.value <= capacity.value) return
      expect([rows[i]?.title, rows[i]?.capacity]).toEqual([rows[i]?.title, ''])
    })
    // the span of the joists sets the spacing of the fasteners, the drop asks for a guard: neither is a limit
    expect([rowOf('Ledger fasteners').demand === '', rowOf('Ledger fasteners').capacity]).toEqual([false, ''])
  })

  it('has no figures of a rule that is kept or not', () => {
    expect(rowOf('Protection against decay')).toMatchObject({ demand: '', capacity: '', ratio: '' })
  })

  it('keeps demand and capacity where the one is held against the other', () => {
    for (const row of rows) if (row.ratio !== '') expect([row.demand, row.capacity]).not.toContain('')
    expect(rowOf('Joist span').ratio).not.toBe('')
  })
})
