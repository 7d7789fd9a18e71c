import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import { CATALOGUE, type CatalogueDeck } from '../../fixtures/catalogue.ts'

// Beams of decks that are no rectangles, by lines drawn across the outline an inch apart; and every board of diagonal and
// bordered decking, by hand or by lines walked along each course. All in inches, from corners and what the jobs state.

type Place = readonly [number, number]

function designOf({ job, file }: CatalogueDeck) {
  const made = design(job)
  if (!made.ok) throw new Error(`${file}: ${JSON.stringify(made.error)}`)
  return made.value
}

function deckOf(file: string): CatalogueDeck {
  const found = CATALOGUE.find((one) => one.file === file)
  if (found === undefined) throw new Error(`no ${file}`)
  return found
}

interface Stated {
  readonly site?: { readonly attachment?: string }
  readonly shape?: {
    readonly outline?: string
    readonly joists?: string
    readonly walls?: string
    readonly zones?: string
    readonly seams?: string
    readonly levelBeams?: string
    readonly middleBeams?: string
  }
}

const stated = ({ job }: CatalogueDeck): Stated => job as Stated

/** Framed one way all over, each level on beams of its own, no edge leaning more along the joists than across them. */
const shaped = CATALOGUE.filter((deck) => {
  const { zones, seams, levelBeams, joists, outline } = stated(deck).shape ?? {}
  const plain = [zones, seams, levelBeams].every((text) => text === undefined) && joists !== 'along'
  return plain && (outline !== undefined || deck.further !== undefined) && deck.file !== 'angled-side.json'
})

/** How many ends of joists each line across an outline asks to be borne by a beam: those at no wall. */
function endsOnBeams(corners: readonly Place[], walls: ReadonlySet<number>): number {
  const xs = corners.map(([x]) => x)
  let ends = 0
  for (let x = Math.min(...xs) + 0.5; x < Math.max(...xs); x += 1)
    corners.forEach(([ax], i) => {
      const [bx] = corners[(i + 1) % corners.length] as Place
      if (ax > x !== bx > x && !walls.has(i + 1)) ends += 1
    })
  return ends
}

describe.each(shaped)('the beams of $file', (deck) => {
  it('are together as long across the joists as the joists that end on them are wide apart', () => {
    const { site, shape = {} } = stated(deck)
    const free = site?.attachment === 'freestanding'
    const walls = new Set(free ? [] : (shape.walls ?? '1').split(',').map(Number))
    const middle = (shape.middleBeams ?? '').split(';').filter((text) => text.trim() !== '').length
    const width = Math.max(...deck.corners.map(([x]) => x))
    const expected =
      endsOnBeams(deck.corners, walls) +
      (deck.further ?? []).reduce((sum, own) => sum + endsOnBeams(own, new Set()), 0) +
      middle * width
    const { beams, members } = designOf(deck).frame
    const across = beams.reduce((sum, { line: [a, b] }) => sum + Math.abs(b.x - a.x) / 32, 0)
    expect(beams.length).toBeGreaterThan(0)
    expect(Math.abs(across - expected)).toBeLessThanOrEqual(beams.length)
    // along itself no ply is shorter than its beam, nor longer by more than its mitres
    for (const { plyIds, line, length } of beams) {
      const reach = Math.hypot(line[1].x - line[0].x, line[1].y - line[0].y)
      expect(Math.abs(length - reach)).toBeLessThanOrEqual(1)
      const plies = members.filter(({ id }) => plyIds.includes(id))
      const mean = plies.reduce((sum, ply) => sum + ply.length, 0) / plies.length / 32
      expect(Math.abs(mean - length / 32)).toBeLessThanOrEqual(3.5)
    }
  })
})

it('the beam of a deck with an angled side ends where its near face meets the side, by hand', () => {
  const deck = deckOf('angled-side.json')
  const [a, b] = [deck.corners[1], deck.corners[2]] as [Place, Place]
  const { front } = (deck.job as { frame: { beams: { front: { setback: string; plies: number } } } }).frame
    .beams
  // square at its end, it reaches the slanting edge with the corner where the deck is narrower
  const near = b[1] - Number.parseFloat(front.setback) - (1.5 * front.plies) / 2
  const ends = a[0] + ((b[0] - a[0]) * (near - a[1])) / (b[1] - a[1])
  const [beam] = designOf(deck).frame.beams
  expect(Math.abs((beam?.length ?? 0) / 32 - ends)).toBeLessThan(0.1)
})

const [BOARD, GAP, OVER, OFF_WALL] = [5.5, 1 / 8, 1, 1 / 4]

/** Lengths to the long points of courses at an angle over a rectangle, walked along each in steps across it. */
function courses(wide: number, deep: number, degrees: number): readonly number[] {
  const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)]
  // u across the boards from the lowest corner on the right, v along them
  const extent = wide * sin + deep * cos
  const found: number[] = []
  for (let start = 0; start < extent - 1e-9; start += BOARD + GAP) {
    const stop = Math.min(extent, start + BOARD)
    let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]
    for (let i = 0; i <= 400; i += 1) {
      const u = start + ((stop - start) * i) / 400
      // the point (x, y) = (wide, 0) + v (cos, sin) + u (−sin, cos)
      const atX = [(u * sin - wide) / cos, (u * sin) / cos]
      const atY = [(-u * cos) / sin, (deep - u * cos) / sin]
      const [from, to] = [Math.max(atX[0] ?? 0, atY[0] ?? 0), Math.min(atX[1] ?? 0, atY[1] ?? 0)]
      if (from < to) [low, high] = [Math.min(low, from), Math.max(high, to)]
    }
    if (high - low >= 1 && stop - start >= 1 / 4) found.push(high - low)
  }
  return found
}

