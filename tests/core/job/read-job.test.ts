import { describe, expect, test } from 'vitest'
import { type Fault, readJob } from '../../../core/job/index.ts'

function _faultsOf(statement: unknown): readonly Fault[] {
  const read = readJob(statement)
  return read.ok ? [] : read.error
}

function jobOf(statement: unknown) {
  const read = readJob(statement)
  if (!read.ok) throw new Error(JSON.stringify(read.error))
  return read.value
}

describe('a sparse statement is filled with defaults', () => {
  test('an empty statement is a whole job with nothing given', () => {
    const { job, given } = jobOf({})
    expect(given).toEqual([])
    expect(job.size).toEqual({ width: 7680, depth: 4608, height: 1344 })
    expect(job.version).toBe(1)
  })

  test('what is stated is named in the order of the statement, and everything else keeps its default', () => {
    const { job, given } = jobOf({
      frame: { joists: { spacing: '12 in' } },
      size: { width: 240, depth: '13\'-6"' },
    })
    expect(given).toEqual(['frame.joists.spacing', 'size.width', 'size.depth'])
    expect(job.frame.joists).toEqual({
      size: '2x10',
      spacing: 384,
      layoutFrom: 'left',
      overMiddle: 'by stock',
      longest: 20 * 12 * 32,
    })
    expect(job.size).toEqual({ width: 7680, depth: 5184, height: 1344 })
  })

  test('the reading is the same whoever reads it again', () => {
    const statement = { size: { width: '22 ft' }, scope: { delivery: { allowance: 95 } } }
    expect(JSON.stringify(readJob(statement))).toBe(JSON.stringify(readJob(structuredClone(statement))))
  })
})

describe('a value may be written as people write it', () => {
  test.each([
    ['size', { width: 282 }, 'size.width', 9024],
    ['size', { width: '23\' 6"' }, 'size.width', 9024],
    ['site', { soilBearing: '2,000 psf' }, 'site.soilBearing', 2000],
    ['site', { soilBearing: '2000' }, 'site.soilBearing', 2000],
    ['site', { snowLoad: 30 }, 'site.snowLoad', 30],
    ['pricing', { margin: '32 %' }, 'pricing.margin', 3200],
    ['pricing', { margin: 32.5 }, 'pricing.margin', 3250],
    ['cutting', { handling: '$1.50' }, 'cutting.handling', 150],
    ['cutting', { handling: 1.5 }, 'cutting.handling', 150],
    ['frame', { rimPlies: '2' }, 'frame.rimPlies', 2],
  ])('%s %j', (branch, stated, path, value) => {
    const { job } = jobOf({ [branch]: stated })
    expect(path.split('.').reduce<unknown>((at, key) => (at as Record<string, unknown>)[key], job)).toBe(
      value,
    )
  })
})

describe('what is stated may imply another field', () => {
  test('a sum for a topic includes it, unless the statement says it is not included', () => {
    expect(jobOf({ scope: { delivery: { allowance: '$95' } } }).job.scope.delivery).toEqual({
      included: true,
      allowance: 9500,
    })
    expect(
      jobOf({ scope: { delivery: { allowance: '$95', included: false } } }).job.scope.delivery.included,
    ).toBe(false)
    expect(jobOf({ scope: { delivery: { allowance: 0 } } }).job.scope.delivery.included).toBe(false)
    expect(jobOf({ scope: { delivery: { included: true } } }).job.scope.delivery).toEqual({
      included: true,
      allowance: 0,
    })
  })

  test('spots are the ground, unless the statement says it is a plane', () => {
    const spots = [{ x: 0, y: '13\'-6"', z: -6 }]
    expect(jobOf({ site: { ground: { spots } } }).job.site.ground).toEqual({
      kind: 'spots',
      spots: [{ x: 0, y: 5184, z: -192 }],
    })
    expect(jobOf({ site: { ground: { kind: 'plane', spots } } }).job.site.ground.kind).toBe('plane')
  })
})
