import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import type { Design } from '../../../core/estimate-types.ts'
import { common, type Polygon, twiceArea } from '../../../core/geometry/index.ts'
import type { JobStatement } from '../../../core/job/index.ts'

// Outlines found by tests/properties/decking.test.ts with seeds 81, 86 and 91, FC_RUNS=2500.

function deck(outline: string, more: JobStatement): JobStatement {
  return {
    size: { height: '60 in' },
    frame: {
      joists: { size: '2x8', spacing: 12 },
      beams: { front: { setback: 6, posts: 2 }, rear: { setback: 6 } },
    },
    ground: { base: '16 in' },
    ...more,
    shape: { outline, ...(more.shape as JobStatement) },
  }
}

function framed(statement: JobStatement): Design {
  const made = design(statement)
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value
}

function boardsOf({ frame }: Design) {
  const boards = frame.members.filter(({ role }) => role === 'decking')
  const shapesOf = (part: string) =>
    boards
      .filter(({ lay }) => lay?.part === part)
      .map(
        ({ plan, box: { x0, y0, x1, y1 } }): Polygon =>
          plan ?? [
            { x: x0, y: y0 },
            { x: x1, y: y0 },
            { x: x1, y: y1 },
            { x: x0, y: y1 },
          ],
      )
  return { border: shapesOf('border'), field: shapesOf('field') }
}

/** Square ticks that a board shares with others; an edge a tenth of a tick over the other along 80 in makes 256. */
function shared(board: Polygon, others: readonly Polygon[]): number {
  return common([board], others).reduce((sum, shape) => sum + Math.abs(twiceArea(shape)) / 2, 0)
}

