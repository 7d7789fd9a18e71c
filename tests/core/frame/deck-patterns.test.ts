import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import type { Design } from '../../../core/estimate-types.ts'
import type { JobStatement } from '../../../core/job/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { apart, corners } from '../../fixtures/shapes-apart.ts'

// Lengths and counts are worked by hand from the outlines, boards of 5-1/2 in with gaps of 1/8 in.

function designOf(statement: JobStatement): Design {
  const made = design(statement)
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value
}

function deck(name: string, decking: JobStatement = {}): Design {
  const found = CATALOGUE.find(({ file }) => file === `${name}.json`)
  if (found === undefined) throw new Error(`${name} is not in the catalogue`)
  return designOf({ ...found.job, decking: { ...(found.job.decking as JobStatement), ...decking } })
}

function boards({ frame }: Design, part: string) {
  return frame.members.filter(({ lay }) => lay?.part === part)
}

const inches = ({ length }: { readonly length: number }) => length / 32

describe('boards at 45 degrees, 16 ft by 12 ft, the cover 194 in by 144 3/4 in', () => {
  const made = deck('diagonal')
  const field = boards(made, 'field')

  it('begin in a corner with a triangle, whose long side is twice its height', () => {
    expect(field.slice(0, 3).map(inches)).toEqual([11, 22.25, 33.5])
    // its long side is the one towards the front, the near one: the far edge ends further right at the left end
    expect(field[0]?.ends).toEqual([4500, -4500])
  })

  it('are 144 3/4 × √2 + 5 1/2 in to the long points where they reach from wall to front', () => {
    // 210.207 in, up to the next 1/32
    const longest = Math.max(...field.map(inches))
    expect(longest).toBe(210.21875)
    // they run to the right and away: along the wall, and the front, the far edge ends further right
    for (const board of field.filter((one) => inches(one) === longest))
      expect(board.ends).toEqual([4500, 4500])
  })

  it('are jointed along the joist: a mitre of 45 degrees adds half of the width to both pieces', () => {
    const jointed = made.frame.runs.filter(({ kind, points }) => kind === 'decking' && points.length > 0)
    expect(jointed.length).toBeGreaterThan(10)
    for (const run of jointed) expect(run.lap).toBe(2.75 * 32)
  })

  it('cross each joist at √2 times the spacing', () => {
    const run = made.frame.runs.find(({ length, kind }) => kind === 'decking' && length === 210.21875 * 32)
    const [first = 0, second = 0] = run?.supports ?? []
    expect((second - first) / 32).toBeCloseTo(12 * Math.SQRT2, 1)
  })

  it('need joists at 12 in under 5/4 boards and at 16 in under 2x: IRC 2018 Table R507.7', () => {
    const status = (spacing: string, size: string) => {
      const frame = spaced('diagonal', spacing)
      const at = designOf({ ...statementOf('diagonal'), decking: { angle: 45, size }, frame })
      return at.checks.find(({ id }) => id === 'decking-span')?.status
    }
    expect(status('12 in', '5/4x6')).toBe('near')
    expect(status('16 in', '5/4x6')).toBe('fails')
    expect(status('16 in', '2x6')).toBe('near')
    expect(status('20 in', '2x6')).toBe('fails')
  })
})

function statementOf(name: string): JobStatement {
  return CATALOGUE.find(({ file }) => file === `${name}.json`)?.job ?? {}
}

function spaced(name: string, spacing: string): JobStatement {
  const frame = statementOf(name).frame as JobStatement
  return { ...frame, joists: { ...(frame.joists as JobStatement), spacing } }
}

