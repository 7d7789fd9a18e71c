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
  // 9 ft in 14 risers: 7.714 in, to the nearest 1/16 in 7-11/16
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
    expect(figures).toContain('7 11/16"')
    const words = JSON.stringify(details)
    expect(words.match(/14 risers/g)).toHaveLength(1)
    expect(words).not.toContain('23/32')
  })

  test('are looked at once more on the last card, which says nothing of stairs where none are built', () => {
    const line = 'Stairs: risers equal within 3/8 in'
    expect(JSON.stringify(sheet('inspections'))).toContain(line)
    const [bare] = makeSheets(paperSource(smallJob()), ['inspections'])
    expect(JSON.stringify(bare)).not.toContain(line)
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
      /openings of [^,]* at most, openings beside the stairs of /,
    )
  })
})
