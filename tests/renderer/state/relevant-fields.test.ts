import { expect, test } from 'vitest'
import { readJob } from '../../../core/job/index.ts'
import { relevantFields } from '../../../renderer/state/relevant-fields.ts'

function pathsOf(stairs: object): readonly string[] {
  const read = readJob({ stairs })
  if (!read.ok) throw new Error(JSON.stringify(read.error))
  return relevantFields(read.value.job, ['stairs']).map(({ path }) => path)
}

test('second stairs are asked for once there are first ones, third ones once there are second ones', () => {
  expect(pathsOf({ kind: 'none' })).toEqual(['stairs.kind'])
  const first = pathsOf({ kind: 'straight' })
  expect(first).toContain('stairs.width')
  expect(first.filter((path) => path.split('.').length > 2)).toEqual(['stairs.second.kind'])
  const second = pathsOf({ kind: 'straight', second: { kind: 'landing' } })
  expect(second).toEqual(
    expect.arrayContaining(['stairs.second.landingDepth', 'stairs.second.edge', 'stairs.third.kind']),
  )
  expect(second).not.toContain('stairs.landingDepth')
  expect(second).not.toContain('stairs.third.width')
})

test('stairs that a file states stay in sight without those before them', () => {
  expect(pathsOf({ kind: 'none', third: { kind: 'straight' } })).toEqual(
    expect.arrayContaining(['stairs.kind', 'stairs.third.kind', 'stairs.third.width']),
  )
})
