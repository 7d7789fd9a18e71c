import { describe, expect, it } from 'vitest'
import { adjustedValues, calculationConfidence, isIncised } from '../../../core/rules/index.ts'

const wet = { wet: true, incised: false, duration: 1, repetitive: 1 }

describe('adjusted design values', () => {
  it('take Southern Pine by its width, without a size factor', () => {
    expect(adjustedValues('2x6', 'SP', wet).bending).toBe(1000)
    expect(adjustedValues('2x12', 'SP', { ...wet, repetitive: 1.15 }).bending).toBeCloseTo(862.5, 9)
  })

  it('multiply the factors of the NDS for other species', () => {
    // 900 × CF 1.1 = 990 ≤ 1,150: CM 1; × Ci 0.8 × CD 1.15 × Cr 1.15
    const values = adjustedValues('2x10', 'DFL', {
      wet: true,
      incised: true,
      duration: 1.15,
      repetitive: 1.15,
    })
    expect(values.bending).toBeCloseTo(900 * 1.1 * 0.8 * 1.15 * 1.15, 9)
    expect(values.shear).toBeCloseTo(180 * 1.15 * 0.97 * 0.8, 9)
    expect(values.modulus).toBeCloseTo(1_600_000 * 0.9 * 0.95, 6)
    expect(values.leastModulus).toBeCloseTo(580_000 * 0.9 * 0.95, 6)
    expect(values.compressionAcross).toBeCloseTo(625 * 0.67, 9)
    expect(values.compression).toBeCloseTo(1350 * 1.15 * 0.8 * 0.8, 9)
    expect(values.steps.bending).toBe("Fb' = 900 × CD 1.15 × CM 1 × CF 1.1 × Ci 0.8 × Cr 1.15 = 1,047 psi")
  })

  it('lower a strength for wet use by what it is with its size factor', () => {
    // NDS Supplement Table 4A: 900 × CF 1.3 = 1,170 > 1,150 for a 2x6, so CM 0.85; open-grain redwood's 700 × CF 1.15 =
    // 805 > 750 for a 2x4, so CM 0.8; western cedars' 650 × CF 1.1 = 715, so 1
    expect(adjustedValues('2x6', 'DFL', wet).bending).toBeCloseTo(900 * 1.3 * 0.85, 9)
    expect(adjustedValues('2x4', 'RWO', wet).compression).toBeCloseTo(700 * 1.15 * 0.8, 9)
    expect(adjustedValues('2x6', 'WC', wet).compression).toBeCloseTo(650 * 1.1, 9)
  })

  it('take posts of 5x5 and larger as timbers, which wet use weakens less', () => {
    expect(adjustedValues('6x6', 'SP', wet).compression).toBeCloseTo(525 * 0.91, 9)
    expect(adjustedValues('4x4', 'SP', wet).compression).toBeCloseTo(1450 * 0.8, 9)
  })

  it('take the lesser value where agencies grade timbers differently', () => {
    expect(adjustedValues('6x6', 'DFL', wet).compression).toBeCloseTo(475 * 0.91, 9)
    expect(adjustedValues('8x8', 'HF', wet).compression).toBeCloseTo(375 * 0.91, 9)
  })

  it('hold three species for refractory', () => {
    expect((['SP', 'DFL', 'HF', 'SPF', 'RW', 'WC'] as const).filter(isIncised)).toEqual(['DFL', 'HF', 'SPF'])
  })

  it('have no timbers of northern species', () => {
    expect(() => adjustedValues('6x6', 'NS', wet)).toThrow('no design values for timbers of NS')
  })
})

describe('every factor where it belongs (NDS 2018 Table 4.3.1)', () => {
  const all = { wet: true, incised: true, duration: 1.15, repetitive: 1.15 }

  it('duration is not on stiffness or bearing, incising not on bearing, repetition on bending alone', () => {
    const dry = { wet: false, incised: false, duration: 1, repetitive: 1 }
    const [plain, loaded] = [
      adjustedValues('2x8', 'HF', dry),
      adjustedValues('2x8', 'HF', { ...dry, duration: 1.15 }),
    ]
    expect(loaded.bending / plain.bending).toBeCloseTo(1.15, 12)
    expect(loaded.shear / plain.shear).toBeCloseTo(1.15, 12)
    expect(loaded.tension / plain.tension).toBeCloseTo(1.15, 12)
    expect(loaded.compression / plain.compression).toBeCloseTo(1.15, 12)
    expect([loaded.modulus, loaded.leastModulus, loaded.compressionAcross]).toEqual([
      plain.modulus,
      plain.leastModulus,
      plain.compressionAcross,
    ])
    const shared = adjustedValues('2x8', 'HF', { ...dry, repetitive: 1.15 })
    expect(shared.bending / plain.bending).toBeCloseTo(1.15, 12)
    expect([shared.shear, shared.tension, shared.compression, shared.modulus]).toEqual([
      plain.shear,
      plain.tension,
      plain.compression,
      plain.modulus,
    ])
    const cut = adjustedValues('2x8', 'HF', { ...dry, incised: true })
    expect([cut.bending / plain.bending, cut.tension / plain.tension, cut.modulus / plain.modulus]).toEqual([
      expect.closeTo(0.8, 12),
      expect.closeTo(0.8, 12),
      expect.closeTo(0.95, 12),
    ])
    expect(cut.compressionAcross).toBe(plain.compressionAcross)
  })

  it('is written out in the steps, symbol by symbol', () => {
    const { steps } = adjustedValues('2x8', 'HF', all)
    expect(steps.shear).toBe("Fv' = 150 × CD 1.15 × CM 0.97 × Ci 0.8 = 134 psi")
    expect(steps.modulus).toBe("E' = 1,300,000 × CM 0.9 × Ci 0.95 = 1,111,500 psi")
    expect(steps.compression).toBe("Fc' = 1,300 × CD 1.15 × CM 0.8 × CF 1.05 × Ci 0.8 = 1,005 psi")
    expect(steps.compressionAcross).toBe("Fc⊥' = 405 × CM 0.67 = 271 psi")
  })

  it('has no size factor on timbers, and keeps gravity', () => {
    const { steps, gravity } = adjustedValues('6x6', 'SP', { ...all, incised: false })
    expect(steps.bending).toContain('× CF 1 ×')
    expect(gravity).toBe(0.55)
    expect(() => adjustedValues('8x8', 'RWO', all)).toThrow('no design values for timbers of RWO')
  })

  it('is never better known than the values it rests on', () => {
    const source = { document: 'D', edition: '1', clause: 'C', note: '' }
    expect(calculationConfidence({ ...source, confidence: 'verified' })).toBe('computed only')
    expect(calculationConfidence({ ...source, confidence: 'from memory' })).toBe('from memory')
  })
})
