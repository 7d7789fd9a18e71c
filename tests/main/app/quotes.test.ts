import { execFileSync } from 'node:child_process'
import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { readPriceBook, SAMPLE_BOOK, writePriceBook } from '../../../core/pricing/index.ts'
import { type Cents, printMoney, sumCents } from '../../../core/units/index.ts'
import { smallJob } from '../../fixtures/worked-job.ts'
import { openServices, REAL_WORKER, type TestServices } from './test-services.ts'

let services: TestServices
beforeAll(async () => {
  services = await openServices({ worker: REAL_WORKER })
})
afterAll(() => services.close())

const PAGE = { paper: 'letter', scale: null } as const
const FIRM = {
  name: 'Plumb & Level Decks',
  lines: [],
  logo: null,
  state: 'CA',
  terms: ['Our own terms hold.'],
  validDays: 20,
  stages: [
    { label: 'Deposit', share: 2000 },
    { label: 'Done', share: 8000 },
  ],
}

function textOf(base64: string): string {
  const file = join(services.folder, 'read.pdf')
  writeFileSync(file, Buffer.from(base64, 'base64'))
  return execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' })
}

const BASE = { ...smallJob(), name: 'Tarn House' }
const statement = { ...BASE, pricing: { options: 'Higher: size.height = 4 ft' } }
const dearer = {
  ...SAMPLE_BOOK,
  date: '2026-12-01',
  lumber: SAMPLE_BOOK.lumber.map((product) => ({
    ...product,
    stock: product.stock.map((one) => ({ ...one, price: (one.price * 2) as Cents })),
  })),
}

