import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { root } from './run-tool.ts'

const run = (...args: string[]) =>
  spawnSync(process.execPath, args, { cwd: root, encoding: 'utf8', timeout: 30_000 })

test('the gate refuses a check it does not have and names those it has', () => {
  const { status, stderr } = run(join(root, 'scripts/test.mjs'), '--only', 'everything')
  expect(status).toBe(2)
  expect(stderr).toContain('system, types, style, imports, dead-code, licences, build, unit, window')
})

test('the runner of single files says how it is used', () => {
  const { status, stderr } = run(join(root, 'scripts/run.mjs'))
  expect(status).toBe(2)
  expect(stderr).toContain('Name the file to run')
})
