import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import type { Estimate } from '../../../core/estimate-types.ts'
import type { JobStatement } from '../../../core/job/index.ts'
import { layWords, STRAIGHT } from '../../../core/papers/build/lay-words.ts'
import { deckingSheet } from '../../../core/papers/sheets/decking-sheet.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

function sourceOf(job: JobStatement) {
  const made = design(job)
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  // the sheet asks for the design and its cutting plans alone
  return { estimate: { ...made.value, plans: [] } as unknown as Estimate } as Parameters<
    typeof deckingSheet
  >[0]
}

function rowsOf(job: JobStatement): ReadonlyMap<string, string> {
  const sheet = deckingSheet(sourceOf(job))
  const facts = sheet.blocks.find((block) => block.kind === 'facts')
  return new Map(facts?.kind === 'facts' ? facts.rows.map(([name, value]) => [name, value]) : [])
}

function deck(file: string): JobStatement {
  return CATALOGUE.find((one) => one.file === file)?.job ?? {}
}

describe('the decking plan', () => {
  it('says how the boards are laid and held', () => {
    const rows = rowsOf(deck('breaker.json'))
    expect(rows.get('Boards')).toBe('5/4x6, grooved edges, held by hidden clips')
    expect(rows.get('Laid')).toBe(`${STRAIGHT}, in a border of one course, breakers at 15'-0"`)
  })

  it('marks no board of the field on the border round it', () => {
    const source = sourceOf(deck('picture-frame.json'))
    const drawing = deckingSheet(source).blocks.find((block) => block.kind === 'drawing')
    const boards = source.estimate.frame.members.filter(({ role }) => role === 'decking')
    const marks = drawing?.kind === 'drawing' ? drawing.drawing.primitives : []
    const fields = marks.flatMap((p) => (p.kind === 'text' && /^D\d+$/.test(p.text) ? [p] : []))
    expect(fields.length).toBeGreaterThan(20)
    for (const { id, x, y } of fields) {
      const under = boards.filter(({ box }) => box.x0 < x && box.x1 > x && box.y0 < y && box.y1 > y)
      expect(under.map((board) => board.id)).toEqual([id])
    }
  })

  it('names every board as the cutting sheet does, so that each can be found', () => {
    for (const file of ['l-shape.json', 'diagonal.json', 'picture-frame.json']) {
      const source = sourceOf(deck(file))
      const drawing = deckingSheet(source).blocks.find((block) => block.kind === 'drawing')
      const said = drawing?.kind === 'drawing' ? drawing.drawing.primitives : []
      const texts = new Map(said.flatMap((p) => (p.kind === 'text' ? [[p.id, p.text]] : [])))
      const boards = source.estimate.frame.members.filter(({ role }) => role === 'decking')
      expect(boards.length).toBeGreaterThan(10)
      for (const { id, mark } of boards) expect(texts.get(id), `${file} ${id}`).toBe(mark)
    }
  })

  it('tells parts apart that are laid each its own way', () => {
    expect(layWords(sourceOf(deck('parts-differ.json')).estimate)).toBe(
      `part 1: ${STRAIGHT}; part 2: 45° off square, leaning right`,
    )
  })

  it('names the ripped board and its width', () => {
    // 144 3/4 in of 5 5/8: 25 whole courses, and 4 1/8 in are left
    expect(rowsOf({ size: { width: '16 ft', depth: '12 ft', height: '42 in' } }).get('Ripped')).toBe(
      'D26 to 4 1/8 in',
    )
  })

  it('sets the count dry and gapped beside the count wet and tight, with the gap that opens', () => {
    // 144 3/4 in: 25.7 boards of 5 5/8 in, 26.3 of 5 1/2; a 26.3rd of 0.32 board makes two rips; 2.8 % of 5 1/2 in is 5/32
    expect(rowsOf({ size: { width: '16 ft', depth: '12 ft', height: '42 in' } }).get('Dry, or wet')).toBe(
      'Dry boards with gaps of 1/8 in: 26 courses. Wet from treatment and tight: 27, whose gaps open to about 5/32 in.',
    )
  })

  it('warns where guard posts and the joists under a border ask for the same room', () => {
    const cautions = (guard: string) =>
      deckingSheet(sourceOf({ ...deck('picture-frame.json'), guard: { where: guard } })).blocks.filter(
        ({ kind }) => kind === 'caution',
      )
    expect(cautions('all open edges')).toHaveLength(1)
    expect(cautions('none')).toHaveLength(0)
  })
})
