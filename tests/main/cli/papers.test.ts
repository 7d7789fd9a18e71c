import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { smallJob } from '../../fixtures/worked-job.ts'
import { runLine, scratch } from './run-line.ts'

const { at, write } = scratch()
const small = write('small.json', { ...smallJob(), name: 'Tarn House' })

describe('papers', () => {
  test('writes the chosen sheets into a folder that it makes, and says which files they are', async () => {
    const folder = at('out')
    const { code, said } = await runLine(
      'papers',
      small,
      '--to',
      folder,
      '--only',
      'framing,order',
      '--date',
      '2026-02-28',
    )
    expect(code).toBeLessThan(2)
    expect(readdirSync(folder).sort()).toEqual([
      'Tarn House framing-plan.dxf',
      'Tarn House framing.csv',
      'Tarn House order.csv',
      'Tarn House order.txt',
      'Tarn House.pdf',
    ])
    for (const name of readdirSync(folder)) expect(said).toContain(join(folder, name))
    expect(readFileSync(join(folder, 'Tarn House.pdf')).subarray(0, 5).toString()).toBe('%PDF-')
    expect(said).toMatch(/\d+ pages on letter/)
  })

  test('writes the same bytes again into the same place', async () => {
    const folder = at('twice')
    const words = ['papers', small, '--to', folder, '--only', 'quote', '--as', 'pdf,svg'] as const
    await runLine(...words)
    const first = readdirSync(folder).map((name) => readFileSync(join(folder, name)).toString('base64'))
    await runLine(...words)
    expect(readdirSync(folder).map((name) => readFileSync(join(folder, name)).toString('base64'))).toEqual(
      first,
    )
  })

  test('prints the firm, the revision and the date as they are stated', async () => {
    const firm = write('firm.json', { name: 'Plumb & Level', terms: ['Paid on the day.'] })
    const folder = at('firm')
    const words = [
      '--only',
      'quote',
      '--as',
      'svg',
      '--firm',
      firm,
      '--revision',
      'C',
      '--date',
      '2026-02-28',
    ] as const
    await runLine('papers', small, '--to', folder, ...words)
    const svg = readFileSync(join(folder, readdirSync(folder)[0] ?? ''), 'utf8')
    for (const each of [
      'Plumb &amp; Level',
      'Paid on the day.',
      'revision C',
      '2026-02-28',
      'until 2026-03-30',
    ])
      expect(svg).toContain(each)
  })

  test('says before a quote is written what to look at, and not where none is among the sheets', async () => {
    // California: the lesser of $1,000 or 10 %
    const firm = write('deposit.json', {
      name: 'Plumb & Level',
      state: 'CA',
      stages: [
        { label: 'Deposit', share: 5000 },
        { label: 'Done', share: 5000 },
      ],
    })
    const asked = (only: string) =>
      runLine('papers', small, '--to', at(`quote ${only}`), '--only', only, '--as', 'csv', '--firm', firm)
    const { said } = await asked('quote')
    expect(said).toContain('Before the quote goes out:')
    expect(said).toMatch(/is more than California lets a deposit be, \$[\d,.]+/)
    expect(said).toContain('it says no day until which it holds')
    expect((await asked('order')).said).not.toContain('Before the quote goes out:')
  })

  test.each([
    [[], 'needs a folder: --to FOLDER'],
    [['--to', 'x', '--only', 'framin'], 'there is no "framin"; did you mean framing?'],
    [['--to', 'x', '--as', 'docx'], 'there is no "docx"'],
    [['--to', 'x', '--paper', 'legal'], 'there is no "legal"'],
    [['--to', 'x', '--scale', '0'], 'is no scale'],
    [['--to', 'x', '--scale', 'quarter'], 'is no scale'],
    [['--to', 'x', '--date', '2026-02-29'], 'is no day; write it as 2026-03-31'],
    [['--to', 'x', '--revision', 'x'.repeat(41)], 'at most 40 characters'],
  ])('refuses %j in a sentence', async (words, sentence) => {
    const { code, warned } = await runLine('papers', small, ...words)
    expect(code).toBe(2)
    expect(warned).toContain(sentence)
  })

  test('prints the options of the job with what each adds, and lengths in millimetres where that is asked', async () => {
    const offering = write('offering.json', {
      ...smallJob(),
      name: 'Tarn House',
      pricing: { options: 'Higher: size.height = 4 ft' },
    })
    const folder = at('options')
    const words = ['--only', 'quote', '--as', 'svg', '--units', 'mm'] as const
    await runLine('papers', offering, '--to', folder, ...words)
    const svg = readFileSync(join(folder, readdirSync(folder)[0] ?? ''), 'utf8')
    expect(svg).toContain('Higher (Height: 1219 mm, formerly 762 mm)')
    expect(svg).toMatch(/>[+-]\$[\d,.]+</)
    const { code, warned } = await runLine('papers', small, '--to', folder, '--units', 'cubits')
    expect(code).toBe(2)
    expect(warned).toContain('there is no "cubits"')
  })

  test('writes nothing where the job, the firm or the folder is not usable', async () => {
    const bad = write('bad.json', { ...smallJob(), size: { width: 'wide', depth: '8 ft', height: '30 in' } })
    const shares = write('shares.json', { stages: [{ label: 'All', share: 9000 }] })
    const unknown = write('unknown.json', { nmae: 'x' })
    const file = write('file', 'not a folder')
    for (const [words, sentence] of [
      [['papers', bad, '--to', at('none')], 'size.width'],
      [['papers', small, '--to', at('none'), '--firm', shares], 'must come to 10000'],
      [['papers', small, '--to', at('none'), '--firm', unknown], 'unknown.json:'],
      [['papers', small, '--to', at('none'), '--firm', at('absent.json')], 'cannot be read'],
      [['papers', small, '--to', at('none/deeper'), '--only', 'quote'], 'cannot be made'],
      [['papers', small, '--to', file, '--only', 'quote'], 'a part of the path is a file'],
    ] as const) {
      const { code, warned } = await runLine(...words)
      expect(warned).toContain(sentence)
      expect(code).toBe(2)
    }
    expect(existsSync(at('none'))).toBe(false)
    expect(readFileSync(file, 'utf8')).toBe('not a folder')
  })
})