test('a quote stays as sent after prices and deck have changed, and the change order tells what each did', async () => {
  await services.call('firm.save', FIRM)
  const { id } = await services.call('jobs.create', { statement: BASE })
  expect(await services.call('quotes.read', { statement: BASE, jobId: id, date: '' })).toMatchObject({
    sent: [],
    options: [],
    change: null,
  })
  expect(await services.call('quotes.lines', { statement: BASE, jobId: id })).toBeNull()

  const first = await services.call('quotes.send', {
    statement,
    jobId: id,
    date: '2026-11-25',
    page: PAGE,
  })
  expect(first.sent).toMatchObject({ number: 1, revision: 1, date: '2026-11-25' })
  const words = textOf(first.base64)
  expect(words).toContain('1, revision 1')
  expect(words).toContain('until 2026-12-15')
  expect(words).toContain('Our own terms hold.')
  expect(words).toContain(printMoney(first.sent.price))

  // prices change, and the deck
  const text = JSON.stringify(writePriceBook(dearer))
  expect(readPriceBook(JSON.parse(text)).ok).toBe(true)
  await services.call('prices.import', { text })
  const wider = {
    ...statement,
    size: { width: '14 ft', depth: '8 ft', height: '30 in' },
    decking: { size: '2x6' },
  }
  const desk = await services.call('quotes.read', { statement: wider, jobId: id, date: '2026-12-02' })
  const since = await services.call('quotes.lines', { statement: wider, jobId: id })
  if (since === null) throw new Error('one was sent')
  expect(since).toMatchObject({ from: { revision: 1, price: first.sent.price }, countedOtherwise: 0 })
  expect(sumCents([...since.lines, ...since.sums].map(({ difference }) => difference))).toBe(
    since.price - first.sent.price,
  )
  const { change } = desk
  if (change === null) throw new Error('there is a change')
  expect(change.from).toEqual({ revision: 1, date: '2026-11-25', price: first.sent.price })
  expect(change.lines.map(({ what }) => what)).toEqual([
    `Prices of 2026-12-01, formerly of ${SAMPLE_BOOK.date}`,
    expect.stringMatching(/^Width: 14'-0", formerly /),
    'Decking size: 2x6, formerly 5/4x6',
  ])
  expect(change.lines[0]?.amount).toBeGreaterThan(0)
  expect(sumCents(change.lines.map(({ amount }) => amount))).toBe(change.to.price - change.from.price)
  // the present price is that of an estimate made by itself
  const alone = await services.call('estimate.run', { edit: 1, statement: wider, jobId: id })
  const made = alone.result.ok ? alone.result.estimate.pricing?.totals.priceWithTax : null
  expect(change.to.price).toBe(made)
  // and so is an option's
  const higher = { ...wider, size: { ...wider.size, height: '4 ft' } }
  const other = await services.call('estimate.run', { edit: 2, statement: higher, jobId: id })
  const dear = other.result.ok ? other.result.estimate.pricing?.totals.priceWithTax : null
  expect(desk.options).toMatchObject([{ name: 'Higher', price: (dear ?? 0) - (made ?? 0) }])

  const second = await services.call('quotes.send', {
    statement: wider,
    jobId: id,
    date: '2026-12-02',
    page: PAGE,
  })
  expect(second.sent).toMatchObject({ number: 1, revision: 2, price: change.to.price })

  // the first is what it was, byte for byte
  expect((await services.call('quotes.paper', { jobId: id, revision: 1 })).base64).toBe(first.base64)
  const order = textOf(
    (await services.call('quotes.changeOrder', { jobId: id, revision: 2, page: PAGE })).base64,
  )
  for (const { what, amount } of change.lines) {
    expect(order).toContain(what.slice(0, 20))
    expect(order).toContain(printMoney(amount))
  }
  expect(order).toContain(printMoney(first.sent.price))
  expect(order).toContain(printMoney(second.sent.price))
  await expect(
    services.call('quotes.changeOrder', { jobId: id, revision: 1, page: PAGE }),
  ).rejects.toMatchObject({ code: 'not-found' })

  // the prices of another day change nothing of what was sent
  await services.call('prices.useSample', {})
  expect((await services.call('quotes.paper', { jobId: id, revision: 2 })).base64).toBe(second.base64)
  const again = textOf(
    (await services.call('quotes.changeOrder', { jobId: id, revision: 2, page: PAGE })).base64,
  )
  expect(again).toBe(order)
})

test('what to look at before a quote goes out is said: an old list, a deposit above the state’s limit, an option that fails', async () => {
  await services.call('firm.save', FIRM)
  await services.call('prices.import', {
    text: JSON.stringify(writePriceBook({ ...dearer, invented: false, date: '2026-10-01' })),
  })
  const { id } = await services.call('jobs.create', { statement: BASE })
  const far = {
    ...BASE,
    pricing: { options: 'Sparse: frame.joists.spacing = 24 in, frame.joists.size = 2x6' },
  }
  const { warnings, options } = await services.call('quotes.read', {
    statement: far,
    jobId: id,
    date: '2026-12-02',
  })
  const said = warnings.join('\n')
  // 62 days to the date, and 20 that it holds
  expect(said).toContain('82 days old')
  expect(said).toMatch(/more than California lets a deposit be, \$[\d,.]+: the lesser of \$1,000 or 10 %/)
  expect(said).toContain('Option “Sparse”')
  expect(options[0]?.caution).toMatch(/with it:/)
})

test('a quote needs a day, a job in the store, and a contractor', async () => {
  const { id } = await services.call('jobs.create', { statement: BASE })
  const send = (input: object): Promise<unknown> =>
    services.callAnything('quotes.send', {
      statement: BASE,
      jobId: id,
      date: '2026-12-02',
      page: PAGE,
      ...input,
    })
  await expect(send({ date: '' })).rejects.toMatchObject({ code: 'bad-input' })
  await expect(send({ jobId: 'nowhere' })).rejects.toMatchObject({ code: 'not-found' })
  await expect(send({ statement: { ...BASE, builder: 'owner' } })).rejects.toMatchObject({
    code: 'bad-input',
    message: expect.stringContaining('owner builds'),
  })
})
