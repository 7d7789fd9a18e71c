import { spawn, spawnSync } from 'node:child_process'
import { existsSync, lstatSync, mkdirSync, readdirSync, readFileSync, symlinkSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { DEMO_JOB } from '../../../core/job/index.ts'
import { SAMPLE_BOOK, writePriceBook } from '../../../core/pricing/index.ts'
import { printMoney } from '../../../core/units/index.ts'
import { priced } from '../exports/priced.ts'
import { readBook } from '../exports/recalculate.ts'
import { runLine, scratch } from './run-line.ts'

const { folder, at, write } = scratch()
const demo = write('demo.json', DEMO_JOB)
const low = write('low.json', { ...DEMO_JOB, size: { ...(DEMO_JOB.size as object), height: '22 in' } })
const ENTRY = join(import.meta.dirname, '../../../main/cli/index.ts')

describe('estimate', () => {
  test('tells price, order, cutting plan, checks, hours and what is left out, and which prices they rest on', async () => {
    const { code, said } = await runLine('estimate', demo)
    const { pricing, plans, checks } = await priced()
    for (const words of [
      'Prices: Sample prices (invented), 2026-11-01',
      'These prices are invented',
      printMoney(pricing.totals.price),
      printMoney(pricing.totals.cost),
      'Order for the yard',
      'Cutting plan',
      'Is it in the price?',
      'Have utilities marked before digging',
    ]) {
      expect(said).toContain(words)
    }
    // as its field is called, not by its key
    expect(said).toMatch(/^ *Marking of services +/m)
    for (const { product } of plans) expect(said).toContain(`${product.size} Southern Pine No.2`)
    for (const line of pricing.lines) expect(said).toContain(printMoney(line.amount))
    for (const { title } of checks) expect(said).toContain(title)
    expect(code).toBe(0)
  })

  test('ends with 0 where every check passes', async () => {
    const { code, said } = await runLine('estimate', low)
    expect(said).not.toMatch(/▲ fails|◇/)
    expect(code).toBe(0)
  })

  test('a job that fails a check is written all the same, and ends with 1', async () => {
    const file = write('long-joists.json', {
      ...DEMO_JOB,
      frame: { ...(DEMO_JOB.frame as object), joists: { size: '2x6', spacing: '24 in' } },
    })
    const { code, said } = await runLine('estimate', file, '--xlsx', at('fails.xlsx'))
    expect(said).toMatch(/▲ fails +Joist span/)
    expect(code).toBe(1)
    expect(existsSync(at('fails.xlsx'))).toBe(true)
  })

  test('no line is wider than a terminal', async () => {
    const { said } = await runLine('estimate', demo)
    expect(said.split('\n').filter((line) => line.length > 110)).toEqual([])
  })

  test('as JSON holds the same numbers, the same bytes each time', async () => {
    const first = await runLine('estimate', demo, '--json')
    const again = await runLine('estimate', demo, '--json')
    expect(first.said).toBe(again.said)
    const { prices, estimate } = JSON.parse(first.said)
    expect(prices).toMatchObject({ name: SAMPLE_BOOK.name, date: SAMPLE_BOOK.date, invented: true })
    expect(estimate.pricing.totals).toEqual((await priced()).pricing.totals)
  })

  test('writes a workbook that replaces the one before, leaves nothing else, and follows a link', async () => {
    const file = write('out.xlsx', 'an old one')
    symlinkSync(file, at('link.xlsx'))
    const { warned } = await runLine('estimate', low, '--xlsx', at('link.xlsx'))
    expect(warned).toContain('link.xlsx')
    expect(lstatSync(at('link.xlsx')).isSymbolicLink()).toBe(true)
    const book = await readBook(readFileSync(file))
    expect(book.getWorksheet('Summary')?.getCell('A1').value).toBe('Heron Lane')
    expect(readdirSync(folder).filter((name) => name.startsWith('.'))).toEqual([])
  })

  test('takes the prices of a file, and says which', async () => {
    const book = { ...SAMPLE_BOOK, name: 'Prices of spring', invented: false }
    const file = write('spring.json', writePriceBook(book) as object | string)
    const { said } = await runLine('estimate', low, '--prices', file)
    expect(said).toContain('Prices: Prices of spring, 2026-11-01')
    expect(said).not.toContain('invented:')
  })

  test('takes the prices that the job names, from the job’s folder; those of the command line come first', async () => {
    mkdirSync(at('yard'), { recursive: true })
    const spring = { ...SAMPLE_BOOK, name: 'Prices of spring', date: '2026-03-01', invented: false }
    write('yard/spring.json', writePriceBook(spring) as object | string)
    const autumn = write(
      'autumn.json',
      writePriceBook({ ...spring, name: 'Prices of autumn' }) as object | string,
    )
    const job = write('names-book.json', {
      ...DEMO_JOB,
      pricing: { ...(DEMO_JOB.pricing as object), book: 'yard/spring.json' },
    })
    expect((await runLine('estimate', job)).said).toMatch(
      /Prices: Prices of spring, 2026-03-01, .*\(yard\/spring\.json, named by the job\)/,
    )
    const { prices } = JSON.parse((await runLine('estimate', job, '--json')).said)
    expect(prices).toMatchObject({ name: 'Prices of spring', source: 'the job', path: 'yard/spring.json' })
    const chosen = await runLine('estimate', job, '--prices', autumn, '--json')
    expect(JSON.parse(chosen.said).prices).toMatchObject({
      name: 'Prices of autumn',
      source: 'the command line',
    })
    expect((await runLine('check', job)).code).toBe(0)
  })
})

describe('check', () => {
  test('tells each check with its clause and how much of the limit is used', async () => {
    const { code, said } = await runLine('check', demo)
    expect(said).toMatch(/● passes +Joist span +\d+ % +IRC 2021 Table R507\.6/)
    expect(said).toContain('Local code and the building official govern')
    expect(code).toBe(0)
    expect((await runLine('check', low)).code).toBe(0)
  })

  test('a guard that is needed and not in the job lies outside the tables, and ends with 1', async () => {
    const bare = write('no-guard.json', {
      ...DEMO_JOB,
      scope: { ...(DEMO_JOB.scope as object), guard: { included: false } },
    })
    const { code, said } = await runLine('check', bare)
    expect(said).toMatch(/outside scope +Guard/)
    expect(code).toBe(1)
  })

  test('what is calculated only does not count as passing, and ends with 1', async () => {
    // the 2021 rows for beams and posts of hem-fir are computed only, so that no row of a table passes them
    const hemFir = write('hem-fir.json', {
      ...JSON.parse(readFileSync(low, 'utf8')),
      frame: { ...(DEMO_JOB.frame as object), species: 'HF' },
    })
    const { code, said } = await runLine('check', hemFir)
    expect(said).toMatch(/◇ calculated only +Beam span/)
    expect(said).not.toMatch(/▲ fails|outside scope/)
    expect(code).toBe(1)
  })

  test('as JSON lists every finding', async () => {
    const { checks } = JSON.parse((await runLine('check', demo, '--json')).said)
    expect(checks.length).toBeGreaterThan(10)
    expect(checks[0]).toHaveProperty('findings')
  })
})

describe('compare', () => {
  test('tells every width from the narrowest to the widest, and what makes each differ', async () => {
    const { code, said } = await runLine('compare', low, '--width', '19ft 6in..20ft 6in', '--step', '6in')
    const widths = [...said.matchAll(/^ +(\d+'-\d+") +\$/gm)].map(([, width]) => width)
    expect(widths).toEqual([`19'-6"`, `20'-0"`, `20'-6"`])
    expect(said).toContain('What makes each differ from the width before')
    expect(said).toMatch(/5\/4x6 Southern Pine No\.2, treated \+\$/)
    expect(code).toBe(0)
  })

  test('as JSON gives rows whose parts sum to the cost', async () => {
    const { said } = await runLine('compare', low, '--width', '20ft..20ft', '--json')
    const { rows } = JSON.parse(said)
    expect(rows).toHaveLength(1)
    const sum = rows[0].parts.reduce((total: number, part: { amount: number }) => total + part.amount, 0)
    expect(sum).toBe(rows[0].cost)
  })
})

describe('new', () => {
  test('makes a job that explains itself and can be estimated as it is', async () => {
    expect(await runLine('new', at('fresh.json'))).toMatchObject({ code: 0, warned: '' })
    expect(readFileSync(at('fresh.json'), 'utf8')).toMatch(/^\/\/ A deck/)
    const { code, said, warned } = await runLine('estimate', at('fresh.json'))
    expect(warned).toBe('')
    expect(said).toContain('Order for the yard')
    expect(code).toBeLessThan(2)
  })
})

describe('as a process', () => {
  test('gives its exit code, the result on one stream and faults on the other', () => {
    const good = spawnSync(process.execPath, [ENTRY, 'check', low], { encoding: 'utf8' })
    expect([good.status, good.stderr]).toEqual([0, ''])
    const bad = spawnSync(process.execPath, [ENTRY, 'check', at('nowhere.json')], { encoding: 'utf8' })
    expect([bad.status, bad.stdout]).toEqual([2, ''])
    const help = spawnSync(process.execPath, [ENTRY, '--help'], { encoding: 'utf8' })
    expect(help.status).toBe(0)
    expect(help.stdout).toContain('0 every check passes')
    const version = spawnSync(process.execPath, [ENTRY, '--version'], { encoding: 'utf8' })
    expect(version.stdout).toMatch(/^\d+\.\d+\.\d+\n$/)
  })

  test('a reader that closes the pipe early is no fault', async () => {
    const child = spawn(process.execPath, [ENTRY, 'estimate', low, '--json'], {
      stdio: ['ignore', 'pipe', 'pipe'],
    })
    let warned = ''
    child.stderr.on('data', (data) => {
      warned += data
    })
    child.stdout.destroy()
    expect(await new Promise((resolve) => child.on('close', resolve))).toBe(0)
    expect(warned).toBe('')
  })

  test('an output that cannot be written is said', () => {
    const line = `"${process.execPath}" "${ENTRY}" check "${low}" > /dev/full`
    const { status, stderr } = spawnSync('sh', ['-c', line], { encoding: 'utf8' })
    expect(stderr).toContain('the disk is full')
    expect(status).toBe(2)
  })
})
