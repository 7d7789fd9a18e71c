import { describe, expect, test } from 'vitest'
import { design } from '../../../core/estimate.ts'
import type { Design } from '../../../core/estimate-types.ts'
import { deckSection } from '../../../core/papers/drawings/upright-views.ts'
import { type Drawing, makeSheets } from '../../../core/papers/index.ts'
import { feet, inches } from '../../../core/units/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'
import { type StatedJob, smallJob, workedJob } from '../../fixtures/worked-job.ts'

const source = paperSource({ ...workedJob(), stairs: { kind: 'straight' }, guard: { where: 'where needed' } })
const drawings = (id: 'section' | 'stairs'): readonly Drawing[] =>
  makeSheets(source, [id]).flatMap(({ blocks }) =>
    blocks.flatMap((b) => (b.kind === 'drawing' ? [b.drawing] : [])),
  )

const section = drawings('section').find(({ id }) => id === 'deck-section')
if (section === undefined) throw new Error('there is a section')
const rectOf = (id: string) => {
  const found = section.primitives.find((p) => p.kind === 'rect' && p.id === id)
  if (found?.kind !== 'rect') throw new Error(`${id} is not drawn`)
  return found
}

describe('the section of the worked job', () => {
  test('has the ledger, rim, beam and post at the heights of the worked example', () => {
    // worked by hand: top of the decking 42 in, 1 in of decking, 9-1/4 in of joist, 11-1/4 in of beam
    const joistTop = inches(42 - 1)
    expect(rectOf('ledger').y).toBe(-joistTop)
    expect(rectOf('ledger').h).toBe(inches(9.25))
    expect(rectOf('beam-front-ply-1').y).toBe(-(joistTop - inches(9.25)))
    expect(rectOf('post-front-1').y).toBe(-(joistTop - inches(9.25) - inches(11.25)))
    // and the rim's outer face at the depth of 13 ft 6 in
    expect(rectOf('rim-front-1').x + rectOf('rim-front-1').w).toBe(feet(13.5))
  })

  test('goes down to the bottom of the footings, 36 in under the ground at the post', () => {
    const { footings } = source.estimate.frame
    const low = Math.max(
      ...section.primitives.flatMap((p) => (p.kind === 'rect' && p.layer === 'footings' ? [p.y + p.h] : [])),
    )
    expect(low).toBeCloseTo(inches(36) - Math.min(...footings.map(({ ground }) => ground)), 6)
  })

  test('keeps its dimensions clear of the stairs', () => {
    const stairs = section.primitives.flatMap((p) =>
      p.kind === 'rect' && p.layer === 'stairs' ? [p.x + p.w] : [],
    )
    const upright = section.primitives.flatMap((p) =>
      p.kind === 'dimension' && p.x1 === p.x2 ? [p.x1 + p.offset] : [],
    )
    expect(stairs.length).toBeGreaterThan(0)
    expect(Math.min(...upright)).toBeGreaterThan(Math.max(...stairs))
  })
})

describe('a stringer', () => {
  const [stringer] = drawings('stairs')
  const pattern = source.estimate.stairs[0]?.patterns[0]
  if (stringer === undefined || pattern === undefined) throw new Error('there is a stringer')

  test('is drawn with every notch as long as the run and as high as the rise, the uppermost shorter by what treads reach further', () => {
    const lines = stringer.primitives.flatMap((p) =>
      p.kind === 'line' ? [Math.hypot(p.x2 - p.x1, p.y2 - p.y1)] : [],
    )
    const near = (length: number): number => lines.filter((each) => Math.abs(each - length) < 1e-6).length
    // a riser's board of 1 in and the nosing, over the deck's overhang
    const { riserBoard, nosing } = source.estimate.stairs[0]?.tread ?? { riserBoard: 0, nosing: 0 }
    const top = pattern.run - (riserBoard + nosing - source.estimate.job.decking.overhang)
    expect(riserBoard).toBe(inches(1))
    expect(top).toBeLessThan(pattern.run)
    expect(near(pattern.run)).toBe(pattern.marks.length - 1)
    expect(near(top)).toBe(1)
    // each riser but the head's, and none at the foot: that one is lower by the drop
    expect(near(pattern.rise)).toBe(pattern.marks.length - 1)
    expect(near(pattern.rise - pattern.drop)).toBe(1)
  })

  test('says the running figure of each mark', () => {
    const figures = stringer.primitives.filter((p) => p.kind === 'text')
    expect(figures).toHaveLength(pattern.marks.length)
  })
})

test('a landing is seen with its frame, and its posts stand on their footings', () => {
  const high: StatedJob = {
    ...workedJob(),
    site: { frostDepth: '36 in' },
    size: { width: '18 ft', depth: '12 ft', height: '9 ft' },
    stairs: { kind: 'landing' },
  }
  const made = paperSource(high)
  const [landing] = made.estimate.stairs
  const side = makeSheets(made, ['section'])
    .flatMap(({ blocks }) => blocks.flatMap((b) => (b.kind === 'drawing' ? [b.drawing] : [])))
    .find(({ id }) => id === 'deck-side')
  const drawn = new Map(side?.primitives.flatMap((p) => (p.kind === 'rect' ? [[p.id, p]] : [])) ?? [])
  const posts = landing?.members.filter(({ role }) => role === 'landing post') ?? []
  expect(posts.length).toBeGreaterThan(0)
  for (const { id } of landing?.members.filter(({ role }) => /^landing (beam|joist)$/.test(role)) ?? [])
    expect(drawn.has(id), id).toBe(true)
  for (const post of posts) {
    const footing = landing?.footings.find(({ y }) => y > post.box.y0 && y < post.box.y1)
    const base = drawn.get(footing?.id ?? '')
    // on level ground, the datum: the lowest of the concrete lies at the footing's depth
    expect((base?.y ?? 0) + (base?.h ?? 0)).toBe(footing?.depth)
  }
})

