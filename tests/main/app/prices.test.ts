import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { feet } from '../../../core/units/index.ts'
import { openServices, REAL_WORKER, type TestServices, temporaryFolder } from './test-services.ts'

let services: TestServices
beforeEach(async () => {
  services = await openServices()
})
afterEach(() => services.close())

const statement = { name: 'Small', size: { width: '10 ft', depth: '10 ft' } }

/** The exported file with one thing changed in it. */
async function edited(change: (file: { [key: string]: unknown }) => void): Promise<string> {
  const { text } = await services.call('prices.export', {})
  const file = JSON.parse(text)
  change(file)
  return JSON.stringify(file)
}

describe('the prices in use', () => {
  test('are the sample until a book is given, and are told with their age', async () => {
    const { book, importedAt, age, isOld } = await services.call('prices.current', {})
    expect({ name: book.name, importedAt, age, isOld }).toEqual({
      name: SAMPLE_BOOK.name,
      importedAt: null,
      age: 24,
      isOld: false,
    })
  })

  test('are old after 60 days', async () => {
    for (const [date, age, isOld] of [
      ['2026-09-26', 60, false],
      ['2026-09-25', 61, true],
    ]) {
      const text = await edited((file) => Object.assign(file, { date }))
      expect(await services.call('prices.import', { text })).toMatchObject({
        ok: true,
        prices: { age, isOld },
      })
    }
  })

  test('stay the given ones after the program was closed, comments of the file included', async () => {
    await services.close()
    const folder = temporaryFolder()
    services = await openServices({ folder, keep: true })
    const text = `// asked by telephone\n${await edited((file) => Object.assign(file, { name: 'The yard' }))}`
    expect(await services.call('prices.import', { text })).toMatchObject({ ok: true })
    await services.close()
    const again = await openServices({ folder, keep: true })
    expect((await again.call('prices.current', {})).book.name).toBe('The yard')
    expect(await again.call('prices.export', {})).toEqual({ fileName: 'prices 2026-11-01.json', text })
    expect((await again.call('prices.useSample', {})).book).toEqual(SAMPLE_BOOK)
    await again.close()
    services = await openServices({ folder })
    expect((await services.call('prices.current', {})).importedAt).toBe(null)
  })

  test('a book with faults is refused with every fault and its place, and nothing changes', async () => {
    const text = (await services.call('prices.export', {})).text
      .replace('"rate": "$60.00"', '"rate": "sixty"')
      .replace('"crew": 2', '"crew": "two"')
      .replace('"supplier"', '"suplier"')
    const lineOf = (words: string) => text.slice(0, text.indexOf(words)).split('\n').length
    const answer = await services.call('prices.import', { text })
    if (answer.ok) throw new Error('it was taken')
    expect(answer.faults.map(({ path, line }) => [path, line])).toEqual(
      expect.arrayContaining([
        ['suplier', lineOf('"suplier"')],
        ['labour.rate', lineOf('"rate": "sixty"')],
        ['labour.crew', lineOf('"crew": "two"')],
      ]),
    )
    expect((await services.call('prices.current', {})).importedAt).toBe(null)
    expect(services.events).toEqual([])
    const broken = await services.call('prices.import', { text: '{ "version": 1,, }' })
    expect(broken).toMatchObject({ ok: false, faults: [expect.objectContaining({ line: 1 })] })
  })

  test('are told to every window when they change', async () => {
    const text = await edited((file) => Object.assign(file, { name: 'The yard' }))
    await services.call('prices.import', { text })
    expect(services.events).toEqual([
      { event: 'prices.changed', data: { name: 'The yard', date: '2026-11-01' } },
    ])
  })
})

test('an estimate and a comparison made after a change use the new prices', async () => {
  const real = await openServices({ worker: REAL_WORKER })
  const totals = async (edit: number) => {
    const { result } = await real.call('estimate.run', { edit, statement })
    if (!result.ok) throw new Error(JSON.stringify(result.faults))
    const width = result.estimate.job.size.width
    await real.call('compare.run', { edit, statement, from: width, to: width, step: width })
    const row = real.events.findLast(({ event }) => event === 'compare.row')?.data as {
      row: { cost: number }
    }
    const cost = result.estimate.pricing?.totals.cost ?? 0
    expect(row.row.cost).toBe(cost)
    return { cost, labour: result.estimate.pricing?.totals.labour ?? 0 }
  }
  const before = await totals(1)
  const { text } = await real.call('prices.export', {})
  const dearer = text.replace('"rate": "$60.00"', '"rate": "$120.00"')
  expect(dearer).not.toBe(text)
  expect(await real.call('prices.import', { text: dearer })).toMatchObject({ ok: true })
  const after = await totals(2)
  expect(after.labour).toBe(2 * before.labour)
  expect(after.cost).toBeGreaterThan(before.cost)
  await real.close()
}, 60_000)

