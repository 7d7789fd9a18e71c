import { describe, expect, test } from 'vitest'
import {
  DEMO_JOB,
  defaultOf,
  FIELDS,
  type FieldSpec,
  fieldAt,
  findField,
  type Job,
  printBounds,
  printFieldValue,
  readJob,
  readValue,
  setField,
  valueAt,
} from '../../../core/job/index.ts'

function jobOf(statement: unknown): Job {
  const read = readJob(statement)
  if (!read.ok) throw new Error(JSON.stringify(read.error))
  return read.value.job
}

/** Paths of everything in a job that is not itself a branch. */
function leavesOf(value: unknown, path = ''): readonly string[] {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return [path]
  return Object.entries(value).flatMap(([key, child]) =>
    leavesOf(child, path === '' ? key : `${path}.${key}`),
  )
}

describe('the list of fields is the one source of the job', () => {
  test('every value of a job has a field, and every field a value, whether the ground is a plane or spots', () => {
    const spots = { site: { ground: { spots: [{ x: 0, y: 0, z: 0 }] } } }
    const held = new Set([...leavesOf(jobOf({})), ...leavesOf(jobOf(spots))])
    held.delete('version')
    // tell what is left out from what is stated as the same value
    for (const fact of ['snowStated', 'frostStated']) held.delete(`site.${fact}`)
    for (const side of ['front', 'rear']) held.delete(`frame.beams.${side}.setbackStated`)
    expect(FIELDS.map((field) => field.path).toSorted()).toEqual([...held].toSorted())
  })

  test('no path is listed twice', () => {
    expect(new Set(FIELDS.map((field) => field.path)).size).toBe(FIELDS.length)
  })

  test('a field is found by its path; a path that the program gets wrong is a bug', () => {
    expect(findField('size.width')?.label).toBe('Width')
    expect(findField('size')).toBeUndefined()
    expect(findField('toString')).toBeUndefined()
    expect(() => fieldAt('size.girth')).toThrow('the job has no field size.girth')
  })

  test('labels tell the fields of a section apart', () => {
    const labels = FIELDS.map((field) => `${field.section}: ${field.label}`)
    expect(new Set(labels).size).toBe(labels.length)
  })
})

describe.each(FIELDS)('the field $path', (field) => {
  test('has words for a person and a basis for its default', () => {
    expect(field.label).toMatch(/^\S.*\S$/)
    expect(field.help).toMatch(/^[A-Z0-9].{20,}\.$/s)
    expect(field.basis).toMatch(/\S/)
  })

  test('accepts its own default, and holds it when nothing is stated', () => {
    expect(valueAt(jobOf({}), field.path)).toEqual(defaultOf(field))
  })

  test('has choices just where it is one, each accepted, with as many labels', () => {
    expect(field.choices !== undefined).toBe(field.kind === 'choice')
    expect(field.choiceLabels?.length ?? field.choices?.length).toBe(field.choices?.length)
    for (const choice of field.choices ?? [])
      expect(readValue(field, choice)).toEqual({ ok: true, value: choice })
  })

  test('refuses null, a list and an object with a sentence', () => {
    for (const wrong of [null, [1], { a: 1 }]) {
      const read = readValue(field, wrong)
      expect(read.ok ? [] : read.error.map((fault) => fault.path.startsWith(field.path))).not.toContain(false)
      expect(read.ok).toBe(false)
    }
  })
})

/** How many of a field's own unit make one of the unit that a bare number states. */
const PER_STATED = { length: 32, money: 100, share: 100, count: 1, psf: 1 }

function perStated(field: FieldSpec): number | undefined {
  return new Map(Object.entries(PER_STATED)).get(field.kind)
}

const QUANTITIES = FIELDS.filter((field) => perStated(field) !== undefined)

describe.each(QUANTITIES)('the quantity $path', (field) => {
  test('has bounds with their reason, both of them accepted and nothing beyond', () => {
    const { min = Number.NaN, max = Number.NaN } = field
    const per = perStated(field) ?? Number.NaN
    expect(field.boundsReason).toMatch(/\S/)
    expect(readValue(field, min / per)).toEqual({ ok: true, value: min })
    expect(readValue(field, max / per)).toEqual({ ok: true, value: max })
    expect(readValue(field, (min - 1) / per)).toMatchObject({ ok: false, error: [{ path: field.path }] })
    expect(readValue(field, (max + 1) / per)).toMatchObject({ ok: false, error: [{ path: field.path }] })
  })
})

describe('the defaults that the code and the trade’s conventions ask for', () => {
  const job = jobOf({})
  test.each([
    ['code.edition', 'IRC 2021'],
    ['code.governs', 'the code’s tables'],
    ['frame.species', 'Southern Pine'],
    ['frame.grade', 'No.2'],
    ['frame.treatment', 'treated'],
    ['site.liveLoad', '40 psf'],
    ['site.deadLoad', '10 psf'],
    ['site.soilBearing', '1500 psf'],
    ['site.soil', 'unknown'],
    ['frame.joists.size', '2x10'],
    ['frame.joists.spacing', '1\'-4"'],
    ['frame.rimPlies', '1'],
    ['frame.beams.front.size', '2x12'],
    ['frame.beams.front.plies', '2'],
    ['frame.beams.front.setback', '2\'-0"'],
    ['frame.beams.front.posts', '4'],
    ['frame.beams.front.inset', '1\'-0"'],
    ['frame.postSize', '6x6'],
    ['ground.tube', '1\'-0"'],
    ['ground.base', '1\'-8"'],
    ['ground.baseThickness', '8"'],
    ['ground.projection', '4"'],
    ['ground.standoff', '1"'],
    ['ground.holeRoom', '4"'],
    ['ground.concreteWaste', '10 %'],
    ['ground.swell', '25 %'],
    ['decking.size', '5/4x6'],
    ['decking.overhang', '1"'],
    ['decking.gap', '1/8"'],
    ['decking.wallGap', '1/4"'],
    ['cutting.kerf', '1/8"'],
    ['cutting.endTrim', '0"'],
    ['cutting.postAllowance', '3"'],
    ['cutting.staggerPenalty', '$25.00'],
    ['pricing.method', 'margin, a share of the price'],
    ['pricing.margin', '30 %'],
    ['scope.stairs.included', 'no'],
    ['scope.flashing.included', 'yes'],
    ['scope.fasteners.included', 'yes'],
  ])('%s is %s', (path, printed) => {
    expect(printFieldValue(fieldAt(path), valueAt(job, path))).toBe(printed)
  })

  test('bounds are told in the field’s own unit', () => {
    expect(printBounds(fieldAt('size.width'))).toBe('from 4\'-0" to 100\'-0"')
    expect(printBounds(fieldAt('pricing.margin'))).toBe('from 0 % to 95 %')
    expect(printBounds(fieldAt('builder'))).toBe('')
  })

  test('spots are counted in words', () => {
    const field = fieldAt('site.ground.spots')
    const statement = setField({}, field.path, [{ x: 0, y: 0, z: 0 }])
    expect(printFieldValue(field, valueAt(jobOf(statement), field.path))).toBe('1 spot')
    expect(printFieldValue(field, [])).toBe('0 spots')
  })

  test('the falls of ground given by spots are at their defaults', () => {
    const job = jobOf({ site: { ground: { spots: [{ x: 0, y: 0, z: 0 }], away: { fall: 6 } } } })
    expect(valueAt(job, 'site.ground.away.fall')).toBe(0)
    expect(valueAt(jobOf(DEMO_JOB), 'site.ground.away.fall')).toBe(192)
  })
})
