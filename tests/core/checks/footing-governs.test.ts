import { expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import { footingSchedule } from '../../../core/ground/index.ts'

/** 18 ft of beam on three posts: the middle one carries a quarter more than its area says (two equal spans: 10/8 for 8/8). */
function middleFooting(governs: 'prescriptive' | 'calculated', base: string) {
  const made = design({
    site: { frostDepth: '36 in', soil: 'clay or silt', soilBearing: 1500, snowLoad: 0 },
    size: { width: '18 ft', depth: '12 ft', height: '9 ft' },
    frame: {
      joists: { size: '2x10', spacing: '16 in' },
      postSize: '6x6',
      beams: { front: { size: '2x10', plies: 2, setback: '20 in', posts: 3, inset: '12 in' } },
    },
    ground: { base },
    code: { governs },
  })
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  const check = made.value.checks.find(({ id }) => id === 'footing-size-footing-front-2')
  if (check === undefined) throw new Error('the middle footing is checked')
  return { check, carries: footingSchedule(made.value)[1]?.carries ?? null }
}

it('goes by the area that a post carries where the job goes by the tables, and names what the reaction asks for', () => {
  const { check, carries } = middleFooting('prescriptive', '19 in')
  expect(check.status).toBe('near')
  expect(check.basis).toContain('table')
  expect(check.message).toContain(`1'-9" by the beam’s greatest reaction`)
  expect(check.remedy).toContain('make its base that wide')
  // 10/8 of what the area brings, a little less as the ends overhang their posts by a foot; and the joists, which reach
  // 20 in past the beam, bring it w 12² ÷ (2 × 10 1/4) in place of the area's w (10 1/4 ÷ 2 + 1 2/3): 1 to 3 % more
  const ratio = (carries?.worst ?? 0) / (carries?.load ?? 1)
  expect(ratio).toBeGreaterThan(1.15)
  expect(ratio).toBeLessThan(1.25 * 1.035)
})

it('goes by the greatest reaction where the job goes by calculation', () => {
  const { check, carries } = middleFooting('calculated', '19 in')
  expect(check.status).toBe('fails')
  expect(check.basis).toBe('calculation, as the job chooses')
  // round footing on 1,500 psf: 12 √(4 P ÷ (π 1500)) in
  const needed = 12 * Math.sqrt((4 * (carries?.worst ?? 0)) / (Math.PI * 1500))
  expect(Math.ceil(needed)).toBe(21)
  expect(check.message).toBe(`Footing 2 is 1'-7" across; 1'-9" is needed.`)
  expect(middleFooting('calculated', '21 in').check.status).toBe('near')
})
