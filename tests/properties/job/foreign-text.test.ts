import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  FIELDS,
  type JobStatement,
  type JsonValue,
  newJobText,
  readJob,
  readJobText,
  setField,
} from '../../../core/job/index.ts'

const names = fc.oneof(
  fc.constantFrom(
    ...FIELDS.flatMap((field) => field.path.split('.')),
    'version',
    '__proto__',
    'constructor',
    'a.b',
    '',
  ),
  fc.string({ maxLength: 8 }),
)
const values: fc.Arbitrary<JsonValue> = fc.letrec<{ value: JsonValue }>((tie) => ({
  value: fc.oneof(
    { maxDepth: 5 },
    fc.constantFrom<JsonValue>(
      null,
      true,
      false,
      '',
      '12 ft',
      '-6',
      '30 %',
      '$5',
      'ledger',
      'spots',
      0,
      -1,
      1e300,
      0.1,
    ),
    fc.double({ noNaN: true }),
    fc.string({ maxLength: 12 }),
    fc.array(tie('value'), { maxLength: 3 }),
    fc.dictionary(names, tie('value'), { maxKeys: 5 }),
  ),
})).value

/** A statement whose fields are real and whose values are anything. */
const statements: fc.Arbitrary<JobStatement> = fc
  .array(fc.tuple(fc.constantFrom(...FIELDS.map((field) => field.path)), values), { maxLength: 12 })
  .map((stated) => stated.reduce((s: JobStatement, [path, value]) => setField(s, path, value), {}))

function expectSentences(faults: readonly { readonly message: string; readonly fix: string }[]): void {
  expect(faults.length).toBeGreaterThan(0)
  for (const { message, fix } of faults) {
    expect(message).toMatch(/\S/)
    expect(fix).toMatch(/\S/)
    expect(message.length).toBeLessThan(400)
    expect(fix.length).toBeLessThan(600)
  }
}

test('no value makes the reader of jobs throw', () => {
  fc.assert(
    fc.property(fc.oneof(values, statements, fc.anything()), (value) => {
      const read = readJob(value)
      if (!read.ok) expectSentences(read.error)
    }),
  )
})

test('a job is read from its text as from its statement', () => {
  fc.assert(
    fc.property(statements, (statement) => {
      const text = JSON.stringify(statement)
      const read = readJobText(text)
      const direct = readJob(JSON.parse(text))
      if (read.ok) expect(direct).toEqual({ ok: true, value: read.value.read })
      else expect(direct.ok && !text.includes('__proto__')).toBe(false)
    }),
  )
})

/** A starting job with a few of its characters cut out, doubled or replaced. */
const damaged = fc
  .array(
    fc.tuple(
      fc.nat(),
      fc.nat({ max: 8 }),
      fc.string({ unit: fc.constantFrom(...'{}[]",:\\/* \n1a'.split('')), maxLength: 3 }),
    ),
    {
      minLength: 1,
      maxLength: 4,
    },
  )
  .map((edits) =>
    edits.reduce((text, [at, cut, put]) => {
      const start = at % (text.length + 1)
      return text.slice(0, start) + put + text.slice(start + cut)
    }, '{ "version": 1, "size": { "width": "20 ft", "depth": 144 }, /* x */ "site": { "ground": { "spots": [ { "x": 0, "y": 0, "z": 0 } ] } } }'),
  )

test('no text makes the reader of job files throw, and every fault has a place in the text', () => {
  fc.assert(
    fc.property(fc.oneof(damaged, fc.string({ unit: 'binary', maxLength: 200 }), fc.json()), (text) => {
      const read = readJobText(text)
      if (read.ok) return
      expectSentences(read.error)
      const lines = text.split(/\r\n|\r|\n/)
      for (const { line = 0, column = 0 } of read.error) {
        expect(line).toBeGreaterThanOrEqual(1)
        expect(line).toBeLessThanOrEqual(lines.length)
        expect(column).toBeGreaterThanOrEqual(1)
        expect(column).toBeLessThanOrEqual((lines[line - 1] ?? '').length + 1)
      }
    }),
  )
})

test('a starting job cut off anywhere is refused or read, never thrown at', () => {
  const whole = newJobText()
  fc.assert(
    fc.property(fc.nat({ max: whole.length }), (length) => {
      const read = readJobText(whole.slice(0, length))
      if (!read.ok) expectSentences(read.error)
    }),
  )
})
