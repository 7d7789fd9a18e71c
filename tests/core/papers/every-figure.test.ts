import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { aboutOf, layOutPages, makeSheets, type PaperSource, SHEET_IDS } from '../../../core/papers/index.ts'
import { parseLength, printMoney } from '../../../core/units/index.ts'
import { paperSource } from '../../fixtures/paper-source.ts'

/** Two decks of the catalogue with stairs and a guard, and one level on posts. */
const DECKS = ['l-shape', 'rectangle-24-by-14'].map((name) => {
  const file = join(import.meta.dirname, '../../fixtures/catalogue', `${name}.json`)
  const { job } = JSON.parse(readFileSync(file, 'utf8'))
  return [
    name,
    paperSource({ ...job, stairs: { kind: 'straight' }, guard: { where: 'all open edges' } }),
  ] as const
})

/** Every number anywhere in a value. */
function numbersIn(value: unknown, found: Set<number>): Set<number> {
  if (typeof value === 'number') found.add(value)
  else if (value !== null && typeof value === 'object')
    for (const each of Object.values(value)) numbersIn(each, found)
  return found
}

/** Every text that is on a sheet of the set, not cut by any line. */
function wordsOf(source: PaperSource): readonly string[] {
  const found: string[] = []
  const walk = (value: unknown): void => {
    if (typeof value === 'string') found.push(value)
    else if (value !== null && typeof value === 'object') for (const each of Object.values(value)) walk(each)
  }
  for (const sheet of makeSheets(source, SHEET_IDS)) walk(sheet.blocks)
  return found
}

