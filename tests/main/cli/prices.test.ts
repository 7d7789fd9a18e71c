import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { readPriceBook, SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { smallJob } from '../../fixtures/worked-job.ts'
import { runLine, scratch } from './run-line.ts'

const { at, write } = scratch()
const list = write('list.csv', 'code,item,price\n51010,,2.80\n30210-16,,24.99\nP-1,=White paint,30\n')
const SAYS = ['--date', '2026-11-20', '--supplier', 'Yard of the north'] as const

describe('prices', () => {
  test('tells what a list changes, and writes the changed book as a new file', async () => {
    const book = at('new.json')
    const { code, said, warned } = await runLine('prices', list, ...SAYS, '--known', '--write', book)
    expect(said).toContain('Joist hanger for a 2x10, galvanised')
    expect(said).toMatch(/\$2\.39 +\$2\.80 +2026-11-20 +Yard of the north/)
    expect(said).toContain('Left out, of nothing in the price book: =White paint')
    expect([code, warned]).toEqual([0, `Price book: ${book}\n`])
    const read = readPriceBook(JSON.parse(readFileSync(book, 'utf8')))
    const written = read.ok ? read.value : SAMPLE_BOOK
    expect(written.goods.find(({ code: yard }) => yard === '51010')).toMatchObject({
      price: 28_000,
      date: '2026-11-20',
      supplier: 'Yard of the north',
    })
    const again = await runLine('prices', list, ...SAYS, '--known', '--prices', book, '--json')
    expect(JSON.parse(again.said).changes[0]).toMatchObject({ before: 28_000, after: 28_000 })
  })

  test('refuses a list with a fault as a whole, at its line', async () => {
    const book = at('none.json')
    const { code, said, warned } = await runLine('prices', list, ...SAYS, '--write', book)
    expect([code, said]).toEqual([2, ''])
    expect(warned).toContain(`${list}:4: row 4, column A (code): the price book has no “P-1”`)
    expect(existsSync(book)).toBe(false)
  })

  test('says what is wrong with its words', async () => {
    const wrong = async (...words: string[]) => (await runLine('prices', list, ...words)).warned
    expect(await wrong('--date', '31.11.2026')).toContain('--date: "31.11.2026" is no day')
    expect(await wrong('--columns', 'code,pric')).toContain('--columns: there is no "pric"')
    expect(await wrong('--known=yes')).toContain('--known takes no value')
    expect(await wrong()).toContain('the list is of no day')
  })

  test('puts another supplier’s prices beside those that are there, and an estimate says who brings what', async () => {
    const other = write('hill.csv', 'code,price\n30546-12,9.00\n51010,2\n')
    const book = at('two.json')
    const says = ['--date', '2026-11-20', '--supplier', 'Hill Top Lumber', '--beside'] as const
    expect((await runLine('prices', other, ...says, '--write', book)).code).toBe(0)
    const file = JSON.parse(readFileSync(book, 'utf8'))
    file.suppliers = [
      { name: SAMPLE_BOOK.supplier, delivery: '$40' },
      { name: 'Hill Top Lumber', delivery: '$60' },
    ]
    const stated = write('stated.json', JSON.stringify(file))
    const job = write('deck.json', JSON.stringify(smallJob()))
    const { said } = await runLine('estimate', job, '--prices', stated)
    const words = said.replace(/\s+/g, ' ')
    // 18 × (15.72 − 9.00) = 120.96 less for a delivery of 60.00 more
    expect(words).toMatch(/Bought from An invented yard and Hill Top Lumber: \$[\d,.]+ for the whole job/)
    expect(words).toContain('No other split of what is needed costs less.')
    expect(words).toMatch(/All of it from An invented yard: \$[\d,.]+, \$60\.96 more\./)
    const folder = at('papers')
    await runLine('papers', job, '--prices', stated, '--to', folder, '--only', 'order', '--as', 'csv,txt')
    expect(readdirSync(folder).filter((name) => name.includes('order 2')).length).toBe(2)
  })
})
