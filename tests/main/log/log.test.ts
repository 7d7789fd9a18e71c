import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { homedir, tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, expect, test, vi } from 'vitest'
import { createLog, redact } from '../../../main/log/index.ts'

afterEach(() => vi.restoreAllMocks())

const folder = () => mkdtempSync(join(tmpdir(), 'kerfwright-log-'))

test('a line is JSON with its time, level and event', () => {
  const where = folder()
  createLog(where, () => new Date('2026-03-01T12:00:00Z')).info('host ready', { version: '0.1.0' })
  expect(JSON.parse(readFileSync(join(where, 'kerfwright.log'), 'utf8'))).toEqual({
    time: '2026-03-01T12:00:00.000Z',
    level: 'info',
    event: 'host ready',
    version: '0.1.0',
  })
})

test('what people wrote and what is secret is withheld, at any depth', () => {
  const text = JSON.stringify(redact({ statement: { job: 'Backyard' }, list: [{ token: 'abc' }], kept: 7 }))
  expect(text).toBe('{"statement":"[withheld]","list":[{"token":"[withheld]"}],"kept":7}')
})

test('the user’s home folder is written as ~', () => {
  expect(redact({ file: join(homedir(), 'x.db') })).toEqual({ file: join('~', 'x.db') })
})

test('a fault keeps its name, sentence and stack', () => {
  expect(redact(new TypeError('wrong'))).toMatchObject({ error: 'TypeError', message: 'wrong' })
})

test('a structure that contains itself, a long text and a bigint are cut, not fatal', () => {
  const loop: Record<string, unknown> = { count: 3n, text: 'x'.repeat(5000) }
  loop.self = loop
  expect(JSON.stringify(redact(loop)).length).toBeLessThan(12_000)
})

test('a full log moves aside and one older file is kept', () => {
  const where = folder()
  writeFileSync(join(where, 'kerfwright.log'), 'x'.repeat(1_000_001))
  createLog(where).error('after')
  expect(readdirSync(where).sort()).toEqual(['kerfwright.log', 'kerfwright.log.1'])
  expect(readFileSync(join(where, 'kerfwright.log'), 'utf8')).toContain('"event":"after"')
})

test('a log that cannot be written warns once and does not throw', () => {
  const warned = vi.spyOn(process.stderr, 'write').mockReturnValue(true)
  const log = createLog('/dev/null/nowhere')
  log.info('one')
  log.info('two')
  expect(warned).toHaveBeenCalledOnce()
  expect(String(warned.mock.calls[0]?.[0])).toContain('cannot be written')
})
