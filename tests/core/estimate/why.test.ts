import { describe, expect, it } from 'vitest'
import type { WhyStep } from '../../../core/estimate-types.ts'
import { FIELDS } from '../../../core/job/index.ts'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { why } from '../../../core/why.ts'
import { thingsOf } from '../../../core/why-things.ts'
import { estimateOf } from '../../fixtures/engine.ts'
import { smallJob } from '../../fixtures/worked-job.ts'

const estimate = estimateOf(smallJob('12 ft'), SAMPLE_BOOK)
const freestanding = estimateOf(smallJob('12 ft', { site: { attachment: 'freestanding' } }), SAMPLE_BOOK)
const paths = new Set(FIELDS.map((field) => field.path))

function flat(step: WhyStep): readonly WhyStep[] {
  return [step, ...step.because.flatMap(flat)]
}

describe.each([
  ['a deck on a ledger', estimate],
  ['a freestanding deck', freestanding],
])('why, for %s', (_, made) => {
  const things = thingsOf(made)
  const lines = made.pricing?.lines ?? []

  it('knows everything that a cause names', () => {
    const named = [...[...things.values()].map((thing) => thing.cause), ...lines.map((line) => line.cause)]
    const unknown = named.flatMap((cause) => cause.ids).filter((id) => !things.has(id))
    expect(unknown).toEqual([])
  })

  it('knows every field that a cause names', () => {
    const named = [...things.values()].flatMap((thing) => thing.cause.fields)
    expect(
      named.filter((path) => ![...paths].some((known) => known === path || known.startsWith(`${path}.`))),
    ).toEqual([])
  })

  it('leads every line back to fields of the job', () => {
    const astray = lines.filter((line) => {
      const step = why(made, line.id)
      return step === null || !flat(step).some((one) => paths.has(one.id))
    })
    expect(astray.map((line) => line.id)).toEqual([])
  })

  it('leads every check to its clause, where a rule covers it', () => {
    for (const check of made.checks) {
      const step = why(made, check.id)
      const clause = check.governing?.clause ?? 'no rule covers it'
      expect(step?.cause?.rule).toContain(clause)
    }
  })
})

describe('the answer to why', () => {
  it('goes from the price to the cost, to its lines, to the deck', () => {
    const price = why(estimate, 'totals.price')
    expect(price?.because[0]?.id).toBe('totals.cost')
    const ids = flat(price as WhyStep).map((step) => step.id)
    expect(ids).toContain('labour-task-joist')
    expect(ids).toContain('joist-1')
    expect(ids).toContain('size.depth')
  })

  it('tells what is stated from what is a default, with its basis', () => {
    expect(why(estimate, 'size.width')?.text).toBe('Width: 12\'-0", stated in the job')
    expect(why(estimate, 'cutting.kerf')?.text).toMatch(/^Kerf: 1\/8", by default \(.+\)$/)
  })

  it('takes a group of fields together', () => {
    expect(why(estimate, 'size')?.because.map((step) => step.id)).toEqual([
      'size.width',
      'size.depth',
      'size.height',
    ])
  })

  it('explains each thing once, so that members which name each other end', () => {
    const step = why(estimate, 'ledger') as WhyStep
    const explained = flat(step).filter((one) => one.because.length > 0)
    expect(new Set(explained.map((one) => one.id)).size).toBe(explained.length)
  })

  it('is nothing for an id that the estimate does not have', () => {
    expect(why(estimate, 'joist-999')).toBeNull()
  })
})