function boards(file: string, part: string) {
  return designOf(deckOf(file))
    .frame.members.filter(({ lay }) => lay?.part === part)
    .map(({ length }) => length / 32)
    .sort((a, b) => a - b)
}

function sum(lengths: readonly number[]): number {
  return lengths.reduce((all, one) => all + one, 0)
}

describe('boards at an angle', () => {
  it.each([
    // past three sides by the overhang, a gap off the wall; past all four where the deck stands free
    ['diagonal.json', 192 + 2 * OVER, 144 + OVER - OFF_WALL, 45],
    ['diagonal-left.json', 168 + 2 * OVER, 144 + 2 * OVER, 30],
    // inside a border on all four sides
    ['diagonal-framed.json', 168 + 2 * OVER - 2 * (BOARD + GAP), 168 + 2 * OVER - 2 * (BOARD + GAP), 45],
  ])('of %s are as many and as long as they are walked', (file, wide, deep, degrees) => {
    const expected = courses(wide, deep, degrees).toSorted((a, b) => a - b)
    const laid = boards(file, 'field')
    expect(laid).toHaveLength(expected.length)
    for (const [i, length] of laid.entries())
      expect(Math.abs(length - (expected[i] ?? 0)), `${i}`).toBeLessThan(0.15)
    expect(Math.abs(sum(laid) - sum(expected))).toBeLessThan(0.1 * laid.length)
  })
})

describe('boards in a border', () => {
  it('of a rectangle on a wall: three sides, and the courses between them', () => {
    // 18 ft by 12 ft: the front 218 in, the sides 145 − 1/4; inside 218 − 2 × 5-5/8 by 144-3/4 − 5-5/8
    expect(boards('picture-frame.json', 'border')).toEqual([144.75, 144.75, 218])
    const count = Math.ceil((144.75 - 5.625 + GAP) / 5.625)
    expect(count).toBe(25)
    expect(boards('picture-frame.json', 'field')).toEqual(Array(count).fill(206.75))
  })

  it('of a free square laid diagonally: four sides', () => {
    expect(boards('diagonal-framed.json', 'border')).toEqual([170, 170, 170, 170])
  })

  it('with a breaker: half of each course on either side of it', () => {
    // 30 ft by 12 ft; the breaker’s middle at 180 in, 2-3/4 in and a gap on either side of it; the border 5-5/8 in
    expect(boards('breaker.json', 'border')).toEqual([144.75, 144.75, 362])
    expect(boards('breaker.json', 'breaker')).toEqual([139.125])
    expect(boards('breaker.json', 'field')).toEqual(Array(50).fill(172.5))
  })

  it('round the step of an L: five sides', () => {
    // 20 ft by 8 ft and 12 ft by 14 ft: right 97 − 1/4, front 146, left 169 − 1/4; at the inside corner the long point
    // lies a board further in: the wing's front 241 − 145 and its side 169 − 97, 5-1/2 in more each
    expect(boards('picture-frame-l.json', 'border')).toEqual([72 + BOARD, 96.75, 96 + BOARD, 146, 168.75])
    // rows: to the step's border every course is 242 − 2 × 5-5/8 long, beyond it 146 − 2 × 5-5/8
    const field = boards('picture-frame-l.json', 'field')
    // 163-1/8 in from the gap at the wall to the border: 29 courses and 28 gaps cover 163, and a gap is left
    const rows = 29
    expect(field).toHaveLength(rows)
    expect(new Set(field)).toEqual(new Set([134.75, 230.75]))
    // the step's border begins 97 − 5-5/8 in from the wall: rows that end before it, and the one that it cuts into
    const long = field.filter((length) => length === 230.75).length
    expect(Math.abs(long - (97 - 5.625 - OFF_WALL) / 5.625)).toBeLessThanOrEqual(1)
  })

  it('of two courses at a clipped corner: eight boards', () => {
    // by hand, the outer course: 20 ft by 14 ft clipped by 4 ft; at a corner of 45 degrees an edge an inch further out
    // is tan 22.5° longer at that end
    const tan = Math.tan(Math.PI / 8)
    const outer = [120 + tan - OFF_WALL, Math.hypot(48, 48) + 2 * tan, 192 + 1 + tan, 168 + 1 - OFF_WALL]
    // a course further in each edge is 5-5/8 in less at a square corner and 5-5/8 × tan at the blunt one
    const inner = [
      120 - 4.625 * tan - OFF_WALL,
      Math.hypot(48, 48) - 2 * 4.625 * tan,
      192 - 4.625 - 4.625 * tan,
      168 - 4.625 - OFF_WALL,
    ]
    const expected = [...outer, ...inner].toSorted((a, b) => a - b)
    const laid = boards('picture-frame-two.json', 'border')
    expect(laid).toHaveLength(8)
    for (const [i, length] of laid.entries())
      expect(Math.abs(length - (expected[i] ?? 0)), `${i}`).toBeLessThan(1 / 16)
  })
})