describe('a list of prices', () => {
  const list = {
    text: 'code,price\n51010,2.50\n30210-16,24.99',
    columns: null,
    date: '2026-01-02',
    supplier: 'Yard of the north',
    leaveOutUnknown: false,
    beside: false,
  }
  const hanger = async () =>
    (await services.call('prices.current', {})).book.goods.find(({ code }) => code === '51010')

  test('is shown before anything is changed, is taken whole, and is taken back', async () => {
    const before = await services.call('prices.current', {})
    expect(await services.call('prices.readList', list)).toMatchObject({ ok: true, changes: [{}, {}] })
    expect(await services.call('prices.current', {})).toEqual(before)
    const taken = await services.call('prices.takeList', list)
    expect(taken).toMatchObject({
      ok: true,
      changed: 2,
      prices: {
        // the book is young, two of its prices are not
        isOld: false,
        stale: { count: 2, oldest: { date: '2026-01-02', supplier: 'Yard of the north' } },
        lastChange: '2 prices from Yard of the north',
      },
    })
    expect(await hanger()).toMatchObject({ price: 25_000, date: '2026-01-02' })
    const back = { ...before, nextChange: '2 prices from Yard of the north' }
    expect(await services.call('prices.takeBack', {})).toEqual(back)
    expect(await services.call('prices.takeBack', {})).toEqual(back)
    expect((await services.call('prices.makeAgain', {})).lastChange).toBe('2 prices from Yard of the north')
    expect(await hanger()).toMatchObject({ price: 25_000 })
  })

  test('with one fault in it changes nothing', async () => {
    const faulty = { ...list, text: `${list.text}\n51008,free` }
    expect(await services.call('prices.takeList', faulty)).toMatchObject({
      ok: false,
      faults: [{ row: 4, column: 2 }],
    })
    expect((await services.call('prices.current', {})).importedAt).toBeNull()
  })

  test('stays taken after the program was closed, and can still be taken back, step by step', async () => {
    await services.close()
    const folder = temporaryFolder()
    services = await openServices({ folder, keep: true })
    await services.call('prices.takeList', list)
    await services.call('prices.takeList', { ...list, text: 'code,price\n51010,3', supplier: '' })
    await services.close()
    services = await openServices({ folder })
    expect(await hanger()).toMatchObject({ price: 30_000 })
    expect((await services.call('prices.takeBack', {})).lastChange).toBe('2 prices from Yard of the north')
    expect(await hanger()).toMatchObject({ price: 25_000 })
    expect((await services.call('prices.takeBack', {})).importedAt).toBeNull()
  })
})

describe('the price book edited cell by cell', () => {
  const board = (long: number) =>
    ({
      of: 'board',
      product: '2x10 SP No.2 treated',
      length: feet(long),
      supplier: SAMPLE_BOOK.supplier,
    }) as const
  const set = (long: number, text: string) =>
    ({ kind: 'set', row: board(long), field: 'price', text }) as const
  const priceOf = async (long: number) => {
    const { book } = await services.call('prices.current', {})
    return book.lumber
      .find(({ product }) => product.size === '2x10')
      ?.stock.find(({ length }) => length === feet(long))?.price
  }

  test('is a named step of the day, told to every window, and can be taken back and made again over a restart', async () => {
    await services.close()
    const folder = temporaryFolder()
    services = await openServices({ folder, keep: true })
    const made = await services.call('prices.edit', { edits: [set(16, '24.10')] })
    expect(made).toMatchObject({ ok: true, prices: { lastChange: made.ok ? made.label : '' } })
    expect(services.events.map(({ event }) => event)).toContain('prices.changed')
    await services.call('prices.edit', { edits: [set(12, '18'), set(14, '21')] })
    await services.close()
    services = await openServices({ folder })
    expect([await priceOf(16), await priceOf(12)]).toEqual([2410, 1800])
    expect((await services.call('prices.takeBack', {})).nextChange).toBe('2 changes of the price book')
    expect([await priceOf(16), await priceOf(12)]).toEqual([2410, 1748])
    await services.call('prices.makeAgain', {})
    expect(await priceOf(14)).toBe(2100)
  })

  test('with one cell that cannot be taken changes nothing, and says which and why', async () => {
    const answer = await services.call('prices.edit', { edits: [set(12, '18'), set(16, 'lots')] })
    expect(answer).toMatchObject({
      ok: false,
      faults: [{ edit: 1, message: expect.stringContaining('"lots"') }],
    })
    expect((await services.call('prices.current', {})).importedAt).toBeNull()
  })
})
