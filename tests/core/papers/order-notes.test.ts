import { describe, expect, test } from 'vitest'
import { hardwareTable, makeSheets } from '../../../core/papers/index.ts'
import { scopeWords } from '../../../core/papers/quote/scope-words.ts'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'

const source = paperSource(CATALOGUE.find(({ file }) => file === 'wrap-hip.json')?.job ?? {})
const { estimate } = source
const labelOf = (words: string) =>
  hardwareTable(estimate, SAMPLE_BOOK.goods).rows.find(({ label }) => label?.startsWith(words))?.label ?? ''

describe('the order of the deck around the house', () => {
  test('has the hands and the angle of skewed hangers: six joists on either half of the hip, 45 degrees', () => {
    // facing the hip from the front wing, its joists come in from the right of square; from the left wing the other way
    const label = labelOf('Joist hanger for a 2x10, skewed')
    expect(label).toContain('6 to the left, 6 to the right')
    expect(label).toContain('45°')
  })

  test('says which cap and which angles are unlike the others', () => {
    expect(labelOf('Post cap')).toContain('1 of them, for post 1,')
    // a hip of 45° leaves 45° between each of its faces and the rim
    expect(labelOf('Angle for 45°, hip to rim')).not.toBe('')
    expect(labelOf('Angle, end joist')).not.toContain('hip')
  })

  test('says how long bolts are, or what their length depends on', () => {
    expect(labelOf('Lag screw')).toContain('length to suit')
    // no table gives a length: a ledger of 1-1/2, sheathing of 1/2, a band of 1-1/2 in, and the tip past it
    expect(labelOf('Lag screw')).toContain('4 in where sheathing is 1/2 in and the band 1 1/2 in')
    expect(labelOf('Lag screw')).toContain('1/2 in of tip (common practice, no source)')
    expect(labelOf('Anchor bolt')).toContain('length to suit')
    // board 1-1/2 in, post 3-1/2 in, a block behind it or none, nut and washer 1 in, a hold-down 1/2 in
    expect(labelOf('Carriage bolt')).toContain('7 in above and 6 in below at GP1 to GP6; 8 in at GP7 to GP17')
  })
})

test('the order of a high deck with a landing says how long each bolt is, how wide the beams, and what goes into the pad', () => {
  const high = paperSource(CATALOGUE.find(({ file }) => file === 'high-stairs-landing.json')?.job ?? {})
  const label = (words: string) =>
    hardwareTable(high.estimate, SAMPLE_BOOK.goods).rows.find((row) => row.label?.startsWith(words))?.label ??
    ''
  // rim or header and upright are two boards of 1-1/2 in, 3 in; header and a 6x6 of 5-1/2 in are 7 in; washers and nut 1 in
  expect(label('Bolt 1/2 in')).toMatch(/16 of 4 in, .*4 of 8 in, /)
  // two plies of 1-1/2 in, on the deck and under the landing
  expect(label('Post cap')).toContain('for a beam 3 in wide, 2 plies: B1, LB1, LB2')
  // a third board and the header stand on the outer faces of the landing's outer posts
  expect(label('Post cap')).toContain('2 of them, for LP3 and LP4, with a plate on the inner face only')
  // four stringers on a pad of 4 in
  expect(label('Anchor bolt')).toMatch(/4 of them for the stairs’ pad: .*4 in of concrete/)
  expect(label('Lag screw')).toContain('4 in where sheathing is 1/2 in')
})

test('the quote gives its area and open sides, and no extent away from the house where the house stands', () => {
  const [deck] = scopeWords(estimate)
  // 28 × 24 ft less the house’s 20 × 16 ft: 352
  expect(deck).toContain('352 square feet')
  expect(deck).toContain(`28'-0" in front, 24'-0" at the left, 8'-0"`)
  expect(deck).not.toContain('away from')
})

test('of a ledger that is not jointed no joint is spoken of, and a guard without stairs is called a guard', () => {
  const words = JSON.stringify(makeSheets(source, ['marking']))
  expect(words).not.toContain('Where a ledger is jointed')
  expect(makeSheets(source, ['stairs'])[0]?.title).toBe('Guard')
})

test('a landing’s posts are sawn as much too long as those of the deck, for both are cut on their piers', () => {
  const high = paperSource(
    CATALOGUE.find(({ file }) => file === 'high-stairs-landing.json')?.job ?? {},
  ).estimate
  const over = (mark: RegExp) =>
    high.takeoff.pieces
      .filter((piece) => mark.test(piece.mark))
      .map(({ length, finished }) => length - finished)
  const deck = over(/^P\d/)
  const landing = over(/^LP\d/)
  expect(landing.length).toBe(4)
  expect(new Set([...deck, ...landing])).toEqual(new Set([high.job.cutting.postAllowance]))
})
