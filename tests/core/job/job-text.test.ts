import { describe, expect, test } from 'vitest'
import {
  DEMO_JOB,
  type Fault,
  FIELDS,
  type JobStatement,
  newJobText,
  readJob,
  readJobText,
  writeJobText,
} from '../../../core/job/index.ts'

function _faultsOf(text: string): readonly Fault[] {
  const read = readJobText(text)
  return read.ok ? [] : read.error
}

describe('a job file is JSON that a person may write', () => {
  test('comments, trailing commas and a byte order mark are allowed', () => {
    const text = '\uFEFF// my deck\n{ /* the size */ "size": { "width": "22 ft", }, }\n'
    const read = readJobText(text)
    expect(read).toMatchObject({
      ok: true,
      value: { statement: { size: { width: '22 ft' } }, read: { given: ['size.width'] } },
    })
  })

  test('the statement keeps the user’s own words', () => {
    const read = readJobText('{ "size": { "width": "22\'", "depth": 144.0 } }')
    expect(read.ok && read.value.statement).toEqual({ size: { width: "22'", depth: 144 } })
  })
})

describe('a job file is written', () => {
  test('with its version first, and the same statement gives the same bytes', () => {
    expect(writeJobText({ size: { width: '22 ft' } })).toBe(
      '{\n  "version": 1,\n  "size": {\n    "width": "22 ft"\n  }\n}\n',
    )
    expect(writeJobText({ name: 'a', version: 1 })).toBe('{\n  "version": 1,\n  "name": "a"\n}\n')
  })

  test('and read back as it was', () => {
    const read = readJobText(writeJobText(DEMO_JOB))
    expect(read.ok && read.value.statement).toEqual(DEMO_JOB)
  })
})

describe('a starting job', () => {
  const text = newJobText()

  test('states nothing but its version, so that every field is at its default', () => {
    const read = readJobText(text)
    expect(read.ok && read.value.read.given).toEqual([])
    expect(read.ok && Object.keys(read.value.statement)).toContain('version')
  })

  test('holds every field: with the // taken off, each is stated, at the value of its default', () => {
    const stated = readJobText(text.replace(/^( *)\/\/ ("[^"]+": .*,)$/gm, '$1$2'))
    if (!stated.ok) throw new Error(JSON.stringify(stated.error))
    expect(stated.value.read.given).toEqual(FIELDS.map((field) => field.path))
    const plain = readJob({})
    if (!plain.ok) throw new Error(JSON.stringify(plain.error))
    const { frame, site, ...rest } = plain.value.job
    const beams = {
      front: { ...frame.beams.front, setbackStated: true },
      rear: { ...frame.beams.rear, setbackStated: true },
    }
    expect(stated.value.read.job).toEqual({
      ...rest,
      site: { ...site, snowStated: true, frostStated: true },
      frame: { ...frame, beams },
    })
  })

  test('says of every field what it is', () => {
    const prose = text.replace(/\n *\/\/ /g, ' ')
    for (const field of FIELDS) expect(prose).toContain(`${field.label}. ${field.help}`)
  })

  test('names the choices and the bounds of a field', () => {
    const prose = text.replace(/\n *\/\/ /g, ' ')
    expect(prose).toContain('Only "IRC 2021". Default:')
    expect(prose).toContain(
      'One of "lag" (1/2 in lag screws), "bolt" (1/2 in bolts through the band). Default:',
    )
    expect(prose).toContain('From 4\'-0" to 100\'-0". Default:')
    expect(prose).not.toContain('undefined')
  })

  test('keeps to lines that fit a terminal', () => {
    expect(Math.max(...text.split('\n').map((line) => line.length))).toBeLessThanOrEqual(110)
  })
})

test('a written statement is read as the same job', () => {
  const statement: JobStatement = {
    site: { ground: { spots: [{ x: 0, y: '13\'-6"', z: -6 }] } },
    name: 'a "quoted" \\ name',
  }
  const again = readJobText(writeJobText(statement))
  const direct = readJob(statement)
  expect(again.ok && again.value.read).toEqual(direct.ok && direct.value)
})
