import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { costJob } from '../../core/costing/index.ts'
import { type KeptLine, readJob, statedEntries } from '../../core/job/index.ts'
import { cents, priceOf, unitPrice } from '../../core/units/index.ts'

const LINES = 5
const id = fc.integer({ min: 0, max: LINES + 1 }).map((n) => `line-${n}`)
const keptLines: fc.Arbitrary<readonly KeptLine[]> = fc.tuple(
  ...Array.from({ length: LINES }, (_, n) =>
    fc
      .record({
        part: fc.constantFrom('material', 'labour', 'other'),
        thousandths: fc.integer({ min: 0, max: 500_000 }),
        price: fc.integer({ min: 0, max: 999_999 }),
        hours: fc.integer({ min: 0, max: 90_000 }),
      })
      .map(
        ({ price, ...rest }): KeptLine => ({
          ...rest,
          line: `line-${n}`,
          group: `group ${n % 2}`,
          what: `What ${n}`,
          unit: 'each',
          price: unitPrice(price),
          stage: n % 2 === 0 ? 'frame' : '',
          rate: '',
          count: 0,
          of: '',
          factor: 10_000,
        }),
      ),
  ),
)
const purchase = fc.record({
  date: fc.constantFrom('', '2026-04-02'),
  supplier: fc.string({ maxLength: 20 }),
  line: id,
  what: fc.string({ maxLength: 20 }),
  thousandths: fc.option(fc.integer({ min: -90_000, max: 90_000 })),
  amount: fc.integer({ min: -900_000, max: 900_000 }).map(cents),
  receipt: fc.string({ maxLength: 20 }),
})
const hours = fc.record({
  date: fc.constant(''),
  line: fc.oneof(id, fc.constant('stage-frame')),
  what: fc.string({ maxLength: 20 }),
  who: fc.string({ maxLength: 20 }),
  thousandths: fc.integer({ min: 0, max: 90_000 }),
})
const state = fc.record({
  line: id,
  unusable: fc.integer({ min: 0, max: 40 }),
  left: fc.integer({ min: 0, max: 40 }),
  done: fc.boolean(),
})
const anyCosting = fc.record({
  estimate: keptLines,
  bought: fc.array(purchase, { maxLength: 12 }),
  worked: fc.array(hours, { maxLength: 12 }),
  lines: fc.uniqueArray(state, { maxLength: 6, selector: ({ line }) => line }),
  hourly: fc.integer({ min: 0, max: 20_000 }).map(cents),
  tax: fc.integer({ min: 0, max: 3000 }),
})

type Costings = ReturnType<(typeof anyCosting)['generate']> extends fc.Value<infer One> ? One : never

function jobOf({ estimate, bought, worked, lines, tax }: Costings) {
  const read = readJob({
    pricing: { salesTax: `${tax / 100} %` },
    costing: {
      estimate: statedEntries('kept lines', estimate),
      bought: statedEntries('purchases', bought),
      worked: statedEntries('hours', worked),
      lines: statedEntries('line states', lines),
    },
  })
  if (!read.ok) throw new Error(JSON.stringify(read.error))
  return read.value.job
}

describe('what a job took', () => {
  it('is read from its file as it was written, whatever stands in it', () => {
    fc.assert(
      fc.property(anyCosting, (stated) => {
        const { estimate, bought, worked, lines } = jobOf(stated).costing
        expect({ estimate, bought, worked, lines }).toEqual({
          estimate: stated.estimate,
          bought: stated.bought,
          worked: stated.worked,
          lines: stated.lines,
        })
      }),
    )
  })

  it('balances to the cent: every purchase and every hour stands in one line, and sums are those of the lines', () => {
    fc.assert(
      fc.property(anyCosting, (stated) => {
        const costing = costJob(jobOf(stated), {
          lines: stated.estimate,
          price: cents(0),
          hourly: stated.hourly,
        })
        const lines = costing.groups.flatMap((group) => group.lines)
        const sum = (of: readonly number[]) => of.reduce((all, one) => all + one, 0)
        const { material, labour, other, tax, direct } = costing
        for (const of of ['estimated', 'actual', 'open', 'likely', 'difference'] as const) {
          if (of !== 'likely')
            expect(sum(costing.groups.map((group) => group[of]))).toBe(sum(lines.map((line) => line[of])))
          expect(direct[of]).toBe(material[of] + labour[of] + other[of] + tax[of])
        }
        expect(sum(lines.map(({ worked }) => worked))).toBe(sum(stated.worked.map((one) => one.thousandths)))
        expect(costing.hours.worked).toBe(sum(stated.worked.map((one) => one.thousandths)))
        const paid = sum(stated.bought.map(({ amount }) => amount))
        const wages = sum(lines.map(({ worked }) => priceOf(worked, unitPrice(stated.hourly * 100))))
        expect(sum(lines.map(({ actual }) => actual))).toBe(paid + wages)
        for (const line of lines) {
          expect(line.open).toBeGreaterThanOrEqual(0)
          if (line.done) expect(line.open).toBe(0)
        }
      }),
    )
  })
})
