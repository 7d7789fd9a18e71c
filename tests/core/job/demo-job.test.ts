import { expect, test } from 'vitest'
import { DEMO_JOB, readJob } from '../../../core/job/index.ts'

const read = readJob(DEMO_JOB)
if (!read.ok) throw new Error(JSON.stringify(read.error))
const { job, given } = read.value

test('the demo job is the deck worked by hand: 23 ft 6 in by 13 ft 6 in', () => {
  expect(job.size).toEqual({ width: 282 * 32, depth: 162 * 32, height: 42 * 32 })
  expect(job.site.attachment).toBe('ledger')
  expect(job.site.ground).toEqual({
    kind: 'plane',
    along: { fall: 0, over: 120 * 32 },
    away: { fall: 6 * 32, over: 162 * 32 },
  })
  expect(job.site.frostDepth).toBe(36 * 32)
  expect(job.frame.joists).toEqual({
    size: '2x10',
    spacing: 16 * 32,
    layoutFrom: 'left',
    overMiddle: 'by stock',
    longest: 20 * 12 * 32,
  })
  expect(job.frame.beams.front).toMatchObject({
    size: '2x12',
    plies: 2,
    setback: 24 * 32,
    posts: 4,
    inset: 12 * 32,
  })
  expect(job.ground).toMatchObject({
    tube: 12 * 32,
    base: 20 * 32,
    baseThickness: 8 * 32,
    projection: 4 * 32,
  })
  expect(job.decking).toMatchObject({ size: '5/4x6', overhang: 32, gap: 4, wallGap: 8 })
})

test('it says of itself that it is invented', () => {
  expect(job.notes).toContain('invented')
  expect(job.site.frostSource).toContain('invented')
})

test('it states some of its fields and leaves others at their default', () => {
  expect(given).toContain('size.width')
  expect(given).not.toContain('cutting.kerf')
})

test('it holds sums for some topics and says of others that they are not included', () => {
  expect(job.scope.delivery).toEqual({ included: true, allowance: 9500 })
  expect(job.scope['taking away']).toEqual({ included: false, allowance: 0 })
})
