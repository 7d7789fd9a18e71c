import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  analyseBeam,
  analyseBeams,
  type BeamLoad,
  type BeamModel,
  continuousEnvelope,
  deflectionExtremes,
  greatestShear,
  jointedEnvelope,
  liveLoadPatterns,
  momentExtremes,
  worseEnvelope,
} from '../../core/rules/index.ts'

/** Beams of 2 to 6 supports, unequal spans of 1 to 14 ft, overhangs of up to 4 ft or none, in whole ticks. */
const beams: fc.Arbitrary<BeamModel> = fc
  .tuple(
    fc.integer({ min: 0, max: 1536 }),
    fc.array(fc.integer({ min: 384, max: 5376 }), { minLength: 1, maxLength: 5 }),
    fc.integer({ min: 0, max: 1536 }),
    fc.integer({ min: 1, max: 500 }),
  )
  .map(([left, spans, right, stiffness]) => {
    const supports = [left / 32]
    for (const span of spans) supports.push((supports.at(-1) ?? 0) + span / 32)
    return { supports, length: (supports.at(-1) ?? 0) + right / 32, stiffness: stiffness * 1e6 }
  })

const lines = fc.record({
  dead: fc.double({ min: 0.1, max: 50, noNaN: true }),
  live: fc.double({ min: 0.1, max: 200, noNaN: true }),
})

function close(a: number, b: number, scale: number): void {
  expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-7 * Math.max(1, scale))
}

