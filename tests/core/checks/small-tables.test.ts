import { describe, expect, it } from 'vitest'
import { footingLoads } from '../../../core/checks/index.ts'
import { DCA_HANGERS, JOIST_SPAN_FACTORS, LEDGER_EDGES, SOIL_BEARING } from '../../../core/data/index.ts'
import { joistSpanFactor } from '../../../core/rules/index.ts'
import { inches } from '../../../core/units/index.ts'
import { checkNamed, deckWith } from './worked-deck.ts'

const SIZES = ['2x6', '2x8', '2x10', '2x12'] as const

/** A deck short enough for every joist. */
const withJoists = (size: string) =>
  deckWith({ size: { depth: '8 ft' }, frame: { joists: { size }, beams: { front: { setback: '12 in' } } } })

/** The closing test of the lists that have one column: each row is reached by the check that reads it. */
describe('tables of one column', () => {
  // IRC 2021 Table R507.5(5), from memory; in the row of 1/12 statics asks for more, ((1 + 1/12)² ÷ 2) ÷ 0.78125 = 0.7511
  it.each([
    [0, 0.66],
    [1 / 12, 0.7511],
    [1 / 10, 0.8],
    [1 / 8, 0.84],
    [1 / 6, 0.9],
    [1 / 4, 1],
  ])('joists that reach %d of their span past the beam are entered with %d of it', (share, factor) => {
    expect(joistSpanFactor(share)).toBeCloseTo(factor, 4)
    expect(JOIST_SPAN_FACTORS.rows.map(([at]) => at)).toContain(share)
    expect(JOIST_SPAN_FACTORS.rows).toHaveLength(6)
  })

  // AWC DCA 6, joist hangers, from memory
  it.each([
    ['2x6', 400],
    ['2x8', 500],
    ['2x10', 600],
    ['2x12', 700],
  ])('the hanger of a %s is held against %d lb', (size, pounds) => {
    const { findings } = checkNamed(withJoists(size).checks, 'hanger-load')
    expect(findings.find(({ document }) => document === 'AWC DCA 6')?.capacity).toEqual({
      value: pounds,
      unit: 'lb',
    })
    expect(Object.keys(DCA_HANGERS.pounds)).toEqual(SIZES)
  })

  // IRC 2021 Table R507.9.1.3(2); from its bottom row to the ledger's bottom edge at least 3/4 in
  it.each([
    ['2x8', 5.5, 7.25 - 0.75],
    ['2x10', 6.5, 9.25 - 0.75],
    ['2x12', 7.5, 11.25 - 0.75],
  ])('the bottom row in a %s ledger lies %d to %d in from its top edge', (size, least, most) => {
    const [finding] = checkNamed(withJoists(size).checks, 'ledger-edges').findings
    expect([finding?.demand.value, finding?.capacity?.value]).toEqual([inches(least), inches(most)])
    expect(Object.keys(LEDGER_EDGES.bottomRow)).toEqual(['2x8', '2x10', '2x12'])
  })

  it('no row is known of a 2x6 ledger, and none is passed', () => {
    expect(checkNamed(withJoists('2x6').checks, 'ledger-edges').status).toBe('outside scope')
  })

  // IRC 2021 Table R401.4.1; not known counts as the poorest
  it.each([
    ['clay or silt', 1500],
    ['sand', 2000],
    ['sandy gravel or gravel', 3000],
    ['rock', 4000],
    ['unknown', 1500],
  ])('%s carries %d psf where more is stated and nobody is named for it', (soil, bearing) => {
    const { job, layout, frame } = deckWith({ site: { soil, soilBearing: 5000 } })
    expect(footingLoads(job, layout, frame)[0]?.bearing).toBe(bearing)
    expect(SOIL_BEARING.rows).toHaveLength(4)
  })
})