describe('a border of one course, 18 ft by 12 ft', () => {
  const made = deck('picture-frame')

  it('is mitred where two of its boards meet and square at the wall', () => {
    const [left, front, right] = boards(made, 'border')
    expect([left, front, right].map((board) => board?.ends?.map(Math.abs))).toEqual([
      [0, 4500],
      [4500, 4500],
      [0, 4500],
    ])
    // 12 ft and the overhang less the wall gap; 18 ft and the overhang on both sides
    expect([left, front, right].map((board) => (board ? inches(board) : 0))).toEqual([144.75, 218, 144.75])
  })

  it('is square too, a wall gap short, where the wall ends at a corner that reaches into the deck', () => {
    // a wall on the front but for a step out of it, whose right edge goes on from the wall's end
    const stepped = designOf({
      shape: { outline: '0, 0; 120, 0; 120, 96; 53, 96; 53, 150; 0, 150', walls: '1, 3' },
      size: { height: '60 in' },
      ground: { base: '12 in' },
      decking: { border: 1, overhang: '1 in', wallGap: '1/4 in', gap: '0 in' },
    })
    // from the overhang's face, 54 in, back by a board; 96 − 1/4 in
    const starts = boards(stepped, 'border')
      .flatMap(({ plan, box }) => plan ?? [{ x: box.x0, y: box.y0 }])
      .filter(({ x, y }) => x >= 48 * 32 && x < 60 * 32 && y < 100 * 32)
      .map(({ x, y }) => `${x / 32} ${y / 32}`)
    expect(starts.sort()).toEqual(['48.5 95.75', '54 95.75'])
  })

  it('leaves the field a gap and a board less on each side of it', () => {
    expect(new Set(boards(made, 'field').map(inches))).toEqual(new Set([218 - 2 * 5.625]))
  })

  it('has a joist under the gap inside it on both sides, 4 9/16 in from the frame’s edge', () => {
    const added = made.frame.members.filter(
      ({ cause }) => cause.fields.includes('decking.border') && cause.rule.includes('stands under'),
    )
    expect(added.map(({ box }) => (box.x0 + box.x1) / 64)).toEqual([4.5625, 216 - 4.5625])
  })

  it('carries both ends of every course on those joists', () => {
    const [first] = boards(made, 'field')
    // 13 joists at 16 in and the two added ones
    expect(first?.bearings).toHaveLength(15)
  })
})

describe('a border whose gaps lie side by side, its joists along the house', () => {
  /** A part in front between two stretches of front edge, joists running past all three. */
  const withFronts = (left: number, right: number) =>
    designOf({
      shape: {
        outline: `0, 0; 120, 0; 120, ${right}; 44, ${right}; 44, 150; 13, 150; 13, ${left}; 0, ${left}`,
        joists: 'along',
      },
      size: { height: '60 in' },
      frame: { joists: { size: '2x8', spacing: 12 }, beams: { front: { setback: 6 }, rear: { setback: 6 } } },
      ground: { base: '16 in' },
      decking: { border: 2, gap: 0 },
    })
  /** Middles of the added joists that run past all of the deck, in inches from the house. */
  const added = ({ frame }: Design) =>
    frame.members
      .filter(({ box, cause }) => cause.rule.includes('stands under') && box.x1 - box.x0 > 100 * 32)
      .map(({ box }) => (box.y0 + box.y1) / 64)
      .sort((a, b) => a - b)

  // the overhang is 1 in, so gaps lie 4 1/2 in and 10 in from each edge

  it('has one joist where both gaps lie on one line', () => {
    expect(added(withFronts(96, 96))).toEqual([86, 91.5])
  })

  it('has one in the middle where two gaps are so near that each board end bears 1/2 in on it', () => {
    // from 101 in: 96 1/2 in and 91 in, the latter 1/2 in from that at 91 1/2 in
    expect(added(withFronts(96, 101))).toContain(91.25)
  })

  it('has two face to face where one would leave a board end less than 1/2 in', () => {
    // from 102 1/2 in: 98 in and 92 1/2 in, the latter 1 in from that at 91 1/2 in: they meet at 92 in
    expect(added(withFronts(96, 102.5))).toEqual([86, 91.25, 92.75, 98])
  })

  it('has one face to face with an end joist that would leave a board end less than 1/2 in', () => {
    // the end joist takes 94 1/2 in to 96 in, the gap is at 96 1/2 in
    expect(added(withFronts(96, 101))).toEqual([86, 91.25, 96.75])
  })
})

describe('a border of two courses round a corner cut off at 45 degrees', () => {
  it('is mitred by 22 1/2 degrees there, and lies on blocks under both of its gaps', () => {
    const made = deck('picture-frame-two')
    const slanting = boards(made, 'border').filter(({ ends }) => ends?.every((end) => Math.abs(end) === 2250))
    expect(slanting).toHaveLength(2)
    const blocks = made.frame.members.filter(({ id }) => id.startsWith('blocking-decking'))
    expect(blocks.length).toBeGreaterThanOrEqual(4)
    // from the front to the rear right: along the joists the far edge, towards the house, ends further right
    for (const block of blocks) expect(block.ends).toEqual([4500, 4500])
  })
})

