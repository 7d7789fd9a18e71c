import { describe, expect, it } from 'vitest'
import type { JsonValue } from '../../../core/job/index.ts'
import { readPriceBook, SAMPLE_BOOK, writePriceBook } from '../../../core/pricing/index.ts'
import { cents, feet, unitPrice } from '../../../core/units/index.ts'
import { WORKED_PRICES } from '../../fixtures/worked-prices.ts'

type Loose = { [key: string]: JsonValue }

/** A small book as a person writes it. */
function written(): Loose {
  return {
    version: 1,
    name: 'Yard list',
    date: '2026-11-01',
    labour: { rate: '$58.50', crew: 2 },
    lumber: [
      {
        size: '2x10',
        species: 'SP',
        grade: 'No.2',
        treatment: 'treated',
        code: '210',
        stock: [
          { length: '16ft', price: '$23.49', code: '210-16', supply: 4 },
          { length: '12 ft', price: '17.48', code: '210-12' },
        ],
      },
    ],
    goods: [{ sku: 'uplift-tie', label: 'Uplift tie', unit: 'each', price: '$1.1234' }],
    rates: [{ id: 'joist', label: 'Joists', unit: 'board foot', crewHours: 0.0125, workers: 2 }],
    joints: [{ kind: 'rim', sku: 'rim-kit', label: 'Block', material: '$1.50', minutes: 4 }],
  }
}

/** The faults of that book with one field, by its path, stated otherwise; undefined takes it away. */
function faultsWith(
  path: string,
  value: JsonValue | undefined,
): readonly { readonly path: string; readonly message: string; readonly fix: string }[] {
  const book = written()
  const keys = path.split('.')
  const last = keys.pop() ?? ''
  const holder = keys.reduce<Loose>((at, key) => at[key] as Loose, book)
  if (value === undefined) delete holder[last]
  else holder[last] = value
  const read = readPriceBook(book)
  return read.ok ? [] : read.error
}

describe('a price book file', () => {
  it('is read in the words of a person: lengths, dollars, hours', () => {
    const read = readPriceBook(written())
    if (!read.ok) throw new Error(JSON.stringify(read.error))
    expect(read.value.lumber[0]?.stock).toEqual([
      { length: feet(16), price: cents(2349), code: '210-16', supply: 4 },
      { length: feet(12), price: cents(1748), code: '210-12' },
    ])
    expect(read.value.goods[0]).toMatchObject({ price: unitPrice(11_234), pack: 1000, code: '' })
    expect(read.value.rates[0]).toMatchObject({ crewHours: 1250, workers: 2, confidence: 'not said' })
    expect(read.value).toMatchObject({ labourRate: 5850, crewSize: 2, invented: false })
  })

  it.each([
    ['the sample book', SAMPLE_BOOK],
    ['the worked prices', WORKED_PRICES],
  ])('gives back %s as it was written', (_, book) => {
    const file: unknown = JSON.parse(JSON.stringify(writePriceBook(book)))
    expect(readPriceBook(file)).toEqual({ ok: true, value: book })
  })

  it.each([
    ['name', undefined, 'name', /is missing/, /add "name"/],
    ['name', '  ', 'name', /is empty/, /text in quotes/],
    ['nmae', 'x', 'nmae', /is not known/, /did you mean "name"/],
    ['version', 2, 'version', /this program reads 1/, /newer program/],
    ['date', '2026-02-30', 'date', /is not a date/, /2026-11-01/],
    ['date', 'last week', 'date', /is not a date/, /2026-11-01/],
    ['labour.rate', 58, 'labour.rate', /is 58/, /\$23\.49/],
    ['labour.crew', 0, 'labour.crew', /is 0/, /from 1 to 50/],
    ['lumber', {}, 'lumber', /is an object/, /between \[ and \]/],
    ['lumber.0.size', '2x11', 'lumber[0].size', /is "2x11"/, /2x10/],
    ['lumber.0.stock.0.length', '16 cubits', 'lumber[0].stock[0].length', /16 cubits/, /./],
    ['lumber.0.stock.0.length', '0 ft', 'lumber[0].stock[0].length', /0 ft/, /at most 60 ft/],
    ['lumber.0.stock.0.length', '10000 ft', 'lumber[0].stock[0].length', /10000 ft/, /./],
    ['lumber.0.stock.0.price', '$0', 'lumber[0].stock[0].price', /\$0/, /\$0\.01/],
    ['lumber.0.stock.0.price', '-$5', 'lumber[0].stock[0].price', /-\$5/, /\$0\.01/],
    ['lumber.0.stock.0.price', 'call us', 'lumber[0].stock[0].price', /call us/, /./],
    ['lumber.0.stock.0.supply', 1.5, 'lumber[0].stock[0].supply', /is 1\.5/, /without decimals/],
    ['lumber.0.stock.1.length', '16 ft', 'lumber[0].stock', /"16 ft" more than once/, /each length once/],
    ['lumber.0.stock.1.code', '210-16', 'lumber', /"210-16" more than once/, /its own code/],
    ['goods.0.price', '$1.12345', 'goods[0].price', /1\.12345/, /\$0\.1026/],
    ['goods.0.pack', 0, 'goods[0].pack', /is 0/, /from 0\.001/],
    ['rates.0.crewHours', 'long', 'rates[0].crewHours', /"long"/, /a number/],
    ['joints.0.kind', 'stair', 'joints[0].kind', /"stair"/, /beam ply, rim, ledger, decking/],
  ] as const)(
    'says where %s = %j is wrong, what is wrong and what would be right',
    (path, value, at, message, fix) => {
      const [fault, ...others] = faultsWith(path, value)
      expect(others).toEqual([])
      expect(fault?.path).toBe(at)
      expect(fault?.message).toMatch(message)
      expect(fault?.fix).toMatch(fix)
    },
  )

  it('lists all faults together', () => {
    const book = { ...written(), name: 4, goods: [{ sku: 'a' }], rates: 'none' }
    const read = readPriceBook(book)
    expect(read.ok ? [] : read.error.map((fault) => fault.path)).toEqual([
      'name',
      'goods[0].label',
      'goods[0].unit',
      'goods[0].price',
      'rates',
    ])
  })

  it.each([null, 4, 'text', [], true])('is an object: %j is refused in a sentence', (value) => {
    const read = readPriceBook(value)
    expect(read.ok ? '' : read.error[0]?.message).toMatch(/^the price book is /)
  })

  it('takes a field named __proto__ for an unknown field', () => {
    const read = readPriceBook(JSON.parse('{"__proto__": {"name": "x"}, "version": 1}'))
    expect(read.ok ? [] : read.error.map((fault) => fault.path)).toContain('__proto__')
  })
})
