import { describe, expect, test } from 'vitest'
import { hardwareTable, makeSheets, orderMessages, orderTable } from '../../../core/papers/index.ts'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { printMoney } from '../../../core/units/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'

/** Decks of several parts; beams, rims and decking of the first are jointed. */
const DECKS = ['wrap-hip', 'l-shape']

/** In cents, of a printed sum. */
const centsOf = (text: string | undefined): number =>
  Math.round(Number((text ?? '').replace(/[$,]/g, '')) * 100)

describe.each(DECKS)('the order of %s', (name) => {
  const job = CATALOGUE.find(({ file }) => file === `${name}.json`)?.job ?? {}
  const source = paperSource(job)
  const { estimate } = source
  const rows = [...orderTable(estimate).rows, ...hardwareTable(estimate, SAMPLE_BOOK.goods).rows]

  test('holds every material that is costed: its printed lines sum to the cost’s materials to the cent', () => {
    const sum = rows.reduce((all, { amount }) => all + centsOf(amount), 0)
    expect(sum).toBe(estimate.pricing.totals.material)
  })

  test('says that sum, on the sheet and in the message, and names what joints take', () => {
    const said = `All of it by this list, before tax: ${printMoney(estimate.pricing.totals.material)}`
    const [sheet] = makeSheets(source, ['order'])
    const texts = sheet?.blocks.flatMap((block) => (block.kind === 'text' ? [block.text] : [])) ?? []
    expect(texts).toContain(said)
    const message = orderMessages(source)[0]?.text ?? ''
    expect(message).toContain(said)
    const joints = estimate.pricing.lines.filter(
      ({ group, part }) => group === 'joints' && part === 'material',
    )
    expect(joints.length > 0 || name !== 'wrap-hip').toBe(true)
    // by the piece, the pound or the number, as a yard sells them: see guard-and-ledger.test.ts
    // the price book's own name of a joint is no yard's code, and is not said
    for (const { label, code } of joints)
      expect(message.split('\n').some((line) => line.includes(label) && !line.includes(code))).toBe(true)
  })

  test('says what the yard bills, where what joints take comes out of packs that it sells anyway', () => {
    const [sheet] = makeSheets(source, ['order'])
    const texts = sheet?.blocks.flatMap((block) => (block.kind === 'text' ? [block.text] : [])) ?? []
    const free = hardwareTable(estimate, SAMPLE_BOOK.goods).rows.filter(({ bought }) => bought === '0')
    const out = free.reduce((sum, { amount }) => sum + centsOf(amount), 0)
    expect(out).toBeGreaterThan(0)
    const told = texts.filter((text) => text.startsWith('The yard bills '))
    const bill = printMoney((estimate.pricing.totals.material - out) as never)
    expect(told.map((text) => text.startsWith(`The yard bills ${bill}: `))).toEqual([true])
    const message = orderMessages(source)[0]?.text ?? ''
    for (const text of told) expect(message).toContain(text)
  })

  test('has as many boards of each product and length as the cutting sheet saws, and spares beside', () => {
    for (const { plan } of estimate.plans) {
      const sawn = Map.groupBy(plan.boards, ({ stockId }) => stockId)
      for (const { stockId, count } of plan.order) expect(sawn.get(stockId)?.length, stockId).toBe(count)
    }
  })
})
