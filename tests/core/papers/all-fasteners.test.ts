import { describe, expect, it } from 'vitest'
import { hardwareTable } from '../../../core/papers/index.ts'
import { nailingTable } from '../../../core/papers/tables/nailing-table.ts'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'

describe('what fixes a high deck with a landing', () => {
  const { estimate } = paperSource(
    CATALOGUE.find(({ file }) => file === 'high-stairs-landing.json')?.job ?? {},
  )
  const table = nailingTable(estimate)
  const row = (joint: string) => table.rows.find((one) => one.joint === joint)

  it('has the nails between the boards of the landing’s beams', () => {
    // 48 in long: two rows of 48 ÷ 16 + 1 = 4 in each face; one face in the inner beam, two in the outer one of three
    expect(row('Landing beam LB1, ply to ply')).toMatchObject({ fastener: '10d box', count: '8' })
    expect(row('Landing beam LB2, ply to ply')).toMatchObject({ fastener: '10d box', count: '16' })
    const { rule } = estimate.takeoff.goods
      .filter(({ sku }) => sku === 'nail-10d-box')
      .map(({ cause }) => cause)
      .find((cause) => cause.rule.includes('Landing beam LB2')) ?? { rule: '' }
    expect(rule).toContain('16 nails')
  })

  it('names what hold-downs and brackets of handrails are fixed with, in the table and in the order', () => {
    const wanted = (sku: string) => estimate.takeoff.goods.find((good) => good.sku === sku)?.thousandths ?? 0
    for (const [sku, joint] of [
      ['guard-hold-down', 'hold-down of a guard post'],
      ['hold-down-1500lb', 'hold-down to the house'],
      ['handrail-bracket', 'bracket of a handrail'],
    ] as const) {
      expect(wanted(sku), sku).toBeGreaterThan(0)
      expect(row(joint)?.count, joint).toBe(`at ${wanted(sku) / 1000}`)
      const line = estimate.pricing?.lines.find(({ id }) => id === `good-${sku}`)
      const ordered = hardwareTable(estimate, SAMPLE_BOOK.goods).rows.find(({ code }) => code === line?.code)
      expect(ordered?.label, sku).toMatch(/ \(with (the|its) screws/)
    }
  })
})
