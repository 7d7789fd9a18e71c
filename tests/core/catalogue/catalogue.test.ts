import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import type { Design } from '../../../core/estimate-types.ts'
import type { Member } from '../../../core/frame/index.ts'
import { deckingPlan, framingPlan } from '../../../core/papers/index.ts'
import { CATALOGUE, type CatalogueDeck } from '../../fixtures/catalogue.ts'
import { inside } from './inside.ts'

// Everything expected here is reckoned from the corners in inches by this file's own geometry: areas by the trapezoid
// rule, cover and distances by points on a raster; counts are hand sums, stated with each deck.

type Place = readonly [number, number]

function designOf({ job, file }: CatalogueDeck): Design {
  const made = design(job)
  if (!made.ok) throw new Error(`${file}: ${JSON.stringify(made.error)}`)
  return made.value
}

function area(corners: readonly Place[]): number {
  let sum = 0
  corners.forEach(([x, y], i) => {
    const [nx, ny] = corners[(i + 1) % corners.length] as Place
    sum += ((nx - x) * (y + ny)) / 2
  })
  return Math.abs(sum)
}

/** Least distance of a place from the outline's edges. */
function toEdge(corners: readonly Place[], [x, y]: Place): number {
  return Math.min(
    ...corners.map(([ax, ay], i) => {
      const [bx, by] = corners[(i + 1) % corners.length] as Place
      const along = Math.max(
        0,
        Math.min(1, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / ((bx - ax) ** 2 + (by - ay) ** 2)),
      )
      return Math.hypot(x - ax - along * (bx - ax), y - ay - along * (by - ay))
    }),
  )
}

/** A member from above, in inches. */
function shape({ plan, box }: Member): readonly Place[] {
  const corners = plan ?? [
    { x: box.x0, y: box.y0 },
    { x: box.x1, y: box.y0 },
    { x: box.x1, y: box.y1 },
    { x: box.x0, y: box.y1 },
  ]
  return corners.map(({ x, y }) => [x / 32, y / 32])
}

function outlines({ corners, further = [] }: CatalogueDeck): readonly (readonly Place[])[] {
  return [corners, ...further]
}

function perimeter(corners: readonly Place[]): number {
  return corners.reduce((sum, [x, y], i) => {
    const [nx, ny] = corners[(i + 1) % corners.length] as Place
    return sum + Math.hypot(nx - x, ny - y)
  }, 0)
}

/** Places all over an outline, off the lines that things are laid out on. */
function raster({ corners, openings }: CatalogueDeck): readonly Place[] {
  const [width, depth] = [Math.max(...corners.map(([x]) => x)), Math.max(...corners.map(([, y]) => y))]
  const places: Place[] = []
  for (let x = 1.37; x < width; x += 6.1)
    for (let y = 1.19; y < depth; y += 3.7) {
      const hole = openings.some(([x0, y0, x1, y1]) => x > x0 && x < x1 && y > y0 && y < y1)
      if (!hole && inside(corners, [x, y])) places.push([x, y])
    }
  return places
}

