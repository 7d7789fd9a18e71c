import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import { type JobStatement, setField } from '../../../core/job/index.ts'

const PLAIN: JobStatement = { size: { width: '16 ft', depth: '12 ft', height: '42 in' } }

/** Faults of the plain deck with some of its fields otherwise, each with the field at which it is told. */
function faultsOf(fields: Readonly<Record<string, string | number>>) {
  const statement = Object.entries(fields).reduce((job, [path, value]) => setField(job, path, value), PLAIN)
  const made = design(statement)
  return made.ok ? [] : made.error.map(({ path, message, fix }) => ({ path, message, fix }))
}

/** Faults with their field at the front. */
const told = (fields: Readonly<Record<string, string | number>>) =>
  faultsOf(fields).map(({ path, message }) => `${path}: ${message}`)

describe('an outline', () => {
  it('whose edges cross is told with the two edges', () => {
    expect(faultsOf({ 'shape.outline': "0, 0; 16', 12'; 16', 0; 0, 12'" })).toEqual([
      {
        path: 'shape.outline',
        message: 'edges 1 and 3 cross, touch or fold back on each other',
        fix: 'name the corners in their order around the deck',
      },
    ])
  })

  it('with an edge under a foot is told with the edge and its length', () => {
    expect(told({ 'shape.outline': "0, 0; 16', 0; 16', 12'; 8', 12'; 8', 11' 6\"; 0, 11' 6\"" })[0]).toBe(
      'shape.outline: edge 4 is only 6" long',
    )
  })

  it('that begins off the wall is told by how much', () => {
    expect(told({ 'shape.outline': "0, 1'; 16', 1'; 16', 12'; 0, 12'" })).toContain(
      'shape.outline: y is measured from the wall, and the corner nearest to it is at 1\'-0"',
    )
  })
})

describe('openings', () => {
  it('less than a foot from an edge are told, and those a foot from it are framed', () => {
    expect(told({ 'shape.openings': "8', 11 in, 3', 3'" })).toEqual([
      'shape.openings: opening 1 lies less than 1\'-0" from an edge, from where two parts meet, or outside of the deck',
    ])
    expect(told({ 'shape.openings': "8', 12 in, 3', 3'" })).toEqual([])
  })

  it('less than a foot from each other, and over a beam, are told', () => {
    expect(told({ 'shape.openings': "4', 3', 2', 2'; 6' 11\", 3', 2', 2'" })).toEqual([
      'shape.openings: opening 2 lies less than 1\'-0" from opening 1',
    ])
    // the front beam 24 in behind the rim lies 10 ft out
    expect(told({ 'shape.openings': "8', 9', 3', 2'", 'frame.beams.front.setback': '24 in' })).toEqual([
      'shape.openings: opening 1 lies over the front beam',
    ])
    // a flush beam 8 ft out stands in the place of headers and joists
    const flush = { 'shape.middleBeams': '8 ft flush', 'size.depth': '16 ft' }
    expect(told({ ...flush, 'shape.openings': "8', 3', 3', 4' 3\"" })).toEqual([
      'shape.openings: opening 1 lies less than 9" from the middle beam',
    ])
    expect(told({ ...flush, 'shape.openings': "8', 3', 3', 4'" })).toEqual([])
  })
})

