import { describe, expect, test } from 'vitest'
import { makeSheets, orderMessages, type PaperTable } from '../../../core/papers/index.ts'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { printMoney } from '../../../core/units/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'
import { smallJob } from '../../fixtures/worked-job.ts'

const sourceOf = (name: string, more = {}) =>
  paperSource(
    { ...(CATALOGUE.find(({ file }) => file === `${name}.json`)?.job ?? {}), ...more },
    SAMPLE_BOOK,
    { quick: true },
  )

function orderOf(source: ReturnType<typeof paperSource>) {
  const sheets = makeSheets(source, ['order'])
  const blocks = sheets.flatMap((sheet) => sheet.blocks)
  const tables = blocks.flatMap((block) => (block.kind === 'table' ? [block.table] : []))
  const rows = (...ids: string[]): PaperTable['rows'] =>
    tables.filter(({ id }) => ids.includes(id)).flatMap((table) => table.rows)
  return {
    holds: rows('holds'),
    free: rows('order', 'hardware'),
    held: rows('order-held', 'hardware-held'),
    texts: blocks.flatMap((block) => ('text' in block ? [block.text] : [])),
  }
}

const centsOf = (text: string | undefined): number =>
  Math.round(Number((text ?? '').replace(/[$,]/g, '')) * 100)
const sum = (rows: PaperTable['rows']): number => rows.reduce((all, { amount }) => all + centsOf(amount), 0)

describe('the order of a deck whose joint at the house’s corner is left to a designer', () => {
  const source = sourceOf('wrap-hip')
  const { holds, free, held, texts } = orderOf(source)
  const { estimate } = source

  test('names what is open and who settles it, each with a sign that its lines carry', () => {
    const said = holds.map(({ name, what, until }) => `${name} ${what}: ${until}`).join('\n')
    expect(said).toMatch(/Rim that carries joists.*: a licensed designer/)
    expect(said).toMatch(/Hip: HP1, HP2.*: the building official has accepted/)
    expect(said).toMatch(/joint of .*HP1, HP2.*: a licensed designer/)
    expect(said).toMatch(/cap over post 1.*: its maker/)
    const names = holds.map(({ name }) => name)
    for (const { hold = '' } of held) {
      expect(hold).not.toBe('')
      for (const name of hold.split(', ')) expect(names).toContain(name)
    }
  })

  test('has the hip’s hanger, those of the joists at its end and the cap over its post with what waits', () => {
    const waits = (words: string) => held.find(({ label }) => label?.startsWith(words))
    const now = (words: string) => free.find(({ label }) => label?.startsWith(words))
    expect(waits('Joist hanger for two 2x10, skewed')?.bought).toBe('1')
    expect(now('Joist hanger for two 2x10, skewed')).toBeUndefined()
    // J6 and J32 at the hip's end; J1 to J4 and J34 to J37 hang on rims that are outside scope: of 12 two are free
    expect(waits('Joist hanger for a 2x10, skewed')?.bought).toBe('10')
    expect(now('Joist hanger for a 2x10, skewed')?.bought).toBe('2')
    // nine posts; those under beams that the tables do not cover wait with post 1
    expect(Number(waits('Post cap')?.bought) + Number(now('Post cap')?.bought ?? 0)).toBe(9)
  })

  test('holds every board from which a member in doubt is sawn, and no other', () => {
    const doubtful = new Set(
      estimate.checks
        .filter(({ status }) => status !== 'passes' && status !== 'near')
        .flatMap(({ subjects }) => subjects),
    )
    const members = new Map(estimate.takeoff.pieces.map(({ id, memberId }) => [id, memberId]))
    for (const { plan } of estimate.plans)
      for (const { pieces } of [{ pieces: plan.runPieces }])
        for (const { id, memberId } of pieces) members.set(id, memberId)
    const boards = estimate.plans.flatMap(({ plan }) => plan.boards)
    const wanted = boards.filter(({ cuts }) =>
      cuts.some(({ pieceId }) => doubtful.has(members.get(pieceId) ?? '')),
    ).length
    const count = (rows: PaperTable['rows']) =>
      rows.filter((row) => 'count' in row).reduce((all, row) => all + Number(row.count), 0)
    expect(wanted).toBeGreaterThan(0)
    expect(wanted).toBeLessThan(boards.length)
    expect(count(held)).toBe(wanted)
    // and one board more, which no piece is sawn from: four blocks behind the two joints of rims
    expect(count(free)).toBe(boards.length - wanted + 1)
  })

  test('comes to the estimate’s materials to the cent, in both parts and in the message', () => {
    const { material } = estimate.pricing.totals
    expect(sum(free) + sum(held)).toBe(material)
    const wanted = [
      `To be bought now, before tax: ${printMoney(sum(free) as never)}`,
      `On hold, before tax: ${printMoney(sum(held) as never)}`,
      `All of it by this list, before tax: ${printMoney(material)}`,
    ]
    expect(texts).toEqual(expect.arrayContaining(wanted))
    const message = orderMessages(source)[0]?.text ?? ''
    for (const words of wanted) expect(message).toContain(words)
    expect(message.indexOf('ON HOLD')).toBeGreaterThan(message.indexOf('Joist hanger for a 2x10, galvanised'))
  })
})

