import { describe, expect, test } from 'vitest'
import { carriers } from '../../../core/frame/index.ts'
import { layoutStringsTable, makeSheets } from '../../../core/papers/index.ts'
import { nailingTable } from '../../../core/papers/tables/nailing-table.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'

const source = paperSource(CATALOGUE.find(({ file }) => file === 'wrap-hip.json')?.job ?? {})
const { estimate } = source
const wordsOf = (id: 'footings' | 'marking') =>
  makeSheets(source, [id])
    .flatMap(({ blocks }) =>
      blocks.flatMap((block) =>
        block.kind === 'steps'
          ? block.items.map(({ text, notes }) => [text, ...(notes ?? [])].join(' '))
          : block.kind === 'caution'
            ? [block.text]
            : [],
      ),
    )
    .join('\n')

describe('strings around a house', () => {
  const rows = new Map(layoutStringsTable(estimate).rows.map((row) => [row.name, row.house]))

  test('that end at it are told by their place on its wall, from the corner between the walls', () => {
    // corner 3 at (8', 16'): A, B, C lie 23', 17'-6", 12' back from y = 24', c, d, e 14', 20'-6", 27' from x = 0
    expect(['A', 'B', 'C'].map((name) => rows.get(name))).toEqual(
      [`15'-0"`, `9'-6"`, `4'-0"`].map((at) => `${at} from corner 3`),
    )
    expect(['c', 'd', 'e'].map((name) => rows.get(name))).toEqual(
      [`6'-0"`, `12'-6"`, `19'-0"`].map((at) => `${at} from corner 3`),
    )
  })

  test('that run past it are not said to end there', () => {
    for (const name of ['a', 'b', 'D', 'E']) expect(rows.get(name), name).toBe('')
    expect(wordsOf('footings')).toContain('A, B, C end at the house')
    expect(wordsOf('footings')).toContain('c, d, e end at the house')
  })

  test('have one pull along each row: 26 ft from hole 1 to 5, 22 ft along the left side', () => {
    expect(wordsOf('footings')).toContain(`under E from hole 1 to hole 5 26'-0"`)
    expect(wordsOf('footings')).toMatch(/under a from hole 6 to hole 1 22'-0"/)
  })
})

describe('the halves of a hip', () => {
  const halves = carriers(estimate, estimate.plans).filter(({ outerFace }) => outerFace === true)

  test('are as long on the marking sheet as they are sawn', () => {
    expect(halves.map(({ mark }) => mark)).toEqual(['HP1', 'HP2'])
    for (const { id, length } of halves) {
      const sawn = estimate.frame.members.find((member) => member.id === id)?.length ?? 0
      expect(Math.abs(length - sawn)).toBeLessThanOrEqual(1)
    }
  })

  test('have each line where the joist’s edge meets their outer face, from the long point at the hooked end', () => {
    // by hand: the seam runs at 45 degrees from (0, 24') to (8', 16'), the rims are 1-1/2 in. The long point of the left
    // end lies on the seam at the rims' inner faces, (1.5, 286.5). On HP1's face, 1-1/2 in off the seam towards the front,
    // x + y = 288 + 1.5 √2 and a joist's left edge at x lies (x - 0.75 √2 - 1.5) √2 along from there
    const front = halves.find(({ marks }) => marks.some(({ mark }) => mark === 'J5'))
    expect(front?.marks.length).toBe(6)
    for (const { memberId, at } of front?.marks ?? []) {
      const x = (estimate.frame.members.find(({ id }) => id === memberId)?.box.x0 ?? 0) / 32
      expect(Math.abs(at / 32 - (x - 0.75 * Math.SQRT2 - 1.5) * Math.SQRT2), memberId).toBeLessThan(1 / 16)
    }
  })

  test('are said to be hooked at the long point, and every line to be square across the face', () => {
    expect(wordsOf('marking')).toContain('hook the tape at the long point')
    expect(wordsOf('marking')).not.toContain('not square to the board')
  })
})

test('every nail that is ordered has its joint, and the counts make up the pounds', () => {
  const { rows } = nailingTable(estimate)
  const counted = (nail: string) =>
    rows.filter(({ fastener }) => fastener === nail).reduce((sum, { count }) => sum + Number(count), 0)
  const pounds = (sku: string) =>
    (estimate.takeoff.goods.find((good) => good.sku === sku)?.thousandths ?? 0) / 1000
  // 45 a pound bright, 8 % fewer galvanised, 5 % more for loss; 65 and 86 likewise
  expect((counted('16d common') / (45 * 0.92)) * 1.05).toBeCloseTo(pounds('nail-16d-common'), 2)
  expect((counted('10d common') / (65 * 0.92)) * 1.05).toBeCloseTo(pounds('nail-10d-common'), 2)
  expect((counted('10d box') / (86 * 0.92)) * 1.05).toBeCloseTo(pounds('nail-10d-box'), 2)
  expect(rows.every(({ joint }) => joint !== '')).toBe(true)
  expect(rows.find(({ joint }) => joint === 'rim into joist end')?.each).toBe('3 into each end')
  expect(rows.filter(({ fastener }) => fastener?.startsWith('Deck screws')).length).toBe(2)
})

test('nails of stairs have their joints too: with them the counts of 10d common make up the pounds', () => {
  const high = paperSource(
    CATALOGUE.find(({ file }) => file === 'high-stairs-landing.json')?.job ?? {},
  ).estimate
  const all = nailingTable(high)
    .rows.filter(({ fastener }) => fastener?.includes('10d common'))
    .reduce((sum, { count }) => sum + Number(count), 0)
  const pounds = (high.takeoff.goods.find(({ sku }) => sku === 'nail-10d-common')?.thousandths ?? 0) / 1000
  expect((all / (65 * 0.92)) * 1.05).toBeCloseTo(pounds, 2)
})

test('the angles of a landing are not counted among the end joists nailed into the ledger: two of those meet it', () => {
  const high = paperSource(
    CATALOGUE.find(({ file }) => file === 'high-stairs-landing.json')?.job ?? {},
  ).estimate
  const { rows } = nailingTable(high)
  // one at either end of the deck, three nails through each
  expect(rows.find(({ joint }) => joint === 'end joist into ledger')?.count).toBe('6')
  // four ends of the landing's outermost joists, three nails into each
  expect(rows.find(({ joint }) => joint?.startsWith('landing’s beam into the end'))?.count).toBe('12')
  const all = rows
    .filter(({ fastener }) => fastener === '16d common')
    .reduce((sum, { count }) => sum + Number(count), 0)
  const pounds = (high.takeoff.goods.find(({ sku }) => sku === 'nail-16d-common')?.thousandths ?? 0) / 1000
  expect((all / (45 * 0.92)) * 1.05).toBeCloseTo(pounds, 2)
})
