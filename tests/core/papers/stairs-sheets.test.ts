import { describe, expect, test } from 'vitest'
import { makeSheets, type Sheet } from '../../../core/papers/index.ts'
import { paperSource } from '../../fixtures/paper-source.ts'
import { smallJob } from '../../fixtures/worked-job.ts'

const FIRST = { kind: 'straight', width: '4 ft' }
const SECOND = { kind: 'straight', side: 'left', width: '3 ft' }

const source = paperSource({
  ...smallJob(),
  size: { width: '12 ft', depth: '10 ft', height: '44 in' },
  stairs: { ...FIRST, second: SECOND },
})
const sheet = (id: 'stairs' | 'details' | 'inspections' | 'quote'): Sheet => {
  const [made] = makeSheets(source, [id])
  if (made === undefined) throw new Error(`there is no sheet ${id}`)
  return made
}

describe('two stairs on paper', () => {
  test('have a sheet each, with facts, pattern and marks of their own', () => {
    const { blocks } = sheet('stairs')
    const headings = blocks.flatMap((block) => (block.kind === 'heading' ? [block.text] : []))
    expect(headings.filter((text) => text.endsWith('stairs'))).toEqual(['First stairs', 'Second stairs'])
    expect(headings.filter((text) => text.startsWith('Flight'))).toHaveLength(2)
    const second = blocks.findIndex((block) => block.kind === 'heading' && block.text === 'Second stairs')
    expect(blocks[second - 1]?.kind).toBe('page break')
    const facts = blocks.flatMap((block) => (block.kind === 'facts' ? [block.rows] : []))
    expect(facts.map((rows) => rows.find(([name]) => name === 'Stairs')?.[1])).toEqual([
      expect.stringContaining(`4'-0" wide`),
      expect.stringContaining(`3'-0" wide`),
    ])
  })

  test('are both in the details, the inspection cards and the words of the quote', () => {
    const told = (id: Parameters<typeof sheet>[0]) => JSON.stringify(sheet(id))
    expect(told('details')).toContain('Foot of the stairs, section along the way down (second stairs)')
    expect(told('inspections')).toContain('Pad at the foot of the stairs (second stairs)')
    expect(told('quote').match(/Stairs \d'-0\\" wide/g)).toHaveLength(2)
  })
})

describe('the foot of the stairs in section', () => {
  // 9 ft in 14 risers: 7.714 in, up to the 1/32 in 7-23/32
  const high = paperSource({
    ...smallJob(),
    size: { width: '16 ft', depth: '12 ft', height: '9 ft' },
    stairs: { kind: 'landing' },
  })
  const [details] = makeSheets(high, ['details'])
  const drawn = (details?.blocks ?? []).flatMap((block) =>
    block.kind === 'drawing' && block.drawing.id === 'detail-stair' ? block.drawing.primitives : [],
  )

  test('says its riser as the notes do, and each number once', () => {
    const figures = drawn.flatMap((p) => (p.kind === 'dimension' ? [p.text] : []))
    expect(figures).toContain('7 23/32"')
    const words = JSON.stringify(details)
    expect(words.match(/14 risers/g)).toHaveLength(1)
    expect(words).not.toContain('7 11/16')
  })

  test('are looked at once more on the last card, which says nothing of stairs where none are built', () => {
    const line = 'Stairs: risers equal within 3/8 in'
    expect(JSON.stringify(sheet('inspections'))).toContain(line)
    const [bare] = makeSheets(paperSource(smallJob()), ['inspections'])
    expect(JSON.stringify(bare)).not.toContain(line)
  })
})

describe('what stairs hang on, stand on and where their pad lies', () => {
  // 14 risers of 7.714 in, 6 runs of 10-1/4 in to a flight, a landing of 37 in between. Riser boards of 1 in and nosings of
  // 7/8 in, where the deck's boards reach 1 in over and the landing's 7/8 in: the uppermost runs are 7/8 and 1 in shorter.
  // The lowest riser's board is 60-5/8 + 37 + 60-1/2 + 1 = 159-1/8 in out; the pad begins 12 in behind its face, 48 in deep
  const high = paperSource({
    ...smallJob(),
    size: { width: '18 ft', depth: '12 ft', height: '9 ft' },
    frame: { joists: { size: '2x10', spacing: '16 in' }, beams: { front: { posts: 5 } } },
    stairs: { kind: 'landing', side: 'front', align: 'near', width: '4 ft' },
    guard: { where: 'where needed' },
  })
  const told = (id: 'stairs' | 'details' | 'inspections' | 'steps' | 'checks') =>
    JSON.stringify(makeSheets(high, [id])).replaceAll('\\"', '"')

  test('is one riser on every sheet', () => {
    for (const id of ['stairs', 'details', 'inspections', 'checks'] as const) {
      expect(told(id), id).toContain('7 23/32')
      // the places of balusters may read so
      expect(told(id), id).not.toMatch(/(risers|riser|square|set) [^.]{0,12}7 11\/16/)
    }
    expect(told('stairs')).toContain('do not step off with the square alone')
    expect(told('stairs')).toContain('down to the top of the pad at the foot: 14 equal risers')
  })

  test('is drawn at both heads and at the landing, with its hardware', () => {
    const drawn = makeSheets(high, ['details']).flatMap(({ blocks }) =>
      blocks.flatMap((block) => (block.kind === 'drawing' ? [block.drawing.id] : [])),
    )
    expect(drawn.filter((id) => id.startsWith('detail-stair'))).toEqual([
      'detail-stair',
      'detail-stair-head-1',
      'detail-stair-strip-1',
      'detail-stair-head-2',
    ])
    for (const id of ['stairs', 'inspections', 'steps'] as const) {
      expect(told(id), id).toContain('Header SH1, 2x6')
      expect(told(id), id).toContain('Strip SL1, 2x4 on edge')
      expect(told(id), id).toContain(`its top 6 in under the landing’s boards`)
    }
    expect(told('inspections')).toContain('4 stringer landing angles')
    expect(told('inspections')).toContain('20 header bolts, nuts tight')
  })

  test('is a landing whose boards reach over by the nosing, and an order of boards that keeps every step equal', () => {
    // 37 + 7/8 in over the edge: six boards and gaps of 5-5/8 in are 33-3/4, 4-1/8 in are left for the seventh
    for (const id of ['stairs', 'steps'] as const)
      expect(told(id)).toContain(
        `its boards LD1 to LD7 4'-0" long, the first at the edge away from the deck, the last ripped to 4 1/8 in; where the lower flight leaves they reach 7/8 in over`,
      )
    expect(told('steps')).toContain('a riser board on its rise cuts, then the tread under it')
    expect(told('steps')).toContain('10 1/4 in at every step')
    // 1-7/8 in of riser board and nosing less the deck's 1 in, and less the landing's 7/8 in
    expect(told('stairs')).toContain(
      'The uppermost run of the stringers is therefore 9 3/8 in, 7/8 in shorter',
    )
    expect(told('stairs')).toContain('The uppermost run of the stringers is therefore 9 1/4 in, 1 in shorter')
  })

  test('is the pad by its distances, in the steps too, which dig what the cost charges', () => {
    const place = `from 12'-3 1/8" to 16'-3 1/8" out from the rim’s face of the front side, and from 0" to 4'-0" along it`
    expect(told('stairs')).toContain(place)
    expect(told('steps')).toContain(place)
    expect(told('steps')).toContain('tamp 4 in of gravel')
    const dug = high.estimate.takeoff.tasks
      .filter(({ rateId }) => rateId.startsWith('dig'))
      .reduce((sum, { thousandths }) => sum + thousandths / 1000, 0)
    expect(told('steps')).toContain(`${dug.toFixed(2)} cu ft to dig in all, 10.67 of them`)
  })

  test('is a post beside the stairs by its side, its place level and along the slope', () => {
    // down the front of the plan the left hand points right; the second flight's sides are the third and the fourth
    const [table] = makeSheets(high, ['stairs']).flatMap(({ blocks }) =>
      blocks.flatMap((block) =>
        block.kind === 'table' && block.table.id === 'stair-guard' ? [block.table] : [],
      ),
    )
    expect(table?.rows.map(({ number }) => number)).toEqual([
      '1, left side',
      '2, right side',
      '3, left side',
      '4, right side',
    ])
    // 60-1/2 − 1-3/4 = 4'-10 3/4" level × 12.829 ÷ 10.25 = 73.53 in
    expect(table?.rows[2]?.posts).toContain(`SG3-2 4'-10 3/4" (6'-1 17/32")`)
    // 9 of 1-1/2 in in 53-1/2 in level leave 4 in: the first begins 4 × 12.829 ÷ 10.25 = 5.006 in down the slope
    expect(table?.rows[2]?.marks).toMatch(/^5", /)
    expect(table?.rows[2]?.rail).toMatch(/^(0|\d.*)"$/)
  })

  test('is a hold-down for each post, on the cards as in the order', () => {
    const counts = [...told('inspections').matchAll(/(\d+) hold-downs, one at the upper bolt/g)]
    const bought = high.estimate.takeoff.goods.find(({ sku }) => sku === 'guard-hold-down')
    expect(counts.reduce((sum, [, count]) => sum + Number(count), 0)).toBe((bought?.thousandths ?? 0) / 1000)
  })
})

describe('stairs with a landing on the drawings', () => {
  // 14 risers, 7 to a flight: the landing lies 7 × 7.714 in = 4'-6" over level ground
  const high = paperSource({
    ...smallJob(),
    size: { width: '16 ft', depth: '12 ft', height: '9 ft' },
    stairs: { kind: 'landing', width: '4 ft' },
    guard: { where: 'where needed' },
  })
  const drawing = (id: 'framing' | 'section') =>
    makeSheets(high, [id]).flatMap(({ blocks }) =>
      blocks.flatMap((block) => (block.kind === 'drawing' ? block.drawing.primitives : [])),
    )

  test('have their flights by number and the landing by size and height on the plan', () => {
    const words = drawing('framing').flatMap((p) =>
      p.kind === 'text' && p.layer === 'stairs' ? [p.text] : [],
    )
    expect(words).toEqual(expect.arrayContaining(['flight 1, down 7', 'flight 2, down 7', `4'-6" up`]))
    expect(words.some((text) => text.startsWith('landing ') && text.endsWith(`× 4'-0"`))).toBe(true)
  })

  test('have the landing’s height in the section', () => {
    const figures = drawing('section').flatMap((p) => (p.kind === 'dimension' ? [p.text] : []))
    expect(figures).toContain(`4'-6"`)
  })

  test('tell the openings of level bays from those beside the stairs', () => {
    const told = JSON.stringify(makeSheets(high, ['details']))
    expect(told.slice(told.indexOf('Top of the guard'), told.indexOf('Top of the guard') + 220)).toMatch(
      /openings of [^,]* at most(?: \([^)]*\))?, openings beside the stairs of /,
    )
  })
})
