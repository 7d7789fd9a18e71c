import { describe, expect, test } from 'vitest'
import {
  clearField,
  DEMO_JOB,
  describeChange,
  FIELDS,
  type JobStatement,
  setField,
  statedValue,
  writeJobText,
} from '../../../core/job/index.ts'

describe('a field is stated, looked up and cleared', () => {
  test('a statement with the field stated is a new one, and the old is as it was', () => {
    const before: JobStatement = Object.freeze({ size: Object.freeze({ width: '20 ft' }) })
    const after = setField(before, 'size.width', '22 ft')
    expect(after).toEqual({ size: { width: '22 ft' } })
    expect(before).toEqual({ size: { width: '20 ft' } })
  })

  test('branches that were not touched are the same objects, so that an edit is cheap to compare', () => {
    const after = setField(DEMO_JOB, 'size.width', '22 ft')
    expect(after.frame).toBe(DEMO_JOB.frame)
    expect(after.size).not.toBe(DEMO_JOB.size)
  })

  test('text that no reader understands is kept as it is', () => {
    expect(statedValue(setField({}, 'size.width', '22 fee'), 'size.width')).toBe('22 fee')
  })

  test('what is not stated is undefined, also where the statement has another shape there', () => {
    expect(statedValue({}, 'size.width')).toBeUndefined()
    expect(statedValue({ size: 5 }, 'size.width')).toBeUndefined()
    expect(statedValue({ size: ['width'] }, 'size.width')).toBeUndefined()
    expect(setField({ size: 5 }, 'size.width', 240)).toEqual({ size: { width: 240 } })
  })

  test('clearing takes the field out, with the branches it leaves empty', () => {
    const stated = setField(setField({ name: 'a' }, 'frame.joists.size', '2x8'), 'frame.rimPlies', 2)
    expect(clearField(stated, 'frame.joists.size')).toEqual({ name: 'a', frame: { rimPlies: 2 } })
    expect(clearField(clearField(stated, 'frame.joists.size'), 'frame.rimPlies')).toEqual({ name: 'a' })
  })

  test('clearing what is not stated gives the statement itself', () => {
    expect(clearField(DEMO_JOB, 'cutting.kerf')).toBe(DEMO_JOB)
  })

  test('a path that is no field is a bug', () => {
    expect(() => setField({}, 'size', 5)).toThrow('the job has no field size')
    expect(() => clearField({}, '__proto__')).toThrow('the job has no field __proto__')
    expect(() => statedValue({}, 'size.girth')).toThrow('the job has no field size.girth')
  })

  test('fields stated in any order give the same bytes', () => {
    const forwards = FIELDS.reduce((s: JobStatement, f) => setField(s, f.path, f.default), {})
    const backwards = FIELDS.toReversed().reduce((s: JobStatement, f) => setField(s, f.path, f.default), {})
    expect(writeJobText(backwards)).toBe(writeJobText(forwards))
  })

  test('fields that stand already keep their order', () => {
    const shuffled: JobStatement = { size: { depth: 144, width: 240 }, version: 1, name: 'a' }
    expect(Object.keys(setField(shuffled, 'name', 'b'))).toEqual(['size', 'version', 'name'])
  })
})

describe('a change is told for undo', () => {
  const width = setField({}, 'size.width', '22 ft')
  test.each<[JobStatement, JobStatement, string]>([
    [{}, width, 'width to 22\'-0"'],
    [width, {}, 'width back to its default'],
    [width, setField(width, 'size.width', '22 fee'), 'width to “22 fee”'],
    [{}, { size: { width: [1] } }, 'width to “[1]”'],
    [{}, { frame: { species: 'HF' } }, 'species to “Hem-fir”'],
    [{}, { scope: { stairs: { included: true } } }, 'stairs: included to yes'],
    [{}, { site: { ground: { spots: [{ x: 0, y: 0, z: 0 }] } } }, 'spot heights to 1 spot'],
    [{}, { size: { width: 240, depth: 144 } }, 'width to 20\'-0" and depth to 12\'-0"'],
    [{}, { size: { width: 240, depth: 144, height: 36 } }, '3 fields'],
    [width, width, ''],
    [{}, { version: 1 }, ''],
  ])('%#', (before, after, told) => {
    expect(describeChange(before, after)).toBe(told)
  })
})
