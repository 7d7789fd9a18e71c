import { describe, expect, it } from 'vitest'
import {
  analyseBeam,
  type BeamLoad,
  type BeamModel,
  deflectionExtremes,
  greatestShear,
  momentExtremes,
} from '../../core/rules/index.ts'

const JOIST_STIFFNESS = 1_400_000 * 98.93

function near(value: number, expected: number, relative: number): void {
  expect(Math.abs(value - expected), `${value} against ${expected}`).toBeLessThanOrEqual(
    Math.abs(expected) * relative,
  )
}

function everywhere(model: BeamModel, load: number): BeamLoad[] {
  return [{ kind: 'uniform', from: 0, to: model.length, load }]
}

/** Equal spans without overhangs. */
function equalSpans(count: number, span: number, stiffness: number): BeamModel {
  return { length: count * span, supports: Array.from({ length: count + 1 }, (_, i) => i * span), stiffness }
}

describe('beam statics against published diagrams', () => {
  // American Wood Council, Design Aid 6, Beam Formulas with Shear and Moment Diagrams (2007): two equal spans,
  // uniform load. The printed deflection divisor 185 is rounded; exactly it is 184.6.
  it('two equal spans under a uniform load, example BS-01', () => {
    const model = equalSpans(2, 96, JOIST_STIFFNESS)
    const result = analyseBeam(model, everywhere(model, 500 / 12))
    for (const [i, expected] of [1500, 5000, 1500].entries()) near(result.reactions[i] ?? 0, expected, 1e-9)
    near(greatestShear(result, 0, 192), 2500, 1e-9)
    const { greatest, least } = momentExtremes(result, 0, 96)
    near(least.value / 12, -4000, 1e-9)
    near(greatest.value / 12, 2250, 1e-9)
    near(greatest.at / 12, 3, 1e-9)
    near(deflectionExtremes(result, 0, 192).down.value, 0.1385, 0.005)
  })

  // Three and four equal spans: coefficients as printed on piping-designer.com, articles 2403 and 2406 (the family of
  // the AISC and AWC diagrams). The middle reaction of four spans is printed 0.928; it is 0.9286.
  it('three equal spans under a uniform load, example BS-02', () => {
    const model = equalSpans(3, 120, JOIST_STIFFNESS)
    const result = analyseBeam(model, everywhere(model, 400 / 12))
    for (const [i, expected] of [1600, 4400, 4400, 1600].entries())
      near(result.reactions[i] ?? 0, expected, 1e-9)
    near(greatestShear(result, 0, 360), 2400, 1e-9)
    near(momentExtremes(result, 0, 120).least.value / 12, -4000, 1e-9)
    near(momentExtremes(result, 0, 120).greatest.value / 12, 3200, 1e-9)
    near(momentExtremes(result, 120, 240).greatest.value / 12, 1000, 1e-9)
    const deflection = deflectionExtremes(result, 0, 360).down.value
    expect(Math.abs((deflection * JOIST_STIFFNESS) / ((400 / 12) * 120 ** 4) - 0.0069)).toBeLessThan(5e-5)
  })

  it('four equal spans under a uniform load, example BS-02', () => {
    const model = equalSpans(4, 1, 1)
    const result = analyseBeam(model, everywhere(model, 1))
    for (const [i, expected] of [0.393, 1.143, 0.928, 1.143, 0.393].entries()) {
      expect(Math.abs((result.reactions[i] ?? 0) - expected)).toBeLessThan(0.001)
    }
    for (const [i, expected] of [-0.1071, -0.0714, -0.1071].entries()) {
      expect(Math.abs(momentExtremes(result, i + 0.99999, i + 1.00001).least.value - expected)).toBeLessThan(
        1e-4,
      )
    }
    expect(Math.abs(momentExtremes(result, 0, 1).greatest.value - 0.0772)).toBeLessThan(1e-4)
    expect(Math.abs(momentExtremes(result, 1, 2).greatest.value - 0.0364)).toBeLessThan(1e-4)
    expect(Math.abs(deflectionExtremes(result, 0, 4).down.value - 0.0065)).toBeLessThan(5e-5)
  })

  // AWC Design Aid 6, overhanging beams; formulas read at piping-designer.com, articles 2378 and 2382. The page prints
  // x³ for a³ in the tip deflection of the second case.
  it('one overhang, loaded all along: the tip rises, example BS-04', () => {
    const model = { length: 150, supports: [0, 120], stiffness: JOIST_STIFFNESS }
    const result = analyseBeam(model, everywhere(model, 100 / 12))
    near(result.reactions[0] ?? 0, 468.75, 1e-9)
    near(result.reactions[1] ?? 0, 781.25, 1e-9)
    near(momentExtremes(result, 0, 150).least.value / 12, -312.5, 1e-9)
    const { greatest } = momentExtremes(result, 0, 120)
    near(greatest.value / 12, 1098.63, 1e-5)
    near(greatest.at / 12, 4.6875, 1e-9)
    near(deflectionExtremes(result, 120, 150).up.value, -0.0914, 0.003)
  })

  it('one overhang, loaded alone: the far support is lifted, example BS-04', () => {
    const model = { length: 120, supports: [0, 96], stiffness: JOIST_STIFFNESS }
    const result = analyseBeam(model, [{ kind: 'uniform', from: 96, to: 120, load: 5 }])
    near(result.reactions[0] ?? 0, -15, 1e-9)
    near(result.reactions[1] ?? 0, 135, 1e-9)
    near(momentExtremes(result, 0, 120).least.value / 12, -120, 1e-9)
    near(deflectionExtremes(result, 96, 120).down.value, 0.00948, 0.003)
    near(deflectionExtremes(result, 0, 96).up.value, -0.00615, 0.003)
  })

  // AWC Design Aid 6, overhang with a load at its free end: from memory there, recomputed.
  it('a point load at the tip of an overhang, example BS-05', () => {
    const model = { length: 144, supports: [0, 120], stiffness: 1_260_000 * 47.63 }
    const result = analyseBeam(model, [{ kind: 'point', at: 144, load: 220 }])
    near(result.reactions[0] ?? 0, -44, 1e-9)
    near(result.reactions[1] ?? 0, 264, 1e-9)
    near(momentExtremes(result, 0, 144).least.value, -5280, 1e-9)
    near(deflectionExtremes(result, 120, 144).down.value, 0.10135, 1e-4)
    const { up } = deflectionExtremes(result, 0, 120)
    near(up.value, -0.08127, 1e-4)
    near(up.at, 69.28, 1e-4)
  })

  // AWC Design Aid 6, two equal spans with one loaded: 7/16, 10/16, −1/16; 49/512; 1/16. From memory, recomputed.
  it('two equal spans, one of them loaded, example BS-07', () => {
    const model = equalSpans(2, 1, 1)
    const result = analyseBeam(model, [{ kind: 'uniform', from: 0, to: 1, load: 1 }])
    for (const [i, expected] of [7 / 16, 10 / 16, -1 / 16].entries())
      near(result.reactions[i] ?? 0, expected, 1e-9)
    const { greatest, least } = momentExtremes(result, 0, 1)
    near(least.value, -1 / 16, 1e-9)
    near(greatest.value, 49 / 512, 1e-9)
    near(greatest.at, 7 / 16, 1e-9)
  })
})