describe('decking beside corners', () => {
  it('leaves room for a border board that reaches in at an inside corner of a wall', () => {
    const made = framed(
      deck('77, 52; 86, 60; 0, 116; 2, 55; 39, 0; 79, 40', {
        shape: { walls: '1' },
        decking: { border: 1, gap: 0 },
      }),
    )
    const { border, field } = boardsOf(made)
    expect(border).toHaveLength(5)
    for (const board of field) expect(shared(board, border)).toBeLessThan(256)
  })

  it('leaves its gap beside such a board where joists run along the house too', () => {
    const made = framed(
      deck('93, 59; 101, 68; 0, 113; 18, 44; 63, 0; 98, 40', {
        shape: { walls: '1', joists: 'along', openings: '27.40625, 66, 12, 12' },
        decking: { border: 1, gap: '1/4 in' },
      }),
    )
    const { border, field } = boardsOf(made)
    expect(border).toHaveLength(5)
    for (const board of field) expect(shared(board, border)).toBeLessThan(256)
  })

  it('does not fail on a part of the deck that its border covers whole', () => {
    const statement = deck('0, 91; 113, 0; 79, 72; 80, 91', {
      shape: { walls: '1', zones: '0, 0, 80, 81: along' },
      decking: { border: 2, gap: 0 },
    })
    expect(() => design(statement)).not.toThrow()
  })

  it('allows no joint where only a strip of the board goes on, past the joist that lies under the rest', () => {
    // by hand: at a step 74 in deep a course from 68 to 73-1/2 in goes on right of it as a strip 1/2 in wide, over the
    // overhang of the step; the joists there begin behind the step's rim, at 75-1/2 in
    const made = framed(
      deck('0, 0; 123.5, 0; 123.5, 74; 145, 74; 145, 246; 0, 246', {
        site: { attachment: 'freestanding' },
        decking: { gap: 0 },
      }),
    )
    const stepped = made.frame.members.find(({ id }) => id === 'decking-14')
    expect(stepped?.plan?.map(({ x, y }) => [x / 32, y / 32])).toContainEqual([124.5, 73])
    const run = made.frame.runs.find(({ memberIds }) => memberIds.includes('decking-14'))
    const strip = (124.5 + 1) * 32
    expect(run?.points.filter(({ at }) => at > strip)).toEqual([])
    expect(run?.refused.filter(({ at, why }) => at > strip && why.includes('would hang'))).not.toEqual([])
    // courses further in lie on those joists with their whole width, and take turns at them
    const whole = made.frame.runs.filter(({ memberIds }) =>
      ['decking-20', 'decking-21'].some((id) => memberIds.includes(id)),
    )
    expect(whole.flatMap(({ points }) => points.filter(({ at }) => at > strip))).not.toEqual([])
  })

  it('allows no joint over a joist at which a slanting board narrows to nothing beside the corner of a wall', () => {
    // by hand: the board from 142.75, 57.01 up to the border of the wall’s corner at 26.75 in goes on left of it as a
    // strip that is 0.07 in wide over the joist at 26.63 in, the third
    const made = framed(
      deck('0, 89; 22, 89; 22, 0; 143, 0; 143, 109; 0, 109', {
        shape: { walls: '4', levels: '52.5 in: 0, 109; 60, 109; 60, 157; 0, 157' },
        decking: { border: 1, gap: '1/4 in', angle: 15, leans: 'left' },
      }),
    )
    const narrow = made.frame.members.filter(
      ({ role, plan }) =>
        role === 'decking' && plan?.some(({ x, y }) => Math.hypot(x - 26.75 * 32, y - 93.75 * 32) < 1),
    )
    expect(narrow).toHaveLength(1)
    const run = made.frame.runs.find(({ memberIds }) => memberIds.includes(narrow[0]?.id ?? ''))
    expect(run?.points.map(({ supportId }) => supportId)).not.toContain('joist-3')
    expect(run?.refused.map(({ supportId }) => supportId)).toContain('joist-3')
  })

  it('lays no breaker along the edge of a level on whose side another one has it', () => {
    // the breaker 5 ft from the wall is the deck's; the lower level beside it begins there
    const made = framed(
      deck('0, 0; 144, 0; 144, 120; 0, 120', {
        shape: { joists: 'along', levels: '46 in: 144, 60; 144, 132; 204, 132; 204, 60' },
        frame: { joists: { spacing: 12 }, beams: { front: { setback: 14 }, rear: { setback: 14 } } },
        decking: { breakers: '5 ft', gap: 0 },
        ground: { base: '14 in' },
      }),
    )
    const breakers = made.frame.members.filter(({ lay }) => lay?.part === 'breaker')
    expect(breakers.map(({ lay }) => lay?.zone)).toEqual(['zone-1'])
  })

  it.each([
    ['67 in: 144, 60; 144, 132; 204, 132; 204, 60', '5 ft', 2],
    ['67 in: 144, 0; 144, 94; 204, 94; 204, 0', '8 ft', 1],
  ])(
    'notches a breaker past the end of a border, where a higher level of %s ends beside it',
    (levels, at, border) => {
      // the level's corner lies 60 in, or 94 in, from the wall: between the breaker's edges, 2-3/4 in from its middle
      const made = framed(
        deck('0, 0; 144, 0; 144, 120; 0, 120', {
          shape: { joists: 'along', levels },
          frame: { joists: { spacing: 12 }, beams: { front: { setback: 14 }, rear: { setback: 14 } } },
          decking: { breakers: at, border, gap: 0 },
          ground: { base: '14 in' },
        }),
      )
      const [breaker] = made.frame.members.filter(({ lay }) => lay?.part === 'breaker')
      expect(breaker?.plan?.length).toBe(6)
      expect(breaker?.ends).toBeUndefined()
      const lowest = Math.min(
        ...made.frame.members.flatMap(({ lay, box }) => (lay === undefined ? [] : [box.z1])),
      )
      const bands = made.frame.members.filter(({ lay, box }) => lay?.part === 'border' && box.z1 === lowest)
      // no border board of the deck holds a corner of the breaker, nor the middle of one of its edges
      const corners = breaker?.plan ?? []
      const places = corners.flatMap((a, i) => {
        const b = corners[(i + 1) % corners.length] ?? a
        return [a, { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }]
      })
      for (const { box, id } of bands)
        for (const { x, y } of places)
          expect(
            x > box.x0 + 1 && x < box.x1 - 1 && y > box.y0 + 1 && y < box.y1 - 1,
            `${id} ${x} ${y}`,
          ).toBe(false)
    },
  )
})