describe('continuous beams', () => {
  it('balance every load: forces and moments about the left end', () => {
    fc.assert(
      fc.property(
        beams,
        fc.array(fc.tuple(fc.nat(1000), fc.nat(1000), fc.integer({ min: 1, max: 500 })), {
          minLength: 1,
          maxLength: 4,
        }),
        (model, raw) => {
          const loads = raw.map(([a, b, load]): BeamLoad => {
            const [from, to] = [
              (Math.min(a, b) / 1000) * model.length,
              (Math.max(a, b) / 1000) * model.length,
            ]
            return from === to ? { kind: 'point', at: from, load } : { kind: 'uniform', from, to, load }
          })
          const { reactions } = analyseBeam(model, loads)
          const total = loads.reduce(
            (sum, one) => sum + (one.kind === 'point' ? one.load : one.load * (one.to - one.from)),
            0,
          )
          const turning = loads.reduce(
            (sum, one) =>
              sum +
              (one.kind === 'point' ? one.load * one.at : (one.load * (one.to ** 2 - one.from ** 2)) / 2),
            0,
          )
          close(
            reactions.reduce((sum, one) => sum + one, 0),
            total,
            total * 100,
          )
          close(
            reactions.reduce((sum, one, i) => sum + one * (model.supports[i] ?? 0), 0),
            turning,
            turning * 100,
          )
        },
      ),
    )
  })

  it('do not move at their supports, carry no moment at free ends, and are smooth between pieces', () => {
    fc.assert(
      fc.property(beams, lines, (model, { dead, live }) => {
        const result = analyseBeam(model, [
          { kind: 'uniform', from: 0, to: model.length, load: dead },
          { kind: 'uniform', from: 0, to: model.supports[1] ?? 0, load: live },
        ])
        const scale = momentExtremes(result, 0, model.length).greatest.value + 1
        for (const piece of result.pieces)
          if (model.supports.includes(piece.from)) expect(piece.deflection).toBe(0)
        const tail = model.length - 1e-9
        close(momentExtremes(result, tail, model.length).greatest.value, 0, scale * 10)
        close(result.pieces[0]?.moment ?? 0, 0, scale * 10)
      }),
    )
  })

  it('answer the sum of loads with the sum of their answers', () => {
    fc.assert(
      fc.property(beams, lines, (model, { dead, live }) => {
        const a: BeamLoad = { kind: 'uniform', from: 0, to: model.length, load: dead }
        const b: BeamLoad = { kind: 'point', at: model.length / 3, load: live }
        const [one, two, both] = analyseBeams(model, [[a], [b], [a, b]])
        for (const [i] of model.supports.entries()) {
          const sum = (one?.reactions[i] ?? 0) + (two?.reactions[i] ?? 0)
          close(sum, both?.reactions[i] ?? 0, Math.abs(sum) + dead * model.length)
        }
      }),
    )
  })

  it('find no placing of the live load worse than the patterns tried, among all there are', () => {
    fc.assert(
      fc.property(beams, lines, (model, line) => {
        const envelope = continuousEnvelope(model, line)
        const stretches = envelope.stretches
        const scale = (line.dead + line.live) * model.length ** 2
        for (let mask = 0; mask < 2 ** stretches.length; mask++) {
          const loads: BeamLoad[] = [{ kind: 'uniform', from: 0, to: model.length, load: line.dead }]
          for (const [i, { from, to }] of stretches.entries()) {
            if ((mask >> i) & 1) loads.push({ kind: 'uniform', from, to, load: line.live })
          }
          const result = analyseBeam(model, loads)
          for (const [i, support] of envelope.supports.entries()) {
            expect(result.reactions[i] ?? 0).toBeLessThanOrEqual(support.greatest + 1e-6 * scale)
            expect(result.reactions[i] ?? 0).toBeGreaterThanOrEqual(support.least - 1e-6 * scale)
          }
          for (const { from, to, moment, shear } of stretches) {
            const { greatest, least } = momentExtremes(result, from, to)
            expect(Math.max(greatest.value, -least.value)).toBeLessThanOrEqual(moment + 1e-6 * scale)
            expect(greatestShear(result, from, to)).toBeLessThanOrEqual(shear + 1e-6 * scale)
          }
        }
      }),
      { numRuns: 40 },
    )
  })

  it('never do less under more load', () => {
    fc.assert(
      fc.property(beams, lines, fc.double({ min: 1, max: 3, noNaN: true }), (model, line, more) => {
        const now = worseEnvelope(continuousEnvelope(model, line), jointedEnvelope(model, line))
        const heavier = { dead: line.dead, live: line.live * more }
        // an overhang of a tick beside a span of feet costs digits
        const noise = 1e-7 * (line.dead + line.live * more) * model.length
        const then = worseEnvelope(continuousEnvelope(model, heavier), jointedEnvelope(model, heavier))
        for (const [i, stretch] of now.stretches.entries()) {
          expect(then.stretches[i]?.moment ?? 0).toBeGreaterThanOrEqual(stretch.moment - noise * model.length)
          expect(then.stretches[i]?.deflection ?? 0).toBeGreaterThanOrEqual(
            stretch.deflection * (1 - 1e-6) - 1e-9,
          )
        }
        for (const [i, support] of now.supports.entries()) {
          expect(then.supports[i]?.greatest ?? 0).toBeGreaterThanOrEqual(support.greatest - noise)
        }
      }),
    )
  })

  it('jointed over every support, carry each span alone: w L² / 8 inside, half of each span beside a support', () => {
    fc.assert(
      fc.property(beams, lines, (model, line) => {
        const inner = {
          ...model,
          length: (model.supports.at(-1) ?? 0) - (model.supports[0] ?? 0),
          supports: model.supports.map((at) => at - (model.supports[0] ?? 0)),
        }
        const { stretches, supports } = jointedEnvelope(inner, line)
        const w = line.dead + line.live
        for (const { from, to, moment } of stretches)
          close(moment, (w * (to - from) ** 2) / 8, w * (to - from) ** 2)
        for (const [i, support] of supports.entries()) {
          const before = i === 0 ? 0 : (inner.supports[i] ?? 0) - (inner.supports[i - 1] ?? 0)
          const after =
            i === supports.length - 1 ? 0 : (inner.supports[i + 1] ?? 0) - (inner.supports[i] ?? 0)
          close(support.greatest, (w * (before + after)) / 2, w * (before + after))
        }
      }),
    )
  })

  it('sag by 5 w L⁴ / 384 E I over one span', () => {
    const model = { length: 120, supports: [0, 120], stiffness: 1e8 }
    const result = analyseBeam(model, [{ kind: 'uniform', from: 0, to: 120, load: 5 }])
    const { down } = deflectionExtremes(result, 0, 120)
    expect(down.value).toBeCloseTo((5 * 5 * 120 ** 4) / (384 * 1e8), 12)
    expect(down.at).toBeCloseTo(60, 3)
  })

  it('are refused with too few supports or a load beside them', () => {
    const load: BeamLoad = { kind: 'uniform', from: 0, to: 100, load: 1 }
    expect(() => analyseBeam({ length: 100, supports: [50], stiffness: 1e6 }, [load])).toThrow('not held')
    expect(() => analyseBeam({ length: 100, supports: [0, 120], stiffness: 1e6 }, [load])).toThrow(
      'lies off the beam',
    )
  })
})

describe('placing the live load', () => {
  it('tries each pattern once, all loaded among them', () => {
    expect(liveLoadPatterns(1)).toEqual([[true], [false]])
    for (let stretches = 1; stretches <= 9; stretches++) {
      const keys = liveLoadPatterns(stretches).map((pattern) => pattern.join())
      expect(new Set(keys).size).toBe(keys.length)
      expect(keys).toContain(Array.from({ length: stretches }, () => true).join())
    }
  })
})
