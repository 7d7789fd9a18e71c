import { mkdirSync, mkdtempSync, readdirSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import fc from 'fast-check'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { DEMO_JOB, FIELDS, setField } from '../../core/job/index.ts'
import { INPUTS } from '../../main/app/inputs.ts'
import { ServiceError } from '../../main/app/service-types.ts'
import { createEventStream } from '../../main/host/event-stream.ts'
import { openHost } from '../../main/host/server.ts'
import type { MethodName } from '../../shared/contract/index.ts'
import { openServices, REAL_WORKER, type TestServices } from '../main/app/test-services.ts'

/** A calculation costs a thousand times what a refused call does: fewer of them in the gate, all of them in the soak. */
const RUNS = Number(process.env.FC_RUNS ?? 0)
const SLOW =
  /^(estimate|widths|sizes|size|papers|quotes|workbook|ground|joints|wish|cutlist|rest|day|compare)\b/

const around = mkdtempSync(join(tmpdir(), 'kerfwright-hostile-'))
const folder = join(around, 'store')
/** what lies where the program runs: a relative path would lead there */
const beside = readdirSync(process.cwd())
let services: TestServices
let jobId = ''

beforeAll(async () => {
  mkdirSync(folder)
  services = await openServices({ folder, worker: REAL_WORKER, keep: true })
  jobId = (await services.call('jobs.last', {})).id
})
afterAll(async () => {
  await services.close()
  rmSync(around, { recursive: true, force: true })
})

const texts = fc.oneof(
  fc.constantFrom(
    '',
    "'; DROP TABLE jobs; --",
    '../../../etc/passwd',
    '..\\..\\x',
    '=cmd()',
    '<img src=x onerror=alert(1)>',
    '%n%s',
    '\u202egnp.exe',
    '\u0000',
    '\ud800',
    '__proto__',
    'constructor',
    '9'.repeat(400),
    'x'.repeat(10_000),
  ),
  fc.string({ unit: 'binary', maxLength: 40 }),
)
const numbers = fc.oneof(
  fc.constantFrom(0, -0, -1, 1, 2 ** 31, 2 ** 53, -(2 ** 53), 1e308, 5e-324, NaN, Infinity, 0.1),
  fc.integer(),
  fc.double(),
)
const plain = fc.oneof(texts, numbers, fc.boolean(), fc.constant(null), fc.constant(undefined))
const anything = fc.oneof(
  plain,
  fc.anything({ maxDepth: 3, withNullPrototype: true, withBigInt: true, withDate: true, withMap: true }),
)

/** A job with one field of it replaced by whatever comes. */
const statements = fc
  .tuple(fc.constantFrom(...FIELDS.map(({ path }) => path)), fc.oneof(texts, numbers))
  .map(([path, value]) => setField(DEMO_JOB, path, value as never))

/** What a caller that knows the method could send in a field of this name. */
function known(name: string): fc.Arbitrary<unknown> {
  if (name === 'statement') return fc.oneof(statements, fc.constant(DEMO_JOB))
  if (/^(jobId|id)$/.test(name)) return fc.oneof(fc.constant(jobId), texts)
  if (/^(edit|revision|from|to|step|width|height|count|length|kerf|endTrim|at)$/.test(name))
    return fc.oneof(fc.nat(20), fc.constantFrom(3840, 7680, 96, 32), numbers)
  return fc.oneof(texts, fc.array(texts, { maxLength: 3 }), numbers, fc.constant([]), fc.constant({}))
}

function inputOf(method: MethodName): fc.Arbitrary<unknown> {
  const schema: unknown = INPUTS[method]
  const shape = (schema as { shape?: object }).shape ?? {}
  const fields = Object.keys(shape)
  const record = fc
    .record(
      Object.fromEntries(
        fields.map((name) => [name, fc.oneof({ arbitrary: known(name), weight: 4 }, anything)]),
      ),
      {
        requiredKeys: [],
      },
    )
    .chain((made) =>
      fc.oneof(
        { arbitrary: fc.constant(made), weight: 5 },
        texts.map((key) => ({ ...made, [key]: 1 })),
      ),
    )
  return fields.length === 0 ? anything : fc.oneof({ arbitrary: record, weight: 5 }, anything)
}

/** The refusal of a call, or null where it was answered; anything else thrown is a bug and comes out of here. */
async function refusal(method: string, input: unknown): Promise<ServiceError | null> {
  try {
    await services.callAnything(method, input)
    return null
  } catch (error) {
    if (error instanceof ServiceError) return error
    throw error
  }
}

describe('whatever a method is called with', () => {
  test.each(Object.keys(INPUTS) as MethodName[])(
    '%s answers or refuses in a sentence, and never fails on its own account',
    async (method) => {
      const numRuns = RUNS || (SLOW.test(method) ? 6 : 40)
      await fc.assert(
        fc.asyncProperty(
          fc.constant(null).chain(() => inputOf(method)),
          async (input) => {
            const refused = await refusal(method, input)
            if (refused === null) return
            expect(['bad-input', 'not-found', 'conflict', 'stopped']).toContain(refused.code)
            expect(refused.message).toMatch(/[.!?]$/)
            expect(refused.message).not.toMatch(/\n\s+at |node:|\.ts:\d|\bundefined\b|\[object/)
            expect(refused.message.length).toBeLessThan(1000)
          },
        ),
        { numRuns },
      )
    },
  )

  test('a method that does not exist is refused, whatever it is called', async () => {
    await fc.assert(
      fc.asyncProperty(texts, async (name) => {
        expect((await refusal(name, {}))?.code).toBe('unknown-method')
      }),
      { numRuns: RUNS || 100 },
    )
  })

  test('over the door too nothing but a sentence comes back: no trace of the program’s inside', async () => {
    const logged: string[] = []
    const log = { info: () => undefined, error: (event: string) => void logged.push(event) }
    const host = await openHost({
      port: 0,
      windowFolder: folder,
      services: { call: services.callAnything, close: async () => undefined },
      events: createEventStream(),
      log,
    })
    const { origin } = new URL(host.link)
    const entry = await fetch(host.link, { redirect: 'manual' })
    const cookie = entry.headers.getSetCookie()[0]?.split(';', 1)[0] ?? ''
    const quick = (Object.keys(INPUTS) as MethodName[]).filter((method) => !SLOW.test(method))
    const body = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.json(),
      fc
        .tuple(fc.oneof(fc.constantFrom<string>(...quick), texts), fc.jsonValue())
        .map(([method, params]) => JSON.stringify({ jsonrpc: '2.0', id: 1, method, params })),
    )
    await fc.assert(
      fc.asyncProperty(body, async (text) => {
        const headers = { 'content-type': 'application/json', origin, cookie }
        const answer = await fetch(`${origin}/rpc`, { method: 'POST', headers, body: text })
        const told = (await answer.text()).slice(0, 5_000)
        expect(told).not.toMatch(/\\n\s+at |node:internal|\.ts:\d|node_modules/)
        expect(told).not.toContain('failed on its own account')
      }),
      { numRuns: RUNS || 150 },
    )
    await host.close()
    expect(logged).toEqual([])
  })

  test('afterwards the program still answers, the first job is there, and nothing lies beside the store', async () => {
    expect((await services.call('jobs.versions', { id: jobId })).length).toBeGreaterThan(0)
    expect(readdirSync(around)).toEqual(['store'])
    expect(readdirSync(process.cwd())).toEqual(beside)
  })
})
