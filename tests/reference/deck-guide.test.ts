import { describe, expect, it } from 'vitest'
import {
  DCA_FOOTING_ROUNDS,
  DCA_JOIST_OVERHANGS,
  JOIST_SPANS,
  type LumberSize,
} from '../../core/data/index.ts'
import { CONCRETE_WEIGHT, footingDiameter, footingThickness } from '../../core/rules/index.ts'
import { cantileverByTipLoad } from './recomputed.ts'

describe('AWC DCA 6 Table 2, overhangs, recomputed', () => {
  it('are the lesser of a quarter of the span and the length that 220 lb at its tip allows, less 3 in; six are 1 in shorter, one of them by half an inch rounded down', () => {
    const apart: number[] = []
    for (const block of DCA_JOIST_OVERHANGS.blocks) {
      const group = String(block.at[0])
      const spans = JOIST_SPANS.blocks.find((one) => one.at[0] === 40 && one.at[1] === group)
      for (const size of DCA_JOIST_OVERHANGS.rowAxis.entries as LumberSize[]) {
        for (const [i, span] of (spans?.rows[size] ?? []).entries()) {
          const computed = Math.min((span ?? 0) / 4, cantileverByTipLoad(size, group, span ?? 0) - 3)
          apart.push((block.rows[size]?.[i] ?? 0) - Math.floor(computed + 0.5))
        }
      }
    }
    expect(apart.length).toBe(36)
    expect(apart.filter((one) => one === 0).length).toBe(30)
    expect(apart.filter((one) => one === -1).length).toBe(6)
  })
})

describe('AWC DCA 6 Table 4, round footings, recomputed', () => {
  it('carry 37.5 psf of beam span times joist span on 1,500 psf less the weight of the concrete, rounded up, 0 in apart', () => {
    const apart: number[] = []
    for (const beam of DCA_FOOTING_ROUNDS.rowAxis.entries.map(Number)) {
      for (const [i, joist] of DCA_FOOTING_ROUNDS.columnAxis.entries.map(Number).entries()) {
        const load = 37.5 * beam * joist
        let across = 12
        // the thicker the footing, the less of the bearing is left for the load
        for (let turn = 0; turn < 50; turn++) {
          const thickness = footingThickness(across, 5.5)
          across = footingDiameter(load, 1500 - (CONCRETE_WEIGHT * thickness) / 12)
        }
        apart.push((DCA_FOOTING_ROUNDS.blocks[0]?.rows[beam]?.[i] ?? 0) - Math.ceil(across))
      }
    }
    expect(apart.length).toBe(21)
    expect(apart.every((one) => one === 0)).toBe(true)
  })
})
