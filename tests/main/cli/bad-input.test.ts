import { existsSync, mkdirSync, readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { DEMO_JOB } from '../../../core/job/index.ts'
import { SAMPLE_BOOK, writePriceBook } from '../../../core/pricing/index.ts'
import { runLine, scratch } from './run-line.ts'

const { folder, at, write } = scratch()
const demo = write('demo.json', DEMO_JOB)

/** The sample book as its file, changed by hand. */
function prices(
  name: string,
  change: (book: {
    lumber: { size: string; stock: { length: string }[] }[]
    goods: { sku: string }[]
  }) => void,
) {
  const written: unknown = writePriceBook(SAMPLE_BOOK)
  const book = (typeof written === 'string' ? JSON.parse(written) : structuredClone(written)) as Parameters<
    typeof change
  >[0]
  change(book)
  return write(name, book)
}

describe('a job file that cannot be used', () => {
  test.each([
    ['empty', '', /empty\.json:1:1: the file is empty/],
    ['no-json', 'a letter to the yard', /no-json\.json:1:1: /],
    ['cut-off', '{ "size": {\n  "width": "20 ft"', /cut-off\.json:2:\d+: /],
    ['a-list', '[]', /a-list\.json:1:1: a job is an object/],
    ['unknown-field', { size: { widht: '20 ft' } }, /unknown-field\.json:3:5: size\.widht: .*width/],
    ['wrong-unit', { size: { width: '20 lb' } }, /wrong-unit\.json:3:5: size\.width: /],
    ['a-metre', { size: { width: '6 m' } }, /a-metre\.json:3:5: size\.width: /],
    ['nothing', { size: { width: 0 } }, /nothing\.json:3:5: size\.width: /],
    ['negative', { size: { width: '-20 ft' } }, /negative\.json:3:5: size\.width: /],
    ['a-hair', { size: { width: '1/64 in' } }, /a-hair\.json:3:5: size\.width: /],
    ['a-road', { size: { width: '10,000 ft' } }, /a-road\.json:3:5: size\.width: /],
    ['a-longer-road', { size: { width: '10000 ft' } }, /a-longer-road\.json:3:5: size\.width: /],
    ['newer', { version: 99, size: { width: '20 ft' } }, /newer\.json:2:3: version: .*newer/],
  ])(
    '%s: the fault is told with its place, nothing is written, the file stays',
    async (name, content, sentence) => {
      const file = write(`${name}.json`, content)
      const before = readFileSync(file)
      const { code, said, warned } = await runLine('estimate', file, '--xlsx', at('never.xlsx'))
      expect(warned).toMatch(sentence)
      expect(code).toBe(2)
      expect(said).toBe('')
      expect(existsSync(at('never.xlsx'))).toBe(false)
      expect(readFileSync(file).equals(before)).toBe(true)
    },
  )

  test('all faults are told, not only the first', async () => {
    const file = write('three.json', { size: { width: '20 lb', depth: -1 }, builder: 'nobody' })
    const { code, warned } = await runLine('check', file)
    expect(code).toBe(2)
    expect(warned.trimEnd().split('\n')).toHaveLength(3)
  })

  test('a file that is not there, a folder and a file that is no text are said to be so', async () => {
    expect(await runLine('check', at('nowhere.json'))).toMatchObject({
      code: 2,
      warned: expect.stringContaining('there is no such file'),
    })
    expect(await runLine('check', folder)).toMatchObject({
      code: 2,
      warned: expect.stringContaining('it is a folder'),
    })
    const latin = write('latin.json', '')
    const { writeFileSync } = await import('node:fs')
    writeFileSync(latin, Buffer.from([0x7b, 0xe9, 0x7d]))
    expect(await runLine('check', latin)).toMatchObject({
      code: 2,
      warned: expect.stringContaining('not a text file in UTF-8'),
    })
  })

  test('what a job file says cannot colour or move the terminal', async () => {
    const file = write('escape.json', '{ "\\u001b[31mred": 1 }')
    const { warned } = await runLine('check', file)
    expect(warned).not.toContain('\u001b')
  })
})

describe('prices that cannot be used', () => {
  test('a good without a price is named, and nothing is written', async () => {
    const file = prices('no-hanger.json', (book) => {
      book.goods = book.goods.filter((good) => good.sku !== 'joist-hanger-2x10')
    })
    const { code, said, warned } = await runLine(
      'estimate',
      demo,
      '--prices',
      file,
      '--xlsx',
      at('never.xlsx'),
    )
    expect(warned).toMatch(/no-hanger\.json: .*joist-hanger-2x10/)
    expect(code).toBe(2)
    expect(said).toBe('')
    expect(existsSync(at('never.xlsx'))).toBe(false)
  })

  test('no stock long enough for a piece that may not be jointed is said, with what would help', async () => {
    const file = prices('short.json', (book) => {
      for (const product of book.lumber) {
        if (product.size === '2x10')
          product.stock = product.stock.filter(({ length }) => Number.parseInt(length, 10) <= 12)
      }
    })
    const { code, warned } = await runLine('estimate', demo, '--prices', file)
    expect(warned).toMatch(/short\.json: .*(13'-4 1\/2"|13'-3")/)
    expect(code).toBe(2)
  })

  test('a run that no admissible joint makes short enough is said', async () => {
    const job = write('two-posts.json', {
      ...DEMO_JOB,
      frame: {
        ...(DEMO_JOB.frame as object),
        beams: { front: { size: '2x12', plies: 2, setback: '24 in', posts: 2, inset: '12 in' } },
      },
    })
    const file = prices('short-beam.json', (book) => {
      for (const product of book.lumber) {
        if (product.size === '2x12')
          product.stock = product.stock.filter(({ length }) => Number.parseInt(length, 10) <= 20)
      }
    })
    const { code, warned } = await runLine('estimate', job, '--prices', file)
    expect(warned).toMatch(/short-beam\.json: .*23'-6"/)
    expect(code).toBe(2)
  })

  test('a price book that is not one is refused with the place of the fault', async () => {
    expect((await runLine('estimate', demo, '--prices', write('empty-book.json', ''))).warned).toMatch(
      /empty-book\.json:1:1: the file is empty/,
    )
    expect((await runLine('estimate', demo, '--prices', write('list.json', '[1]'))).warned).toMatch(
      /list\.json:1:1: /,
    )
    const file = prices('typo.json', (book) => {
      Object.assign(book.goods[1] ?? {}, { price: 'cheap' })
    })
    const { code, warned } = await runLine('estimate', demo, '--prices', file)
    expect(code).toBe(2)
    expect(warned).toMatch(/typo\.json:\d+:\d+: goods\[1\]\.price: /)
  })
})

describe('prices named by the job that cannot be used', () => {
  const naming = (book: string) => ({ ...DEMO_JOB, pricing: { ...(DEMO_JOB.pricing as object), book } })

  test('a file that is not there is a fault at the field, with what would be right', async () => {
    const job = write('no-book.json', naming('yard/none.json'))
    const { code, said, warned } = await runLine('estimate', job)
    expect(warned).toMatch(/no-book\.json:\d+:\d+: pricing\.book: .*yard\/none\.json cannot be used/)
    expect(warned).toContain('there is no such file')
    const line = Number(/no-book\.json:(\d+):/.exec(warned)?.[1])
    expect(readFileSync(job, 'utf8').split('\n')[line - 1]).toContain('"book"')
    expect([code, said]).toEqual([2, ''])
  })

  test('a file that is no price book is a fault at the field and at its own place', async () => {
    write('twice.json', '{ "name": "a",\n  "name": "b" }')
    const job = write('bad-book.json', naming('twice.json'))
    for (const words of [
      ['estimate', job],
      ['compare', job, '--width', '20ft..20ft'],
    ]) {
      const { code, said, warned } = await runLine(...words)
      expect(warned).toMatch(/bad-book\.json:\d+:\d+: pricing\.book: /)
      expect(warned).toMatch(/twice\.json:2:3: name: .*second time/)
      expect([code, said]).toEqual([2, ''])
    }
  })
})

describe('a target that cannot be written', () => {
  test('a folder, a folder that is not there, a file for a folder', async () => {
    const cases: [string, string][] = [
      [folder, 'is a folder; name a file in it'],
      [at('no/such/out.xlsx'), 'The folder'],
      [`${demo}/out.xlsx`, 'a part of the path is a file'],
    ]
    for (const [target, sentence] of cases) {
      const { code, said, warned } = await runLine('estimate', demo, '--xlsx', target)
      expect(warned).toContain(sentence)
      expect([code, said]).toEqual([2, ''])
    }
    expect(readdirSync(folder).filter((name) => name.includes('.part'))).toEqual([])
  })

  test('a full device', async () => {
    const { code, warned } = await runLine('estimate', demo, '--xlsx', '/dev/full')
    expect(warned).toContain('/dev/full cannot be written: the disk is full')
    expect(code).toBe(2)
    expect(existsSync('/dev/full')).toBe(true)
  })

  test('a new job does not replace a file that is there, and needs a folder that is', async () => {
    const mine = write('mine.json', 'my own words')
    expect(await runLine('new', mine)).toMatchObject({
      code: 2,
      warned: expect.stringContaining('already there'),
    })
    expect(readFileSync(mine, 'utf8')).toBe('my own words')
    expect(await runLine('new', at('no/such.json'))).toMatchObject({
      code: 2,
      warned: expect.stringContaining('is not there'),
    })
    mkdirSync(at('a-folder'))
    expect(await runLine('new', at('a-folder'))).toMatchObject({
      code: 2,
      warned: expect.stringContaining('is a folder'),
    })
  })
})
