import { describe, expect, test } from 'vitest'
import {
  aboutOf,
  layOutPages,
  makeSheets,
  orderMessages,
  type PaperTable,
  type SheetId,
} from '../../../core/papers/index.ts'
import { printLength, printMoney, ticks } from '../../../core/units/index.ts'
import { paperSource } from '../../fixtures/paper-source.ts'
import { workedJob } from '../../fixtures/worked-job.ts'
import { WORKED_PRICES } from '../../fixtures/worked-prices.ts'

const source = paperSource(
  { ...workedJob(), scope: { stairs: { allowance: '$1,150' }, permit: { allowance: '$210' } } },
  WORKED_PRICES,
)
const { estimate } = source
const sheets = makeSheets(source)
const tablesOf = (id: SheetId): readonly PaperTable[] =>
  sheets
    .filter((sheet) => sheet.id === id)
    .flatMap(({ blocks }) => blocks.flatMap((b) => (b.kind === 'table' ? [b.table] : [])))

/** Every number anywhere in a value. */
function numbersIn(value: unknown, found = new Set<number>()): ReadonlySet<number> {
  if (typeof value === 'number') found.add(value)
  else if (value !== null && typeof value === 'object')
    for (const each of Object.values(value)) numbersIn(each, found)
  return found
}

describe('every figure on the papers', () => {
  const words = layOutPages(sheets, aboutOf(source), { paper: 'letter', scale: null })
    .flatMap(({ marks }) => marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])))
    .join('\n')

  test('in dollars and cents is one of the estimate’s, of the price book’s, or a stated stage of the price', () => {
    const cents = numbersIn(estimate)
    const known = new Set(
      [...cents].filter(Number.isInteger).map((n) => (Math.abs(n) < 1e9 ? printMoney(n as never) : '')),
    )
    const unitPrices = new Set(
      estimate.pricing.lines.map(({ price }) => `$${(price / 10_000).toFixed(price % 100 === 0 ? 2 : 4)}`),
    )
    const order = estimate.pricing.lines
      .filter(({ part }) => part === 'material')
      .reduce((sum, { amount }) => sum + amount, 0)
    // what the yard bills: nails and screws at joints come out of boxes that stand in the order anyway, the ledger's four
    // fasteners at each of its joints by their own price, a plate by the joint's
    const joints = estimate.pricing.lines.filter(
      ({ group, part }) => group === 'joints' && part === 'material',
    )
    const plates = joints.find(({ id }) => id === 'joint-beam-ply-material')?.amount ?? 0
    const atLedger = joints.find(({ id }) => id === 'joint-ledger-material')?.thousandths ?? 0
    const fastener = estimate.pricing.lines.find(({ id }) => /^good-ledger-/.test(id))?.price ?? 0
    const atJoints = joints.reduce((sum, { amount }) => sum + amount, 0)
    const beside = plates + (4 * (atLedger / 1000) * fastener) / 100
    const bill = order - atJoints + beside
    const stages = source.firm.stages
      .slice(0, -1)
      .map(({ share }) => Math.round((estimate.pricing.totals.priceWithTax * share) / 10_000))
    const last = estimate.pricing.totals.priceWithTax - stages.reduce((sum, each) => sum + each, 0)
    // the deposit's cap that the office is told of
    const said = new Set([
      '$1,000',
      ...[order, bill, atJoints, beside, ...stages, last].map((n) => printMoney(n as never)),
    ])
    const printed = [...words.matchAll(/\$[\d,]+(?:\.\d+)?/g)].map(([money]) => money)
    expect(printed.length).toBeGreaterThan(150)
    for (const money of printed)
      expect(known.has(money) || unitPrices.has(money) || said.has(money), money).toBe(true)
  })

  test('of a cutting sheet: each mark stands on one board and in one place, and both say so', () => {
    const pieces = estimate.plans.flatMap(({ plan }) =>
      plan.boards.flatMap(({ number, cuts }) => cuts.map((cut) => ({ ...cut, number, jobId: plan.jobId }))),
    )
    const setUps = sheets
      .filter(({ id }) => id === 'cutting')
      .flatMap(({ blocks }) => blocks.flatMap((block) => (block.kind === 'set-up' ? [block] : [])))
    // beside a mark stands to what its piece is ripped, and that it lies turned about
    const plainly = (marks: readonly string[]) =>
      marks.map((mark) => mark.replace(/ \((?:rip to [^)]*|end for end)\)$/, ''))
    const sawn = setUps.flatMap(({ boards }) => boards.flatMap(({ marks }) => plainly(marks)))
    const placed = tablesOf('cutting').flatMap(({ rows }) => rows)
    expect(sawn.toSorted()).toEqual(pieces.map(({ mark }) => mark).toSorted())
    expect(placed.map(({ mark }) => mark).toSorted()).toEqual(sawn.toSorted())
    expect(new Set(sawn).size).toBe(sawn.length)
    const boxes = setUps.flatMap(({ boards }) => boards)
    expect(new Set(boxes.map(({ name }) => name)).size, 'one name for each board of the job').toBe(
      estimate.plans.reduce((sum, { plan }) => sum + plan.boards.length, 0),
    )
    for (const { mark, length, number, jobId } of pieces) {
      const size = estimate.plans.find(({ plan }) => plan.jobId === jobId)?.product.size
      const row = placed.find((each) => each.mark === mark)
      expect(row?.length, mark).toBe(printLength(length))
      expect(row?.board, mark).toMatch(new RegExp(`^${size}[a-z]?-${number}$`))
      expect(boxes.find(({ marks }) => plainly(marks).includes(mark))?.name).toBe(row?.board)
      expect(row?.place, mark).not.toBe('')
    }
  })

  test('of a set-up runs along the tape with the kerf counted in, as the plan cuts it', () => {
    const setUps = sheets
      .filter(({ id }) => id === 'cutting')
      .flatMap(({ blocks }) => blocks.flatMap((block) => (block.kind === 'set-up' ? [block] : [])))
    expect(setUps.reduce((sum, { boards }) => sum + boards.length, 0)).toBe(
      estimate.plans.reduce((sum, { plan }) => sum + plan.boards.length, 0),
    )
    for (const { cuts, length, offcut } of setUps) {
      cuts.forEach(({ from, to, length: long }, i) => {
        expect(to - from).toBe(long)
        const before = cuts[i - 1]
        if (before !== undefined) expect(from - before.to).toBe(estimate.job.cutting.kerf)
      })
      const end = cuts.at(-1)?.to ?? 0
      expect(end + offcut).toBeLessThanOrEqual(length)
    }
  })

  test('of the order counts the boards of the plans, and the same in the message', () => {
    const order = tablesOf('order').find(({ id }) => id === 'order')
    const bought = (order?.rows ?? []).reduce((sum, { count }) => sum + Number(count), 0)
    // and those of which only blocks behind joints of rims are sawn: see rim-joint-blocks.test.ts
    const forBlocks = estimate.pricing.lines.filter(({ id }) => id.startsWith('blocks-'))
    expect(bought).toBe(
      estimate.plans.reduce((sum, { plan }) => sum + plan.boards.length, 0) +
        forBlocks.reduce((sum, { thousandths }) => sum + thousandths / 1000, 0),
    )
    const message = orderMessages(source)[0]?.text ?? ''
    for (const row of order?.rows ?? [])
      expect(message).toContain(
        `${row.count} ${row.count === '1' ? 'pc' : 'pcs'} ${row.product}, ${row.length}`,
      )
    for (const { instead } of order?.rows ?? [])
      if (instead !== undefined && instead !== '') expect(message).toContain(`or instead ${instead}`)
    const longest = Math.max(...estimate.plans.flatMap(({ plan }) => plan.order.map(({ length }) => length)))
    expect(message).toContain(`Lumber: ${bought} pieces, the longest ${longest / 384} ft`)
    const sum = estimate.pricing.lines
      .filter(({ part }) => part === 'material')
      .reduce((total, { amount }) => total + amount, 0)
    expect(message).toContain(`before tax: ${printMoney(sum as never)}`)
  })

  test('of the footing layout is the frame’s, hole by hole', () => {
    const centres = tablesOf('footings').find(({ id }) => id === 'layout-holes')
    expect(centres?.rows).toHaveLength(estimate.frame.footings.length)
    for (const { number, x, y } of estimate.frame.footings) {
      const row = centres?.rows.find(({ hole }) => hole === `${number}`)
      expect(row?.along).toBe(printLength(x))
      expect(row?.away).toBe(printLength(y))
      // to the nearest 1/16 in, worked here from the place alone
      const left = Math.round(Math.hypot(x, y) / 2) * 2
      const right = Math.round(Math.hypot(estimate.job.size.width - x, y) / 2) * 2
      expect(row?.left).toBe(printLength(ticks(left)))
      expect(row?.right).toBe(printLength(ticks(right)))
    }
  })

  test('of every check is on the reviewer’s sheet, with its steps where it decides', () => {
    const review = tablesOf('checks').find(({ id }) => id === 'review')
    expect(review?.rows).toHaveLength(estimate.checks.length)
    const said = (sheets.find(({ id }) => id === 'checks')?.blocks ?? [])
      .map((block) => ('text' in block ? block.text : ''))
      .join('\n')
    for (const { title, governing, message } of estimate.checks) {
      expect(review?.rows.some((row) => row.title === title && row.message === message)).toBe(true)
      for (const step of governing?.steps ?? []) expect(said).toContain(step)
    }
  })
})