describe.each(CATALOGUE)('the deck $file', (deck) => {
  const made = designOf(deck)
  const { frame } = made
  const of = (...roles: readonly Member['role'][]) => frame.members.filter(({ role }) => roles.includes(role))

  it('has the area that its corners make', () => {
    const whole = outlines(deck).reduce((sum, outline) => sum + area(outline), 0) / 144
    expect(whole).toBeCloseTo(deck.hand.area, 6)
    expect(made.layout.areaSquareFeet).toBeCloseTo(deck.hand.area, 6)
  })

  it('has the posts, joists and hangers that a person counts', () => {
    const { posts, joists, endJoists, hangers } = deck.hand
    const hung = frame.connectors
      .filter(({ kind }) => kind === 'joist hanger')
      .reduce((sum, { count }) => sum + count, 0)
    if (posts !== undefined) expect(frame.posts).toHaveLength(posts)
    if (joists !== undefined) expect(of('joist')).toHaveLength(joists)
    if (endJoists !== undefined) expect(of('end joist')).toHaveLength(endJoists)
    if (hangers !== undefined) expect(hung).toBe(hangers)
    const { courses, border, breakers } = deck.hand
    const laid = of('decking').map(({ lay }) => lay)
    const rows = new Set(laid.flatMap((lay) => (lay?.part === 'field' ? `${lay.zone} ${lay.row}` : [])))
    if (courses !== undefined) expect(rows.size).toBe(courses)
    if (border !== undefined) expect(laid.filter((lay) => lay?.part === 'border')).toHaveLength(border)
    if (breakers !== undefined) expect(laid.filter((lay) => lay?.part === 'breaker')).toHaveLength(breakers)
    expect(frame.footings).toHaveLength(frame.posts.length)
  })

  it('lies under one course or one gap everywhere, and under no two of one level', () => {
    const laid = of('decking')
    const courses = laid.map(shape)
    const gap = 1 / 8
    const wall = 1 / 4
    for (const place of raster(deck)) {
      const over = laid.filter((_, i) => inside(courses[i] as readonly Place[], place))
      // where a level ends against a higher one, that one's overhang lies over it
      expect(new Set(over.map(({ box }) => box.z1)).size).toBe(over.length)
      if (over.length > 0) continue
      // what no course covers is as narrow as a gap between boards, or the gap at a wall
      const near = Math.min(...courses.map((course) => toEdge(course, place)))
      expect(near, `${place}`).toBeLessThanOrEqual(Math.max(gap, wall) + 1 / 32)
    }
  })

  it('is covered by decking but for its gaps: their areas make up the whole', () => {
    const laid = of('decking').reduce((sum, course) => sum + area(shape(course)), 0)
    const length = of('decking').reduce((sum, course) => sum + course.length / 32, 0)
    const around = outlines(deck).reduce((sum, outline) => sum + perimeter(outline), 0)
    const holes = deck.openings.reduce((sum, [x0, y0, x1, y1]) => sum + (x1 - x0) * (y1 - y0), 0)
    // decking and gaps reach an inch past open edges at most, and fall 1/4 in short of walls at most
    const whole = outlines(deck).reduce((sum, outline) => sum + area(outline), 0) - holes
    const withGaps = laid + (length * 1) / 8
    expect(withGaps).toBeGreaterThan(whole - around / 4 - length / 32)
    expect(withGaps).toBeLessThan(whole + around + 8 + length / 8)
  })

  it('has a joist within half of the spacing of every place, walked across the joists', () => {
    const joists = of('joist', 'end joist', 'rim', 'ledger', 'header').map(shape)
    const across = (deck.job.shape as { joists?: string } | undefined)?.joists === 'along' ? 1 : 0
    const wrapped = made.layout.zones.length > 1
    for (const [x, y] of wrapped ? [] : raster(deck)) {
      const step = 8 + 1.5
      const reached = [-step, -step / 2, 0, step / 2, step].some((off) => {
        const place: Place = across === 0 ? [x + off, y] : [x, y + off]
        return joists.some((joist) => inside(joist, place) || toEdge(joist, place) <= step / 4)
      })
      expect(reached, `${x}, ${y}`).toBe(true)
    }
  })

  it('rests every joist on two supports, and every beam on two posts or more', () => {
    for (const joist of of('joist', 'end joist')) expect(joist.bearings.length, joist.id).toBeGreaterThan(1)
    for (const beam of frame.beams) expect(beam.postIds.length, beam.id).toBeGreaterThan(1)
  })

  it('has boards along its whole edge: rims, ledgers and end joists together are as long as it is', () => {
    const around = outlines(deck).reduce((sum, outline) => sum + perimeter(outline), 0)
    // a flush beam at an edge stands in the rim's place
    const atEdge = ({ line: [a, b] }: (typeof frame.beams)[number]) =>
      outlines(deck).some((outline) => toEdge(outline, [(a.x + b.x) / 64, (a.y + b.y) / 64]) < 3)
    const flush = frame.beams.filter((beam) => beam.flush && atEdge(beam))
    const outer = [
      ...of('rim').filter(({ id }) => id.endsWith('-1')),
      ...of('ledger'),
      ...of('beam ply').filter(({ id }) => flush.some(({ plyIds }) => plyIds.at(-1) === id)),
    ]
    const length = (members: readonly Member[]) => members.reduce((sum, one) => sum + one.length / 32, 0)
    const touching = of('end joist').reduce((sum, joist) => {
      // only the part of an end joist that lies along the edge counts
      const [a, b] = shape(joist)
      const middle = shape(joist).reduce(([sx, sy], [x, y]) => [sx + x / 4, sy + y / 4], [0, 0])
      if (a === undefined || b === undefined) return sum
      const away = joist.box.y1 - joist.box.y0 > joist.box.x1 - joist.box.x0
      const [from, to] = away
        ? [joist.box.y0 / 32, joist.box.y1 / 32]
        : [joist.box.x0 / 32, joist.box.x1 / 32]
      let along = 0
      for (let at = from + 0.25; at < to; at += 0.5) {
        const place: Place = away ? [middle[0] ?? 0, at] : [at, middle[1] ?? 0]
        if (Math.min(...outlines(deck).map((outline) => toEdge(outline, place))) < 1) along += 0.5
      }
      return sum + along
    }, 0)
    // at each corner boards cover or butt by a thickness or two
    const slack = outlines(deck).flat().length * 4
    const boarded = around - (deck.hand.boardless ?? 0)
    expect(Math.abs(length(outer) + touching - boarded)).toBeLessThanOrEqual(slack)
  })

  it('can be drawn', () => {
    for (const drawing of [framingPlan(made), deckingPlan(made)]) {
      expect(drawing.primitives.length).toBeGreaterThan(20)
      for (const p of [drawing.x0, drawing.x1, drawing.y0, drawing.y1]) expect(Number.isFinite(p)).toBe(true)
    }
  })

  it('makes the same bytes twice', () => {
    expect(JSON.stringify(designOf(deck))).toBe(JSON.stringify(made))
  })
})