describe('what would carry nothing, or be carried by nothing', () => {
  it('a middle beam out of the outline is told', () => {
    expect(told({ 'shape.middleBeams': '13 ft' })).toEqual([
      'shape.middleBeams: a middle beam lies out of the outline, or has less than 4 ft in it',
    ])
  })

  it('a beam set back out of the frame, and one behind the ledger, are told', () => {
    expect(told({ 'frame.beams.front.setback': '2 in', 'frame.beams.front.plies': 3 })).toEqual([
      'frame.beams.front.setback: a beam 4 1/2" thick, centred 2" from the front rim’s outer face, stands out of the frame',
    ])
    expect(told({ 'frame.beams.front.setback': '13 ft', 'size.depth': '12 ft' })[0]).toMatch(
      /^frame\.beams\.front\.setback/,
    )
  })

  it('a part with no support is told with the joist and what it rests on', () => {
    // the tab from 12 to 16 ft along the wall is 15 in deep: its joists end at the ledger and reach no beam
    expect(
      told({
        'shape.outline': "0, 0; 16', 0; 16', 1' 3\"; 12', 1' 3\"; 12', 12'; 0, 12'",
        'frame.beams.front.setback': '24 in',
      }).some((fault) => /^shape\.outline: the joist .* would rest on one support alone/.test(fault)),
    ).toBe(true)
  })

  it('posts in the air, of no length under so low a deck, are told at its height', () => {
    // 14 − 1 − 9 1/4 − 9 1/4 − 4 − 1 in: the beam lies in the ground
    const [fault] = faultsOf({
      'size.height': '14 in',
      'frame.joists.size': '2x10',
      'frame.beams.front.size': '2x10',
    })
    expect(fault?.path).toBe('size.height')
    // 10 1/2 in are missing, and a post that is no more than nothing: a tick more
    expect(fault?.message).toMatch(/post 1 would have no length, for the beam would lie in or under its base/)
    expect(fault?.fix).toMatch(/^raise the deck by at least 10 17\/32"/)
  })

  it('a post moved off its beam is told', () => {
    expect(told({ 'ground.moved': '1: -2 ft' })).toEqual([
      'ground.moved: post 1 would stand past the end of its beam',
    ])
  })
})

describe('a part of a deck', () => {
  it('whose boards leave none of the ledger along a stub of wall is told with the edge', () => {
    // the part begins at x = 120; of the wall from 0, 209 to 123, 0 it keeps 3 in along x, of which the end joist laps
    // 1-1/2 and the two plies of the next edge's rim take 3 in and more
    expect(
      told({
        'shape.outline':
          '241, 244; 235, 233; 223, 231; 212, 237; 219, 204; 0, 209; 123, 0; 297, 148; 299, 201',
        'shape.walls': '6, 1',
        'shape.joists': 'along',
        'shape.zones': '120, 0, 48, 62: away',
        'frame.rimPlies': 2,
        'frame.joists.size': '2x8',
        'size.height': '60 in',
      }),
    ).toContain(
      'shape.zones: a part of the deck at edge 6 is too narrow: the boards along its edges leave no room for joists',
    )
  })
})

describe('a beam behind an edge at an angle', () => {
  it('follows the edge at its setback along the joists, mitred where it meets the next one', () => {
    // a front that falls back from 12 ft to 9 ft over the right 8 ft: 36 in 96, 20.56 degrees
    const outline = setField(PLAIN, 'shape.outline', "0, 0; 16', 0; 16', 9'; 8', 12'; 0, 12'")
    const made = design(setField(outline, 'frame.beams.front.setback', '18 in'))
    if (!made.ok) throw new Error(JSON.stringify(made.error))
    const { beams, members } = made.value.frame
    const slanting = beams.find(({ line: [a, b] }) => a.y !== b.y)
    const straight = beams.find(({ line: [a, b] }) => a.y === b.y)
    if (slanting === undefined || straight === undefined) throw new Error('no two beams')
    expect(straight.y / 32).toBe(144 - 18)
    const [from, to] = slanting.line
    expect([from.x / 32, from.y / 32]).toEqual([96, 144 - 18])
    expect([to.x / 32, to.y / 32]).toEqual([192, 108 - 18])
    // one post under both at the mitre
    expect(straight.postIds.filter((id) => slanting.postIds.includes(id))).toHaveLength(1)
    const ply = members.find(({ id }) => id === slanting.plyIds[0])
    // half of the angle at the joint, all of it at the plumb end: atan(36 ÷ 96) = 20.556 degrees
    expect(ply?.ends?.map((end) => Math.abs(end))).toEqual([1028, 2056])
  })
})
