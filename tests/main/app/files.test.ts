import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { fileNameFor, jobName } from '../../../core/job/index.ts'
import { readTextFile, writeWhole } from '../../../main/app/files.ts'
import { readPriceText } from '../../../main/app/price-file.ts'
import { scratch } from '../cli/run-line.ts'

const { folder, at, write } = scratch()

describe('writing a file', () => {
  test('puts it there whole, under its name only', () => {
    mkdirSync(at('own'))
    expect(writeWhole(at('own/a.txt'), 'łódź ½', 'replace')).toEqual({ ok: true, value: null })
    expect(readdirSync(at('own'))).toEqual(['a.txt'])
    expect(readTextFile(at('own/a.txt'))).toEqual({ ok: true, value: 'łódź ½' })
  })

  test('keeps what was there until the new one is whole', () => {
    const file = write('kept.txt', 'old')
    // the other name is taken by a folder, so the new file cannot be begun
    mkdirSync(join(folder, `.kept.txt.${process.pid}.part`))
    const written = writeWhole(file, 'new', 'replace')
    expect(written.ok).toBe(false)
    expect(readFileSync(file, 'utf8')).toBe('old')
  })

  test('creating refuses a file, a folder and a link that is there', () => {
    write('there.txt', 'mine')
    expect(writeWhole(at('there.txt'), 'new', 'create')).toMatchObject({
      ok: false,
      error: expect.stringContaining('already there'),
    })
    expect(writeWhole(folder, 'new', 'create')).toMatchObject({
      ok: false,
      error: expect.stringContaining('is a folder'),
    })
    expect(readFileSync(at('there.txt'), 'utf8')).toBe('mine')
  })

  test('a device stays a device', () => {
    expect(writeWhole('/dev/null', 'x', 'replace').ok).toBe(true)
    expect(statSync('/dev/null').isCharacterDevice()).toBe(true)
    expect(writeWhole('/dev/full', 'x', 'replace')).toMatchObject({
      ok: false,
      error: expect.stringContaining('the disk is full'),
    })
    expect(readdirSync('/dev').filter((name) => name.endsWith('.part'))).toEqual([])
  })

  test('a name too long is said, and nothing is left', () => {
    const long = at(`${'x'.repeat(300)}.xlsx`)
    expect(writeWhole(long, 'x', 'replace')).toMatchObject({
      ok: false,
      error: expect.stringContaining('the name is too long'),
    })
    expect(existsSync(long)).toBe(false)
  })

  test('bytes that are no UTF-8 are no text', () => {
    writeFileSync(at('bytes'), Buffer.from([0xff, 0xfe, 0x00]))
    expect(readTextFile(at('bytes'))).toMatchObject({
      ok: false,
      error: expect.stringContaining('not a text file in UTF-8'),
    })
  })
})

describe('a price file', () => {
  test.each([
    ['', 1, 1, 'the file is empty'],
    ['\n  {"name": }', 2, 12, 'a value is missing'],
    ['{\n  "name": 7\n}', 2, 3, 'name'],
    ['{\n  "lumber": [\n    { "size": "2x99" }\n  ]\n}', 3, 7, 'lumber[0].size'],
    ['{\n  "name": "a",\n  "name": "b"\n}', 3, 3, 'stands here a second time, after line 2'],
    ['{ "goods": [{ "sku": "a",\n "sku": "b" }] }', 2, 2, 'goods.0.sku "sku" stands here a second time'],
    ['{\n  "__proto__": { "name": "b" }\n}', 2, 3, '"__proto__" is no name'],
    ['[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[', 1, 33, 'nested more than'],
  ])('%j is refused at its place', (text, line, column, words) => {
    const read = readPriceText(text)
    if (read.ok) throw new Error('was read')
    const fault = read.error.find((one) => `${one.path} ${one.message}`.includes(words))
    expect(fault).toMatchObject({ line, column })
  })
})

describe('a job’s file name', () => {
  test.each([
    ['Heron Lane', 'Heron Lane.xlsx'],
    ['../../etc/passwd', '-..-etc-passwd.xlsx'],
    ['a:b*c?"<>|\\d', 'a-b-c------d.xlsx'],
    ['  ...  ', 'Job.xlsx'],
    ['CON', 'Job.xlsx'],
    ['two\nlines', 'two lines.xlsx'],
    // U+202E turns what follows: it would be shown as “deckxslx.exe”
    ['deck\u202Eexe.xslx\u2066', 'deckexe.xslx.xlsx'],
  ])('of %j is %s', (name, file) => {
    expect(fileNameFor({ name }, 'xlsx')).toBe(file)
  })

  test('a name of characters outside the first plane is cut between them', () => {
    expect(jobName({ name: '🪵'.repeat(300) })).toBe('🪵'.repeat(200))
  })
})
