import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { FIELDS, fieldAt } from '../../../core/job/index.ts'
import { feet, inches } from '../../../core/units/index.ts'
import {
  faultSentence,
  feetNote,
  fieldText,
  nudged,
  nudgeStep,
  readText,
  statedForm,
} from '../../../renderer/state/field-value.ts'

const width = fieldAt('size.width')
const spacing = fieldAt('frame.joists.spacing')

describe('the text of a field', () => {
  test('a width reads in feet and inches, a spacing in inches', () => {
    expect(fieldText(width, feet(24))).toBe(`24'-0"`)
    expect(fieldText(spacing, inches(16))).toBe('16 in')
  })

  test('what a carpenter types is read, and written into the statement in one form', () => {
    const read = readText(width, '23-6')
    expect(read).toEqual({ ok: true, value: feet(23.5) })
    expect(read.ok && statedForm(width, read.value)).toBe(`23'-6"`)
  })

  test('a wrong text gets a sentence that names the field, the fault and what would be right', () => {
    const read = readText(width, '24 feets')
    expect(read.ok).toBe(false)
    expect(!read.ok && read.error).toMatch(/^Width .*feets.*12 ft 6 in.*\.$/)
  })

  test('a width beyond its bounds is refused with the bounds', () => {
    const read = readText(width, `10000'`)
    expect(!read.ok && read.error).toMatch(/100'-0"/)
  })

  test('every field of the job takes back the text it shows for its bounds', () => {
    for (const field of FIELDS) {
      for (const bound of [field.min, field.max]) {
        if (bound === undefined || field.kind === 'text') continue
        expect(readText(field, fieldText(field, bound)), field.path).toEqual({ ok: true, value: bound })
      }
    }
  })

  test('a fault becomes one sentence with one full stop', () => {
    expect(faultSentence({ message: 'the posts meet.', fix: 'take 3 posts.' })).toBe(
      'The posts meet: take 3 posts.',
    )
    expect(faultSentence({ message: 'no deck', fix: '' })).toBe('No deck.')
  })
})

describe('arrow keys', () => {
  test('a width goes by 6 in and lands on the half foot', () => {
    expect(nudged(width, feet(23.5), 1)).toBe(feet(24))
    expect(nudged(width, feet(23.5) + inches(2), 1)).toBe(feet(24))
    expect(nudged(width, feet(23.5) + inches(2), -1)).toBe(feet(23.5))
  })

  test('no press leads out of the bounds or off the step, for any field with numbers', () => {
    const numeric = FIELDS.filter(
      ({ kind, min, max }) => kind !== 'text' && min !== undefined && max !== undefined,
    )
    fc.assert(
      fc.property(
        fc.constantFrom(...numeric),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.integer({ min: -4, max: 4 }),
        (field, at, steps) => {
          const { min = 0, max = 0 } = field
          const value = Math.round(min + at * (max - min))
          const next = nudged(field, value, steps)
          expect(next).toBeGreaterThanOrEqual(min)
          expect(next).toBeLessThanOrEqual(max)
          expect(Number.isInteger(next)).toBe(true)
          expect(Math.abs(next % nudgeStep(field)) === 0 || next === min || next === max).toBe(true)
        },
      ),
    )
  })
})

describe('a bare number in a deck’s width or depth', () => {
  const depth = fieldAt('size.depth')

  test('is feet up to 60, as the trade says them, and that is said beside it', () => {
    expect(readText(width, '16')).toEqual({ ok: true, value: feet(16) })
    expect(readText(depth, ' 12.5 ')).toEqual({ ok: true, value: feet(12.5) })
    expect(readText(width, '60')).toEqual({ ok: true, value: feet(60) })
    expect(feetNote(width, '16')).toBe(`read as feet: 16'-0"`)
  })

  test('is inches above, as everywhere else, and so is a text that says its unit', () => {
    expect(readText(width, '144')).toEqual({ ok: true, value: feet(12) })
    expect(readText(width, '61')).toEqual({ ok: true, value: inches(61) })
    expect(readText(width, '50 in')).toEqual({ ok: true, value: inches(50) })
    expect(feetNote(width, '144')).toBe('')
    expect(feetNote(width, `16'`)).toBe('')
  })

  test('stays inches in a height and in every other length', () => {
    expect(readText(fieldAt('size.height'), '42')).toEqual({ ok: true, value: inches(42) })
    expect(readText(spacing, '16')).toEqual({ ok: true, value: inches(16) })
  })

  test('is refused beyond the bounds of the field, in feet', () => {
    const read = readText(depth, '50')
    expect(!read.ok && read.error).toMatch(/Depth is 50'-0", more than 40'-0"/)
    expect(feetNote(depth, '50')).toBe('')
  })
})
