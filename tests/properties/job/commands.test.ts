import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  clearField,
  FIELDS,
  type JobStatement,
  setField,
  statedValue,
  writeJobText,
} from '../../../core/job/index.ts'

const paths = fc.constantFrom(...FIELDS.map((field) => field.path))
const edits = fc.array(fc.tuple(paths, fc.option(fc.integer(), { nil: undefined })), { maxLength: 40 })

function applied(statement: JobStatement, path: string, value: number | undefined): JobStatement {
  return value === undefined ? clearField(statement, path) : setField(statement, path, value)
}

test('after any edits each field holds what was stated last, and no empty branch is left', () => {
  fc.assert(
    fc.property(edits, (steps) => {
      const statement = steps.reduce((s: JobStatement, [path, value]) => applied(s, path, value), {})
      const last = new Map(steps)
      for (const { path } of FIELDS) expect(statedValue(statement, path)).toBe(last.get(path))
      expect(JSON.stringify(statement)).not.toMatch(/\{\}.|.\{\}/)
    }),
  )
})

test('the bytes of a statement depend on what it states, not on the order of the edits', () => {
  fc.assert(
    fc.property(edits, (steps) => {
      const edited = steps.reduce((s: JobStatement, [path, value]) => applied(s, path, value), {})
      const straight = [...new Map(steps)].reduce(
        (s: JobStatement, [path, value]) => applied(s, path, value),
        {},
      )
      expect(writeJobText(edited)).toBe(writeJobText(straight))
    }),
  )
})
