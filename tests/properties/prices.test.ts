import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Job, readJob } from '../../core/job/index.ts'
import {
  type Priceable,
  type PriceBook,
  priceJob,
  readPriceBook,
  SAMPLE_BOOK,
  writePriceBook,
} from '../../core/pricing/index.ts'
import { cents, divideRounded, feet, inches, ticks, unitPrice } from '../../core/units/index.ts'

const cause = { fields: [], ids: [], rule: '' }

const percent = fc.integer({ min: 0, max: 3000 }).map((hundredths) => `${hundredths / 100} %`)
const anyJob: fc.Arbitrary<Job> = fc
  .record({
    builder: fc.constantFrom('contractor', 'owner'),
    method: fc.constantFrom('margin', 'markup'),
    margin: percent,
    markup: percent,
    salesTax: percent,
    priceTax: percent,
    contingency: percent,
    overhead: percent,
    permit: fc.integer({ min: 0, max: 500_000 }),
  })
  .map(({ builder, permit, ...pricing }) => {
    const scope = { permit: { included: true, allowance: `$${(permit / 100).toFixed(2)}` } }
    const read = readJob({ version: 1, builder, pricing, scope })
    if (!read.ok) throw new Error(JSON.stringify(read.error))
    return read.value.job
  })

const someGoods = fc.array(
  fc.record({
    price: fc.integer({ min: 0, max: 9_999_999 }),
    pack: fc.integer({ min: 1, max: 400_000 }),
    need: fc.integer({ min: 1, max: 5_000_000 }),
  }),
  { maxLength: 8 },
)
const someTasks = fc.array(
  fc.record({
    hours: fc.integer({ min: 0, max: 500_000 }),
    workers: fc.integer({ min: 1, max: 5 }),
    need: fc.integer({ min: 1, max: 5_000_000 }),
  }),
  { maxLength: 8 },
)
const someRate = fc.integer({ min: 0, max: 30_000 })

const priced = fc
  .tuple(anyJob, someGoods, someTasks, someRate)
  .map(([job, goods, tasks, rate]) => {
    const book: PriceBook = {
      ...SAMPLE_BOOK,
      labourRate: cents(rate),
      goods: goods.map((good, i) => ({
        sku: `g${i}`,
        label: `g${i}`,
        unit: 'each',
        code: '',
        price: unitPrice(good.price),
        pack: good.pack,
        note: '',
      })),
      rates: tasks.map((task, i) => ({
        id: `t${i}`,
        label: `t${i}`,
        unit: 'each',
        crewHours: task.hours,
        workers: task.workers,
        confidence: '',
      })),
    }
    const takeoff: Priceable['takeoff'] = {
      pieces: [],
      runs: [],
      goods: goods.map((good, i) => ({
        id: `good-g${i}`,
        sku: `g${i}`,
        label: '',
        group: 'hardware',
        thousandths: good.need,
        unit: 'each',
        cause,
      })),
      tasks: tasks.map((task, i) => ({
        id: `task-t${i}`,
        rateId: `t${i}`,
        label: '',
        stage: 'frame',
        thousandths: task.need,
        unit: 'each',
        cause,
      })),
    }
    const corner = { x: inches(200), y: inches(120) }
    const outline = [
      { x: ticks(0), y: ticks(0) },
      { ...corner, y: ticks(0) },
      corner,
      { ...corner, x: ticks(0) },
    ]
    const made = priceJob({ job, layout: { outline }, takeoff }, [], book)
    if (!made.ok && made.error.some(({ subject }) => subject !== 'Sum of the lines'))
      throw new Error(JSON.stringify(made.error))
    return { job, book, takeoff, made }
  })
  // sums beyond what a deck is priced up to are refused as a whole
  .map(({ made, ...rest }) => (made.ok ? { ...rest, ...made.value } : null))
  .filter((priced) => priced !== null)