describe('a breaker in the middle of 30 ft', () => {
  const made = deck('breaker')

  it('has a joist under the gap on both its sides, 2 13/16 in from its middle, and blocks between them', () => {
    const added = made.frame.members.filter(
      ({ cause }) => cause.fields.includes('decking.breakers') && cause.rule.includes('stands under'),
    )
    expect(added.map(({ box }) => (box.x0 + box.x1) / 64)).toEqual([180 - 2.8125, 180 + 2.8125])
    const blocks = made.frame.members.filter(({ id }) => id.startsWith('blocking-decking'))
    expect(blocks.length).toBeGreaterThanOrEqual(4)
    for (const block of blocks) expect(inches(block)).toBe(5.625 - 1.5)
  })

  it('parts each course into two, a gap short of it', () => {
    // from 4 5/8 in inside the frame’s edge to 2 3/4 + 1/8 in before the middle
    expect(new Set(boards(made, 'field').map(inches))).toEqual(new Set([180 - 2.875 - 4.625]))
    expect(boards(made, 'field')).toHaveLength(50)
  })

  it('takes a clip at each joist between two courses, and screws where a course has none beside it', () => {
    // under each half of a course 13 joists; 24 gaps between 25 courses
    const good = (sku: string) => made.takeoff.goods.find((one) => one.sku === sku)?.thousandths
    expect(good('deck-clip')).toBe(Math.ceil(24 * 26 * 1.05) * 1000)
    // first and last course at 26 joists; the front board at the same between its mitres; two sides of 12 ft 0 3/4 in, the breaker 11 ft 7 1/8 in
    const across = Math.ceil((2 * 26 + 26) * 2 * 1.05)
    const along = Math.ceil((10 + 10 + 9) * 2 * 1.05)
    expect(good('screw-deck-2-1/2')).toBe((across + along) * 1000)
  })

  it('is of grooved boards in the field and of solid ones where boards are screwed', () => {
    expect(new Set(boards(made, 'field').map(({ product }) => product.size))).toEqual(
      new Set(['5/4x6 grooved']),
    )
    for (const part of ['border', 'breaker'])
      expect(new Set(boards(made, part).map(({ product }) => product.size))).toEqual(new Set(['5/4x6']))
  })
})

describe('fascia and skirting, 16 ft by 12 ft, its joists’ underside 31 3/4 in over level ground', () => {
  const made = designOf({
    size: { width: '16 ft', depth: '12 ft', height: '42 in' },
    site: { ground: { kind: 'plane', along: { fall: 0, over: '10 ft' }, away: { fall: 0, over: '10 ft' } } },
    decking: { fascia: '1x10', skirting: 'lattice' },
  })
  const good = (sku: string) => (made.takeoff.goods.find((one) => one.sku === sku)?.thousandths ?? 0) / 1000

  it('runs the fascia along the three free edges, its mitres 3/4 in longer at each corner', () => {
    const fascia = made.frame.members.filter(({ role }) => role === 'fascia')
    expect(fascia.map(inches).sort()).toEqual([144.75, 144.75, 193.5])
    expect(fascia.map(({ ends }) => ends?.filter((end) => Math.abs(end) === 4500).length).sort()).toEqual([
      1, 1, 2,
    ])
    // flush with the joists' tops, under the decking
    for (const { box } of fascia) expect([box.z0 / 32, box.z1 / 32]).toEqual([41 - 9.25, 41])
    expect(made.takeoff.tasks.find(({ rateId }) => rateId === 'fascia')?.thousandths).toBe(
      Math.ceil((1000 * (193.5 + 2 * 144.75)) / 12),
    )
  })

  it('counts whole panels edge by edge, and their framing', () => {
    // 16 ft takes two of 8 ft, 12 ft takes two, all one panel high
    expect(good('skirt-lattice-4x8')).toBe(6)
    // rails above and below; 5 uprights in front and 4 on each side, 29 3/4 in high
    const framing = 2 * (16 + 12 + 12) + ((5 + 4 + 4) * 29.75) / 12
    expect(good('skirt-framing')).toBeCloseTo(framing, 2)
  })

  it('counts boards by the pieces of 12 ft that they are cut from, each as long as the ground asks there', () => {
    const boards = (height: string, fall: string) => {
      const { takeoff } = designOf({
        size: { width: '16 ft', depth: '12 ft', height },
        site: { ground: { kind: 'plane', along: { fall, over: '16 ft' } } },
        decking: { skirting: 'boards' },
      })
      return (takeoff.goods.find(({ sku }) => sku === 'skirt-board')?.thousandths ?? 0) / 12000
    }
    // 29 3/4 in each: 4 from 144 in; 34 along 192 in and 26 along each 144 in: 9 + 7 + 7
    expect(boards('42 in', '0 in')).toBe(9 + 7 + 7)
    // 25 3/4 in at the left, 49 3/4 in at the right: 5 and 2 from 144 in, 26 ÷ 5 and 26 ÷ 2; along the front 34 boards of
    // 25.8 to 49.8 in, 1284 in in all, of 9 pieces at the very least
    const sloped = boards('38 in', '24 in') - (6 + 13)
    expect(sloped).toBeGreaterThanOrEqual(9)
    expect(sloped).toBeLessThanOrEqual(12)
  })

  it('closes an edge that only one end of leaves open, as high as it is there', () => {
    const { takeoff } = designOf({
      size: { width: '16 ft', depth: '12 ft', height: '38 in' },
      site: { ground: { kind: 'plane', along: { fall: '60 in', over: '16 ft' } } },
      decking: { skirting: 'lattice' },
    })
    // 25 3/4 in at the left, 85 3/4 in at the right: two panels high there and along the front
    expect(takeoff.goods.find(({ sku }) => sku === 'skirt-lattice-4x8')?.thousandths).toBe(1000 * (2 + 4 + 4))
  })

  it('has neither where the job states none', () => {
    const plain = designOf({ size: { width: '16 ft', depth: '12 ft', height: '42 in' } })
    expect(plain.frame.members.some(({ role }) => role === 'fascia')).toBe(false)
    expect(plain.takeoff.goods.some(({ sku }) => sku.startsWith('skirt'))).toBe(false)
  })
})

