import { describe, expect, it } from 'vitest'
import { analyseBeam, deflectionExtremes, greatestShear, momentExtremes } from '../../../core/rules/index.ts'

const uniform = (from: number, to: number, load: number) => ({ kind: 'uniform', from, to, load }) as const

describe('forces along a beam', () => {
  it('find the greatest sag in the second of two spans as in the first, mirrored', () => {
    const model = { length: 200, supports: [0, 100, 200], stiffness: 1e6 }
    const result = analyseBeam(model, [uniform(0, 200, 1)])
    // AWC Design Aid 6: 0.0054 w L⁴ / E I at 0.4215 L from the outer end; to more places 0.005416 and 0.42154
    const first = deflectionExtremes(result, 0, 100).down
    const second = deflectionExtremes(result, 100, 200).down
    expect(first.value).toBeCloseTo(0.5416, 4)
    expect(first.at).toBeCloseTo(42.154, 2)
    expect(second.value).toBeCloseTo(0.5416, 4)
    expect(second.at).toBeCloseTo(200 - 42.154, 2)
  })

  it('find the greatest moment where it is, in whatever part of the beam', () => {
    // AWC Design Aid 6, one overhang loaded all along: 1098.63 ft-lb in the span, nothing more beyond it
    const result = analyseBeam({ length: 150, supports: [0, 120], stiffness: 1e8 }, [
      uniform(0, 150, 100 / 12),
    ])
    const { greatest, least } = momentExtremes(result, 0, 150)
    expect(greatest.value / 12).toBeCloseTo(1098.63, 2)
    expect(least.value / 12).toBeCloseTo(-312.5, 9)
    expect(least.at).toBeCloseTo(120, 9)
  })

  it('find the greatest shear whichever way it goes', () => {
    // by hand: 10 lb at 80 of 100 in leave 2 lb on the left and 8 on the right
    const model = { length: 100, supports: [0, 100], stiffness: 1e6 }
    expect(greatestShear(analyseBeam(model, [{ kind: 'point', at: 80, load: 10 }]), 0, 100)).toBeCloseTo(8, 9)
    expect(greatestShear(analyseBeam(model, [{ kind: 'point', at: 20, load: 10 }]), 0, 100)).toBeCloseTo(8, 9)
  })

  it('carry a load over a support into that support alone', () => {
    const model = { length: 100, supports: [0, 60, 100], stiffness: 1e6 }
    const over = { kind: 'point', at: 60, load: 7 } as const
    const found = analyseBeam(model, [
      over,
      { kind: 'point', at: 0, load: 3 },
      { kind: 'point', at: 100, load: 2 },
    ])
    for (const [i, expected] of [3, 7, 2].entries()) expect(found.reactions[i]).toBeCloseTo(expected, 9)
    const both = analyseBeam(model, [over, uniform(0, 100, 1)])
    const alone = analyseBeam(model, [uniform(0, 100, 1)])
    for (const [i, more] of [0, 7, 0].entries())
      expect((both.reactions[i] ?? 0) - (alone.reactions[i] ?? 0)).toBeCloseTo(more, 9)
  })

  it('are asked for on the beam only', () => {
    const model = { length: 100, supports: [0, 100], stiffness: 1e6 }
    const result = analyseBeam(model, [uniform(0, 100, 1)])
    expect(() => momentExtremes(result, 200, 300)).toThrow('no part of the beam lies between 200 and 300 in')
    expect(() => analyseBeam(model, [{ kind: 'point', at: -10, load: 1 }])).toThrow(
      '-10 in lies off the beam',
    )
    expect(() => analyseBeam({ ...model, supports: [0] }, [])).toThrow('not held by its supports')
  })
})
