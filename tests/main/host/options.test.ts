import { expect, test } from 'vitest'
import { parseHostFlags } from '../../../main/host/options.ts'

test('without flags the system chooses the port and the store is the usual one', () => {
  expect(parseHostFlags([])).toEqual({ ok: true, value: { port: 0, store: null } })
})

test('a port and a folder are taken as given', () => {
  const flags = parseHostFlags(['--port', '8123', '--store', 'jobs here'])
  expect(flags).toEqual({ ok: true, value: { port: 8123, store: 'jobs here' } })
})

test.each([
  [['--port', '-1'], /--port/],
  [['--port', '65536'], /0 to 65535, not "65536"/],
  [['--port', '80x'], /not "80x"/],
  [['--store', ''], /--store takes a folder/],
  [['--prot', '1'], /The host takes --port NUMBER and --store FOLDER/],
  [['extra'], /The host takes --port NUMBER and --store FOLDER/],
])('%j is refused with a sentence', (args, sentence) => {
  const flags = parseHostFlags(args)
  expect(flags.ok).toBe(false)
  expect(flags.ok ? '' : flags.error).toMatch(sentence)
})