describe('patterns that a deck has no room for', () => {
  const faultOf = (decking: JobStatement, shape: JobStatement = {}) => {
    const made = design({ size: { width: '16 ft', depth: '12 ft', height: '42 in' }, shape, decking })
    return made.ok ? null : made.error.map(({ path, message }) => [path, message])
  }

  it('are told at their field', () => {
    expect(faultOf({ breakers: '18 ft' })).toEqual([
      ['decking.breakers', `the breaker at 18'-0" lies beside the deck`],
    ])
    expect(faultOf({ breakers: '1 ft' })).toEqual([
      ['decking.breakers', `the breaker at 1'-0" leaves boards of less than 2'-0" beside it`],
    ])
    expect(faultOf({ breakers: '8 ft' }, { openings: "7', 4', 2', 2'" })).toEqual([
      ['decking.breakers', `the breaker at 8'-0" would run into opening 1`],
    ])
    expect(faultOf({ parts: '2: 45 left' })).toEqual([
      ['decking.parts', 'there is no part 2: the deck has one'],
    ])
    expect(faultOf({ border: 2 }, { outline: "0, 0; 16', 0; 16', 11'; 15', 12'; 0, 12'" })).toEqual([
      ['decking.border', 'edge 3 is too short for the mitres of a border board along it'],
    ])
    // edge 2 leaves the wall at 12.3 degrees: at 11-1/2 in inside it the inner board’s tip lies 11.5 ÷ sin 12.3° = 54 in
    // back along the wall, in the boards along edge 5
    expect(
      faultOf(
        { border: 2, gap: '1/4 in' },
        { outline: '0, 0; 56 in, 0; 120 in, 14 in; 120 in, 96 in; 0, 96 in' },
      ),
    ).toEqual([['decking.border', 'boards of the border along edges 2 and 5 would lie over each other']])
  })
})

it('no block under a slanting border stands in a joist that laps into its bay', () => {
  // a random deck: joist 9b ends 98-1/4 in out, 1/10 in past where the block between 9c and 10b would begin there
  const made = design({
    size: { height: '60 in' },
    shape: {
      outline: '0, 0; 120, 0; 120, 84.09375; 75, 100; 0, 100',
      walls: '4',
      joists: 'along',
      middleBeams: '50 in',
    },
    frame: {
      joists: { size: '2x8', spacing: 12, overMiddle: 'by stock', longest: 96 },
      rimPlies: 2,
      beams: { front: { setback: 24, posts: 2, plies: 3 }, rear: { setback: 24 } },
    },
    ground: { base: '16 in' },
    decking: { border: 2, gap: '0 in' },
  })
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  const { members } = made.value.frame
  const blocks = members.filter(({ id }) => id.startsWith('blocking-decking'))
  const lapping = members.find(({ id }) => id === 'joist-9-b')
  if (lapping === undefined) throw new Error('the deck has a joist 9b')
  for (const block of blocks) expect(apart(corners(block), corners(lapping)), block.id).toBeGreaterThan(-0.7)
})