test('the build steps speak of a guard where one is laid out, and say that there is none where none is', () => {
  const said = (of: typeof source) =>
    makeSheets(of, ['steps']).flatMap(({ blocks }) =>
      blocks.flatMap((b) => (b.kind === 'steps' ? b.items.map(({ text }) => text) : [])),
    )
  expect(said(source)).not.toContain('No guard is in this job.')
  expect(said(source).join('\n')).toMatch(
    /^Set the guard’s (posts on the stairs, then its )?rails and balusters as on their own drawing/m,
  )
  expect(said(paperSource(smallJob()))).toContain('No guard is in this job.')
})

describe('a job without stairs and guard', () => {
  test('has no sheet for them', () => {
    expect(makeSheets(paperSource(smallJob()), ['stairs'])).toEqual([])
  })
})

test('sheets of any deck are made: freestanding, wide, of an outline with corners and a clipped one', () => {
  const worked = workedJob()
  const shaped = (outline: string): StatedJob => ({
    ...worked,
    size: { height: '42 in' },
    shape: { outline },
  })
  const jobs: readonly StatedJob[] = [
    { ...smallJob(), site: { attachment: 'freestanding' } },
    shaped("0, 0; 24', 0; 24', 8'; 14', 8'; 14', 14'; 0, 14'"),
    shaped("0, 0; 20', 0; 20', 9'; 15', 14'; 0, 14'"),
  ]
  for (const job of jobs) {
    const made = design(job)
    const of: Design | null = made.ok ? made.value : null
    expect(of, JSON.stringify(made)).not.toBeNull()
    for (const { id, blocks } of makeSheets(paperSource(job, undefined, { quick: true })))
      expect(blocks.length, id).toBeGreaterThan(0)
  }
})

describe('views of a deck whose outline is not before one straight wall', () => {
  const drawn = (file: string) => {
    const deck = CATALOGUE.find((one) => one.file === file)
    const made = design(deck?.job)
    if (!made.ok) throw new Error(JSON.stringify(made.error))
    return made.value
  }
  const rects = (drawing: ReturnType<typeof deckSection>) =>
    drawing.primitives.flatMap((p) => (p.kind === 'rect' ? [p] : []))

  test('cut the wall where the ledger hangs, and show nothing that stands behind it', () => {
    const wrap = drawn('wrap-hip.json')
    const section = rects(deckSection(wrap))
    const wall = section.find(({ id }) => id === 'house-wall')
    // the wall along the front of the house stands 16 ft from the deck's rear edge
    expect((wall?.x ?? 0) + (wall?.w ?? 0)).toBe(16 * 384)
    const behind = section.filter(({ id, x, w }) => id !== 'house-wall' && x + w / 2 < 16 * 384)
    expect(behind.map(({ id }) => id)).toEqual([])
  })

  test('show over every post the beam that it carries', () => {
    for (const file of ['l-shape.json', 'wrap-hip.json', 'largest.json', 'high-stairs-landing.json']) {
      const made = drawn(file)
      const section = rects(deckSection(made))
      const shown = section.filter(({ layer }) => layer === 'posts')
      expect(shown.length).toBeGreaterThan(0)
      for (const post of shown)
        expect(
          section.some(
            (beam) =>
              beam.layer === 'beams' &&
              Math.abs(beam.y + beam.h - post.y) <= 2 &&
              beam.x < post.x + post.w &&
              beam.x + beam.w > post.x,
          ),
          `${file}, ${post.id}`,
        ).toBe(true)
    }
  })

  test('measure heights at the level that stands on the last post, outside of all that is drawn', () => {
    const made = drawn('largest.json')
    const section = deckSection(made)
    const height = section.primitives.find(({ id }) => id === 'section-height')
    // the job states its levels 60, 46 and 32 in over the ground; the farthest post along the section is the 46 in one's
    expect(height?.kind === 'dimension' && height.text).toBe(`3'-10"`)
    const first = section.primitives.find(({ id }) => id === 'section-height-first')
    expect(first?.kind === 'dimension' && first.text).toBe(`5'-0"`)
    const right = Math.max(...rects(section).map(({ x, w }) => x + w))
    expect(height?.kind === 'dimension' && height.x1 + height.offset).toBeGreaterThan(right)
  })
})

describe.each(['wrap-hip', 'largest', 'l-shape', 'two-levels'])('the section of %s', (name) => {
  test('names every beam that it shows, those beyond as such', () => {
    const made = design(CATALOGUE.find(({ file }) => file === `${name}.json`)?.job ?? {})
    if (!made.ok) throw new Error(name)
    const { primitives } = deckSection(made.value)
    const texts = primitives.flatMap((p) => (p.kind === 'text' ? [p.text] : []))
    for (const { mark, plyIds } of made.value.frame.beams) {
      const isShown = primitives.some(({ kind, id }) => kind === 'rect' && plyIds.includes(id))
      const isNamed = texts.some(
        (text) =>
          text.startsWith(`${mark}:`) || (text.endsWith(' beyond') && text.split(/, | /).includes(mark)),
      )
      expect(isNamed, mark).toBe(isShown)
    }
  })
})