describe('money', () => {
  it('sums: the printed lines are the total, cent by cent', () => {
    fc.assert(
      fc.property(priced, ({ lines, totals, job }) => {
        const sum = (part: string) => lines.filter((l) => l.part === part).reduce((s, l) => s + l.amount, 0)
        expect(totals.material + totals.labour + totals.other).toBe(lines.reduce((s, l) => s + l.amount, 0))
        expect([totals.material, totals.labour, totals.other]).toEqual([
          sum('material'),
          sum('labour'),
          sum('other'),
        ])
        expect(totals.direct).toBe(totals.material + totals.tax + totals.labour + totals.other)
        expect(totals.cost).toBe(totals.direct + totals.contingency + totals.overhead)
        expect(totals.priceWithTax).toBe(totals.price + totals.priceTax)
        if (job.builder === 'owner')
          expect([totals.labour, totals.overhead, totals.price]).toEqual([0, 0, totals.cost])
      }),
    )
  })

  it('rounds a line once: it lies within half a cent of quantity × price', () => {
    fc.assert(
      fc.property(priced, ({ lines }) => {
        for (const line of lines) {
          const exact = BigInt(line.thousandths) * BigInt(line.price)
          const twice = 2n * (exact - BigInt(line.amount) * 100_000n)
          expect(twice >= -100_000n && twice <= 100_000n).toBe(true)
        }
      }),
    )
  })

  it('leaves the stated share: a margin of the price, a markup of the cost, to half a cent', () => {
    fc.assert(
      fc.property(priced, ({ totals, job }) => {
        fc.pre(job.builder === 'contractor')
        const { cost, price } = totals
        if (job.pricing.method === 'margin') {
          expect(price).toBe(divideRounded(BigInt(cost) * 10_000n, BigInt(10_000 - job.pricing.margin)))
          expect(Math.abs(price * (10_000 - job.pricing.margin) - cost * 10_000)).toBeLessThanOrEqual(5_000)
        } else {
          expect(Math.abs(price * 10_000 - cost * (10_000 + job.pricing.markup))).toBeLessThanOrEqual(5_000)
        }
      }),
    )
  })

  it('buys whole packs, and never a pack too many', () => {
    fc.assert(
      fc.property(priced, ({ lines, takeoff, book }) => {
        for (const good of takeoff.goods) {
          const bought = lines.find((line) => line.id === good.id)?.thousandths ?? 0
          const pack = book.goods.find((one) => one.sku === good.sku)?.pack ?? 1
          expect(bought % pack).toBe(0)
          expect(bought).toBeGreaterThanOrEqual(good.thousandths)
          expect(bought - good.thousandths).toBeLessThan(pack)
        }
      }),
    )
  })
})

describe('price book files', () => {
  const books = fc
    .record({
      rate: fc.integer({ min: 0, max: 1_000_000 }),
      crew: fc.integer({ min: 1, max: 50 }),
      prices: fc.uniqueArray(fc.integer({ min: 1, max: 30 }), { minLength: 1, maxLength: 12 }),
      unit: fc.integer({ min: 0, max: 999_999_999 }),
      pack: fc.integer({ min: 1, max: 9_999_999 }),
      hours: fc.integer({ min: 0, max: 99_999_999 }),
      supply: fc.option(fc.integer({ min: 0, max: 99 }), { nil: undefined }),
      label: fc.string({ minLength: 1, maxLength: 60 }).filter((text) => text.trim() !== ''),
    })
    .map(
      ({ rate, crew, prices, unit, pack, hours, supply, label }): PriceBook => ({
        ...SAMPLE_BOOK,
        name: label,
        labourRate: cents(rate),
        crewSize: crew,
        lumber: SAMPLE_BOOK.lumber.slice(0, 1).map((entry) => ({
          ...entry,
          stock: prices.map((length) => ({
            length: ticks(feet(length) + 7),
            price: cents(length * 137),
            code: `c${length}`,
            ...(supply === undefined ? {} : { supply }),
          })),
        })),
        goods: SAMPLE_BOOK.goods
          .slice(0, 1)
          .map((good) => ({ ...good, label, price: unitPrice(unit), pack })),
        rates: SAMPLE_BOOK.rates.slice(0, 1).map((entry) => ({ ...entry, crewHours: hours })),
      }),
    )

  it('give back every book that they hold', () => {
    fc.assert(
      fc.property(books, (book) => {
        expect(readPriceBook(JSON.parse(JSON.stringify(writePriceBook(book))))).toEqual({
          ok: true,
          value: book,
        })
      }),
    )
  })

  it('never throw, whatever they hold, and every fault has a path, a message and a fix', () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.jsonValue(), fc.object()),
        fc.jsonValue(),
        fc.integer({ min: 0, max: 9 }),
        (any, value, at) => {
          const file: { [key: string]: unknown } = { ...writePriceBook(SAMPLE_BOOK) }
          const key = Object.keys(file)[at] ?? 'name'
          for (const broken of [any, { ...file, [key]: value }]) {
            const read = readPriceBook(broken)
            if (read.ok) continue
            for (const fault of read.error)
              expect([fault.message === '', fault.fix === '']).toEqual([false, false])
          }
        },
      ),
    )
  })
})
