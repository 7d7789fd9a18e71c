import { describe, expect, it } from 'vitest'
import { footingLoads } from '../../../core/checks/footing-loads.ts'
import { hipAreas } from '../../../core/checks/hip-areas.ts'
import { measure } from '../../../core/checks/measures.ts'
import { design } from '../../../core/design.ts'
import { ticks } from '../../../core/units/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

// The load on a hip summed up strip by strip, joist by joist, against the closed forms of a beam under a triangle of load.

/** A wing's depth between the wall and the middle of the beams, inches, in strips a hundredth wide. */
function summed(depth: number, psf: number) {
  const span = depth * Math.SQRT2
  const strip = depth / 2000
  let [load, corner, post] = [0, 0, 0]
  const forces: (readonly [number, number])[] = []
  for (let at = strip / 2; at < depth; at += strip) {
    // joists of both parts at this place along their walls, from the hip to their beams; half comes to the hip
    const force = (2 * (psf / 144) * strip * (depth - at)) / 2
    const x = at * Math.SQRT2
    forces.push([x, force])
    load += force
    corner += force * (1 - x / span)
    post += (force * x) / span
  }
  const moments = forces.map(([x]) =>
    forces.reduce((sum, [at, force]) => (at < x ? sum - force * (x - at) : sum), corner * x),
  )
  return { load, corner, post, moment: Math.max(...moments) }
}

describe('what a hip carries', () => {
  const depth = 84
  const { load, corner, post, moment } = summed(depth, 50)
  const areas = hipAreas({ span: ticks(Math.round(depth * Math.SQRT2 * 32)), overhang: ticks(0) })

  it('is half of the square between walls and beams, two thirds of it at the inside corner', () => {
    expect(areas.span * 50).toBeCloseTo(load, -1)
    expect(areas.inside * 50).toBeCloseTo(corner, -1)
    expect(areas.post * 50).toBeCloseTo(post, -1)
    // 7 ft by 7 ft, halved
    expect(areas.span).toBeCloseTo(24.5, 1)
  })

  it('bends it by 2 W L ÷ (9 √3)', () => {
    const closed = (2 * load * depth * Math.SQRT2) / (9 * Math.sqrt(3))
    expect(Math.abs(moment / closed - 1)).toBeLessThan(0.002)
  })

  it('is told as calculated, for no table covers it, with what comes to the inside corner', () => {
    const made = design(CATALOGUE.find(({ file }) => file === 'wrap-hip.json')?.job)
    if (!made.ok) throw new Error(JSON.stringify(made.error))
    const check = made.value.checks.find(({ title }) => title === 'Hip')
    expect(check?.status).toBe('calculated only')
    const told = check?.governing?.steps
      .map((step) => /= (\d+) ft-lb in the span/.exec(step)?.[1])
      .find(Boolean)
    expect(Math.abs(Number(told) / (moment / 12) - 1)).toBeLessThan(0.01)
    // two 2x10: S = 2 × 1.5 × 9.25² ÷ 6
    const stress = moment / ((2 * 1.5 * 9.25 ** 2) / 6)
    const bending = check?.findings[0]
    if (bending?.lookup.startsWith('Bending') !== true) throw new Error('bending does not govern')
    expect(Math.abs(bending.demand.value / stress - 1)).toBeLessThan(0.01)
    const lb = Number(/About (\d+) lb come to the inside corner/.exec(check?.remedy ?? '')?.[1])
    expect(Math.abs(lb / corner - 1)).toBeLessThan(0.01)
  })

  it('comes to its post beside what the beams bring', () => {
    const made = design(CATALOGUE.find(({ file }) => file === 'wrap-hip.json')?.job)
    if (!made.ok) throw new Error(JSON.stringify(made.error))
    const { job, layout, frame } = made.value
    const areaAt = (hips: typeof frame.hips) => {
      const { posts, areas } = measure(job, layout, { ...frame, hips }).beams[0] ?? { posts: [], areas: [] }
      return areas[posts.findIndex(({ id }) => id === frame.hips[0]?.postId)] ?? 0
    }
    // a third of 24.5 sq ft, and the 1 ft by 1 ft beyond the post on a lever of 12 in past 84
    expect(areaAt(frame.hips) - areaAt([])).toBeCloseTo(24.5 / 3 + 1 + 12 / 84, 1)
  })

  it('counts for the base, the cap and the height of its post, as for its footing', () => {
    const made = design(CATALOGUE.find(({ file }) => file === 'wrap-hip.json')?.job)
    if (!made.ok) throw new Error(JSON.stringify(made.error))
    const { job, layout, frame, checks } = made.value
    const poundsOf = (of: typeof frame) =>
      footingLoads(job, layout, of).map(({ worst }, i) => [of.footings[i]?.postId, worst ?? 0] as const)
    const postId = frame.hips[0]?.postId
    const at = (of: typeof frame) => poundsOf(of).find(([id]) => id === postId)?.[1] ?? 0
    // as above, at 40 psf live and 10 dead
    expect(at(frame) - at({ ...frame, hips: [] })).toBeCloseTo(50 * (24.5 / 3 + 1 + 12 / 84), -1)
    for (const beam of frame.beams) {
      const most = Math.max(
        ...poundsOf(frame).flatMap(([id, lb]) => (beam.postIds.includes(id ?? '') ? [lb] : [])),
      )
      const key = beam.id.replace('beam-', '')
      const told = /listed for ([\d,]+) lb/.exec(
        checks.find(({ id }) => id === `post-ends-${key}`)?.message ?? '',
      )
      expect(Number(told?.[1]?.replace(',', '')), key).toBe(Math.ceil(most))
    }
    const steps = checks.flatMap(({ findings }) => findings.flatMap((one) => one.steps))
    expect(steps).toContain(`Post 1: ${at(frame).toFixed(0)} lb, the greatest reaction on it`)
  })
})
