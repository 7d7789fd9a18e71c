import { type ChildProcess, spawn } from 'node:child_process'
import { mkdtempSync, writeFileSync } from 'node:fs'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { afterEach, expect, test } from 'vitest'

const entry = resolve(import.meta.dirname, '../../../main/host/index.ts')
const running: ChildProcess[] = []
afterEach(() => {
  for (const child of running.splice(0)) child.kill('SIGKILL')
})

const newStore = () => mkdtempSync(join(tmpdir(), 'kerfwright-process-'))

interface Started {
  readonly child: ChildProcess
  /** the printed link; rejects with what stood on stderr where the host ended without one */
  readonly link: Promise<string>
  readonly ended: Promise<number | null>
}

function start(args: readonly string[], stdio: 'pipe' | 'ipc' = 'pipe'): Started {
  const child = spawn(process.execPath, [entry, ...args], {
    stdio: stdio === 'ipc' ? ['ignore', 'pipe', 'pipe', 'ipc'] : ['ignore', 'pipe', 'pipe'],
  })
  running.push(child)
  let out = ''
  let errors = ''
  const said = new Promise((done) => child.stderr?.once('end', done))
  // not 'close': that event does not come after the channel was disconnected from this side
  const ended = new Promise<number | null>((done) => child.once('exit', done))
  const link = new Promise<string>((done, failed) => {
    child.stdout?.on('data', (part) => {
      out += part
      const found = /^Ready: (\S+)\n/m.exec(out)?.[1]
      if (found) done(found)
    })
    child.stderr?.on('data', (part) => {
      errors += part
    })
    Promise.all([ended, said]).then(() => failed(new Error(errors)))
  })
  link.catch(() => {})
  return { child, link, ended }
}

async function enter(link: string): Promise<{ origin: string; cookie: string }> {
  const answer = await fetch(link, { redirect: 'manual' })
  return { origin: new URL(link).origin, cookie: answer.headers.getSetCookie()[0]?.split(';', 1)[0] ?? '' }
}

async function call(
  link: string,
  method: string,
  params: object,
): Promise<{ result?: unknown; error?: unknown }> {
  const { origin, cookie } = await enter(link)
  const answer = await fetch(`${origin}/rpc`, {
    method: 'POST',
    headers: { origin, cookie, 'content-type': 'application/json' },
    body: JSON.stringify({ jsonrpc: '2.0', id: 1, method, params }),
  })
  return (await answer.json()) as { result?: unknown; error?: unknown }
}

test('the host prints its link, answers on it, and ends with code 0 when it is asked to', async () => {
  const { child, link, ended } = start(['--store', newStore()])
  expect(await link).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/\?t=[\w-]{32}$/)
  expect(await call(await link, 'app.info', {})).toMatchObject({ result: { door: 'browser' } })
  child.kill('SIGTERM')
  expect(await ended).toBe(0)
})

test('a window that listens for events does not hold the end up', async () => {
  const { child, link, ended } = start(['--store', newStore()])
  const { origin, cookie } = await enter(await link)
  const stream = await fetch(`${origin}/events`, { headers: { cookie } })
  expect(stream.status).toBe(200)
  child.kill('SIGTERM')
  expect(await ended).toBe(0)
})

test('the host goes when its launcher does, however that went', async () => {
  const { child, link, ended } = start(['--store', newStore()], 'ipc')
  await link
  child.disconnect()
  expect(await ended).toBe(0)
})

test('two copies run side by side on one store', async () => {
  const store = newStore()
  const first = start(['--store', store])
  const second = start(['--store', store])
  expect(await call(await first.link, 'jobs.list', {})).toHaveProperty('result')
  expect(await call(await second.link, 'jobs.list', {})).toHaveProperty('result')
  expect(await first.link).not.toBe(await second.link)
})

test('a taken port, a bad flag and a store that is a file end it with code 2 and a sentence', async () => {
  const taken = createServer().listen(0, '127.0.0.1')
  await new Promise((done) => taken.once('listening', done))
  const { port } = taken.address() as { port: number }
  const onTakenPort = start(['--store', newStore(), '--port', String(port)])
  await expect(onTakenPort.link).rejects.toThrow('This port is taken')
  expect(await onTakenPort.ended).toBe(2)
  taken.close()

  const badFlag = start(['--prot', '1'])
  await expect(badFlag.link).rejects.toThrow('The host takes --port NUMBER and --store FOLDER')
  expect(await badFlag.ended).toBe(2)

  const file = join(newStore(), 'file')
  writeFileSync(file, 'not a folder')
  const onFile = start(['--store', file])
  await expect(onFile.link).rejects.toThrow(/^[A-Z].*\.\n$/)
  expect(await onFile.ended).toBe(2)
})
