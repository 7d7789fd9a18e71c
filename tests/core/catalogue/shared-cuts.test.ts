import { describe, expect, it } from 'vitest'
import { auditPlan, type CutJob, planCuts } from '../../../core/cutting/index.ts'
import { design } from '../../../core/design.ts'
import { cutJobs, SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { loadHighs } from '../../../main/workers/lp/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

const engine = await loadHighs()

/** Every order of the catalogue with a slanting cut, and the same with all cuts square, as by long points. */
const slanting = CATALOGUE.flatMap(({ file, job }) => {
  const made = design(job)
  if (!made.ok) throw new Error(`${file}: ${JSON.stringify(made.error)}`)
  return cutJobs(made.value, SAMPLE_BOOK).classes.flatMap(({ cutJob }) =>
    [...cutJob.pieces, ...cutJob.runs].some(({ mitres }) => mitres !== undefined)
      ? [{ name: `${file}, ${cutJob.label}`, job: cutJob }]
      : [],
  )
})

function square(job: CutJob): CutJob {
  return {
    ...job,
    pieces: job.pieces.map(({ mitres: _, ...piece }) => piece),
    runs: job.runs.map(({ mitres: _, ...run }) => run),
  }
}

describe('slanting cuts that two pieces share', () => {
  it('make no order of the catalogue dearer, not even in its first plan', () => {
    let cheaper = 0
    for (const { name, job } of slanting) {
      const [shared, plain] = [job, square(job)].map((one) => planCuts(one, engine, { quick: true }))
      if (shared?.ok !== true || plain?.ok !== true) throw new Error(name)
      expect(auditPlan(job, shared.value), name).toEqual([])
      expect(shared.value.cost, name).toBeLessThanOrEqual(plain.value.cost)
      if (shared.value.cost < plain.value.cost) cheaper++
    }
    expect(slanting.length).toBeGreaterThan(20)
    expect(cheaper).toBeGreaterThan(5)
  })

  it('are proven too where a board that fits by the bound is a tick too long beside unlike slants', () => {
    const cornered = slanting.filter(({ name }) => /^(octagon-free|clipped-corners)\.json, 2x10/.test(name))
    expect(cornered).toHaveLength(2)
    for (const { name, job } of cornered) {
      const [shared, plain] = [job, square(job)].map((one) => planCuts(one, engine))
      if (shared?.ok !== true || plain?.ok !== true) throw new Error(name)
      expect(auditPlan(job, shared.value), name).toEqual([])
      expect(shared.value.status, name).toBe('proven optimal')
      expect(shared.value.cost, name).toBeLessThan(plain.value.cost)
    }
  })
})