describe.each(CATALOGUE.map(({ file }) => file.replace('.json', '')).filter((_, i) => i % 4 === 0))(
  'the order of %s',
  (name) => {
    test('has both its parts sum to the cost’s materials to the cent', () => {
      const source = sourceOf(name)
      const { free, held } = orderOf(source)
      expect(sum(free) + sum(held)).toBe(source.estimate.pricing.totals.material)
    })
  },
)

test('an order of which nothing is open has no hold, and one sum', () => {
  const { holds, held, texts } = orderOf(paperSource(smallJob('12 ft')))
  expect(holds).toEqual([])
  expect(held).toEqual([])
  expect(texts.join('\n')).not.toMatch(/on hold|bought now/i)
})

test('goods are told as they are sold: tubes and flashing in pieces, screws in boxes', () => {
  const { free } = orderOf(paperSource(smallJob('12 ft')))
  const sold = (words: string) => free.find(({ label }) => label?.includes(words))?.packs
  // the sample book: 10 ft pieces, two of them for 11 ft 9 in
  expect(sold('Ledger flashing')).toBe('2 × 10 ft piece')
  expect(sold('Deck screws')).toMatch(/^\d+ × box of 350$/)
  expect(orderMessages(paperSource(smallJob('12 ft')))[0]?.text).toContain('2 × 10 ft piece: Ledger flashing')
})

test('boards that are sold in packs say so', () => {
  const source = paperSource(smallJob('12 ft'))
  const [first] = source.estimate.plans
  const id = first?.plan.order[0]?.stockId ?? ''
  const book = {
    ...source.book,
    lumber: source.book.lumber.map((entry) => ({
      ...entry,
      stock: entry.stock.map((stock) => (stock.code === id ? { ...stock, pack: 6, minimum: 12 } : stock)),
    })),
  }
  const { free } = orderOf({ ...source, book })
  expect(free.find(({ code }) => code === id)?.product).toContain('(in packs of 6, 12 at least)')
})

test('the address of the site stands where the yard looks for it', () => {
  const source = paperSource(smallJob('12 ft', { customer: { address: '4 Heron Lane, Ashbrook' } }))
  const [sheet] = makeSheets(source, ['order'])
  const facts = sheet?.blocks.flatMap((block) => (block.kind === 'facts' ? block.rows : [])) ?? []
  expect(facts).toContainEqual(['Deliver to', '4 Heron Lane, Ashbrook'])
  expect(orderMessages(source)[0]?.text).toContain('Deliver to: 4 Heron Lane, Ashbrook')
})