describe.each(DECKS)('on every sheet of %s', (_, source) => {
  const { estimate, book, firm } = source
  const numbers = numbersIn([estimate, book], new Set())
  const words = wordsOf(source)

  test('each sum of money is one of the estimate or of the price book, or a sum of a few of its lines', () => {
    const known = new Set([...numbers].filter(Number.isInteger).map((n) => printMoney(n as never)))
    const prices = estimate.pricing.lines.map(
      ({ price }) => `$${(price / 10_000).toFixed(price % 100 === 0 ? 2 : 4)}`,
    )
    const price = estimate.pricing.totals.priceWithTax
    const shares = firm.stages.slice(0, -1).map(({ share }) => Math.round((price * share) / 10_000))
    const order = estimate.pricing.lines.filter(({ part }) => part === 'material')
    const sums = [
      ...shares,
      price - shares.reduce((sum, each) => sum + each, 0),
      order.reduce((sum, { amount }) => sum + amount, 0),
      // what the yard bills: nails and screws at joints come out of boxes that stand in the order anyway
      order.reduce((sum, { id, amount }) => (/^joint-(?:rim|decking)-/.test(id) ? sum : sum + amount), 0),
      order.reduce((sum, { group, amount }) => (group === 'joints' ? sum + amount : sum), 0),
      // the limits on deposits that the office is told of
      100_000,
      Math.floor(price / 10),
      Math.floor(price / 3),
    ]
    // of a line some may be bought now and the others be on hold
    const some = order.flatMap(({ price, thousandths }) =>
      Array.from({ length: Math.ceil(thousandths / 1000) }, (_, i) => Math.round(((i + 1) * price) / 100)),
    )
    const parts = ['To be bought now', 'On hold'].flatMap((part) => {
      const line = words.find((text) => text.startsWith(`${part}, before tax: $`))
      return line === undefined ? [] : [line.slice(line.indexOf('$'))]
    })
    if (parts.length > 0)
      expect(parts.reduce((sum, text) => sum + Math.round(Number(text.replace(/[$,]/g, '')) * 100), 0)).toBe(
        order.reduce((sum, { amount }) => sum + amount, 0),
      )
    const told = new Set([
      ...known,
      ...prices,
      ...parts,
      ...[...sums, ...some].map((n) => printMoney(n as never)),
      '$1,000',
    ])
    const printed = words.flatMap((text) => text.match(/\$[\d,]+(?:\.\d+)?/g) ?? [])
    expect(printed.length).toBeGreaterThan(100)
    for (const money of printed) expect(told, money).toContain(money)
  })

  test('each length in the tables of members, pieces and cuts is a length of the estimate', () => {
    const ticks = new Set([...numbers].map((n) => Math.round(n)))
    const sheets = makeSheets(source, SHEET_IDS)
    const columns = new Set(['length', 'stock', 'offcut'])
    const checked = sheets.flatMap(({ blocks }) =>
      blocks.flatMap((block) =>
        block.kind === 'table'
          ? block.table.rows.flatMap((row) =>
              Object.entries(row).flatMap(([key, text]) =>
                columns.has(key) && /["']/.test(text) ? [text] : [],
              ),
            )
          : block.kind === 'drawing'
            ? block.drawing.primitives.flatMap((p) => (p.kind === 'dimension' ? [p.text] : []))
            : [],
      ),
    )
    expect(checked.length).toBeGreaterThan(80)
    for (const text of checked) {
      const read = parseLength(text)
      expect(read.ok, text).toBe(true)
      if (!read.ok) continue
      const length = read.value
      // a dimension may be what lies between two places of the estimate
      const between = ticks.has(length) || [...ticks].some((n) => ticks.has(n + length))
      expect(between, text).toBe(true)
    }
  })

  test('a mark of the cutting sheet leads to one board, one place and one member of the plan, and back', () => {
    const members = [
      ...estimate.frame.members,
      ...estimate.stairs.flatMap(({ members }) => members),
      ...(estimate.guard?.members ?? []),
    ]
    const memberOf = new Map([
      ...estimate.takeoff.pieces.map(({ id, memberId }) => [id, memberId] as const),
      ...estimate.plans.flatMap(({ plan }) =>
        plan.runPieces.map(({ id, memberId }) => [id, memberId] as const),
      ),
    ])
    const cuts = estimate.plans.flatMap(({ plan }) => plan.boards.flatMap((board) => board.cuts))
    expect(new Set(cuts.map(({ mark }) => mark)).size).toBe(cuts.length)
    for (const { pieceId, mark } of cuts) {
      const own = members.filter(({ id }) => id === memberOf.get(pieceId))
      expect(own, mark).toHaveLength(1)
    }
    const cut = new Set(cuts.map(({ pieceId }) => memberOf.get(pieceId)))
    for (const { id, mark, product } of members) {
      const bought = estimate.plans.some((planned) => planned.product.size === product.size)
      if (bought) expect(cut.has(id), `${mark} is cut from a board`).toBe(true)
    }
    const sheets = makeSheets(source, ['cutting'])
    const said = sheets.flatMap(({ blocks }) =>
      blocks.flatMap((block) => (block.kind === 'set-up' ? block.boards.flatMap(({ marks }) => marks) : [])),
    )
    const sawn = said.map((mark) => mark.replace(/ \(end for end\)$/, ''))
    const placed = sheets.flatMap(({ blocks }) =>
      blocks.flatMap((block) => (block.kind === 'table' ? block.table.rows : [])),
    )
    expect(sawn.toSorted()).toEqual(cuts.map(({ mark }) => mark).toSorted())
    expect(placed.map(({ mark }) => mark).toSorted()).toEqual(sawn.toSorted())
    for (const row of placed) expect(row.place, row.mark).not.toBe('')
  })

  test('counts of connectors on the inspection cards are the frame’s', () => {
    const cards = makeSheets(source, ['inspections']).flatMap(({ blocks }) =>
      blocks.flatMap((block) => (block.kind === 'checklist' ? block.items : [])),
    )
    for (const { kind, count, size } of estimate.frame.connectors)
      expect(
        cards.some((item) => item.startsWith(`${count} ${kind}`) && item.includes(`(${size})`)),
        kind,
      ).toBe(true)
    for (const { number } of estimate.frame.footings)
      expect(cards.some((item) => item.startsWith(`Hole ${number}:`))).toBe(true)
    expect(cards.filter((item) => item.startsWith('Footing ')).length).toBe(
      estimate.stairs.flatMap(({ footings }) => footings).length,
    )
  })

  test('the details are those that the job has, with its own sizes', () => {
    const drawn = makeSheets(source, ['details']).flatMap(({ blocks }) =>
      blocks.flatMap((block) => (block.kind === 'drawing' ? [block.drawing.id] : [])),
    )
    const joints = estimate.plans.flatMap(({ plan }) => plan.joints)
    const plies = new Set(estimate.frame.beams.flatMap(({ plyIds }) => plyIds))
    expect(drawn).toEqual([
      ...(estimate.job.site.attachment === 'ledger' ? ['detail-ledger', 'detail-house-hold-down'] : []),
      'detail-beam',
      ...(joints.some(({ memberId }) => plies.has(memberId)) ? ['detail-joint'] : []),
      'detail-rim-corner',
      // of an L the inner corner too
      ...(estimate.layout.outline.length > 4 ? ['detail-inner-corner'] : []),
      'detail-base',
      'detail-footing',
      'detail-guard',
      'detail-guard-foot',
      'detail-guard-corner',
      'detail-stair',
      ...estimate.stairs.flatMap(({ flights, patterns }) =>
        flights.flatMap(({ number }) => [
          `detail-stair-head-${number}`,
          ...(patterns.some(({ flight, below }) => flight === number && below > 0)
            ? [`detail-stair-strip-${number}`]
            : []),
        ]),
      ),
    ])
  })
})

test('no sheet of a large set has a heading alone at the foot of a page', () => {
  const [, source] = DECKS[0] ?? []
  if (source === undefined) throw new Error('there is a deck')
  for (const paper of ['letter', 'a4', 'tabloid', 'a3'] as const) {
    const pages = layOutPages(makeSheets(source), aboutOf(source), { paper, scale: null })
    for (const { marks, height, number } of pages) {
      const texts = marks.flatMap((mark) => (mark.kind === 'text' && mark.y < height - 45 ? [mark] : []))
      const lowest = texts.reduce(
        (low, mark) => (mark.y > low.y ? mark : low),
        texts[0] ?? { y: 0, size: 0, weight: '' },
      )
      expect(lowest.size === 12 && lowest.weight === 'bold', `${paper}, page ${number}`).toBe(false)
    }
  }
})
