import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import { stairDetails } from '../../../core/papers/details/stair-detail.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'

const high = CATALOGUE.find(({ file }) => file === 'high-stairs-landing.json')?.job ?? {}

function stepsOf(statement: object) {
  const made = design(statement)
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value.checks.find(({ id }) => id === 'stair-steps')?.remedy ?? ''
}

describe('goings and nosings at the boards above a flight', () => {
  it('are told where they differ from those of the treads by more than the code lets them', () => {
    // two 5/4x6 and a gap of 1/8 in are 11 1/8 in; over 10 1/4 in of run they reach 7/8 in; IRC R311.7.5.2 allows 3/8 in
    expect(stepsOf(high)).toContain(
      `The landing’s boards reach 0" over the face under them: the going down from there is 11 1/8", the others 10 1/4"`,
    )
    // the deck's reach over its rim by 1 in: 1/8 in from the nosing of a tread
    expect(stepsOf(high)).not.toContain('The deck’s boards')
    expect(stepsOf({ ...high, decking: { overhang: '0 in' } })).toContain('The deck’s boards reach 0"')
  })

  it('are told with what a board in the riser takes off the nosing', () => {
    // a 5/4 board is 1 in thick: the tread, 7/8 in past the cut, ends 1/8 in behind its face
    expect(stepsOf(high)).toContain('past the board’s face the tread ends 1/8" short')
    expect(stepsOf({ ...high, stairs: { ...STAIRS, risers: 'open' } })).not.toContain('Riser boards')
  })
})

const STAIRS = { kind: 'landing', side: 'front', align: 'near', width: '4 ft' }

describe('a riser’s board in the detail', () => {
  it('stands before the plumb cut, where one length passes all stringers', () => {
    const [detail] = stairDetails(paperSource(high).estimate)
    const boards = detail?.drawing.primitives.flatMap((p) =>
      p.kind === 'rect' && p.id === 'riser' ? [p] : [],
    )
    // the lowest cut is at 0, the way down at the left: the board is 1 in thick
    expect(boards?.map(({ x, w }) => [x / 32, (x + w) / 32])).toEqual([
      [-1, 0],
      [9.25, 10.25],
    ])
  })
})
