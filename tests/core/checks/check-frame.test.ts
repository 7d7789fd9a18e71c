import { describe, expect, it } from 'vitest'
import { contextOf } from '../../../core/checks/context.ts'
import { inches } from '../../../core/units/index.ts'
import { checkNamed, deckWith } from './worked-deck.ts'

describe('the deck worked by hand in the trade conventions (§8)', () => {
  const { job, layout, frame, checks } = deckWith()
  const prescriptive = (id: string) => {
    const found = checkNamed(checks, id).findings.find((one) => one.method === 'prescriptive')
    if (found === undefined) throw new Error(`${id} has no prescriptive finding`)
    return { demand: found.demand.value, capacity: found.capacity?.value }
  }

  it('spans its joists 135 in of 168', () => {
    expect(prescriptive('joist-span')).toEqual({ demand: inches(135), capacity: inches(168) })
  })

  it('cantilevers its joists 24 in of 30, the lesser of the table and a quarter of the span', () => {
    expect(prescriptive('joist-cantilever-front')).toEqual({ demand: inches(24), capacity: inches(30) })
  })

  it('spans its beam 86 in of 103, joists to 12 ft', () => {
    expect(prescriptive('beam-span-front')).toEqual({ demand: inches(86), capacity: inches(103) })
    const finding = checkNamed(checks, 'beam-span-front').findings[0]
    expect(finding?.lookup).toContain('2-2x12 row, effective joist span 12 ft column')
  })

  it('overhangs its beam 12 in of a quarter of the span, 21 1/2', () => {
    expect(prescriptive('beam-overhang-front')).toEqual({ demand: inches(12), capacity: inches(21.5) })
  })

  it('loads its posts with 35.23, 55.09, 55.09 and 35.23 sq ft', () => {
    const [front] = contextOf(job, layout, frame).beams
    expect(front?.areas.map((area) => area.toFixed(2))).toEqual(['35.23', '55.09', '55.09', '35.23'])
  })

  it('needs footings 16 in across at the ends and 19 in between, 6 in thick, and has 20 by 8', () => {
    const across = [1, 2, 3, 4].map((n) => prescriptive(`footing-size-footing-front-${n}`))
    expect(across.map((one) => one.demand)).toEqual([16, 19, 19, 16].map(inches))
    expect(across.map((one) => one.capacity)).toEqual([20, 20, 20, 20].map(inches))
    const thick = [1, 2, 3, 4].map((n) => prescriptive(`footing-thickness-footing-front-${n}`))
    expect(thick).toEqual(Array.from({ length: 4 }, () => ({ demand: inches(6), capacity: inches(8) })))
  })

  it('fails nothing', () => {
    expect(checks.filter((check) => check.status === 'fails')).toEqual([])
  })

  it('names clause, edition, confidence and steps with every finding', () => {
    for (const check of checks) {
      for (const finding of check.findings) {
        expect(finding.clause).not.toBe('')
        expect(finding.edition).not.toBe('')
        expect(finding.steps.length).toBeGreaterThan(0)
      }
    }
  })
})
