import { describe, expect, test } from 'vitest'
import { design } from '../../../core/design.ts'
import { type Drawing, framingPlan, type Primitive } from '../../../core/papers/index.ts'
import { feet, inches } from '../../../core/units/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { type StatedJob, workedJob } from '../../fixtures/worked-job.ts'

interface Box {
  readonly x0: number
  readonly x1: number
  readonly y0: number
  readonly y1: number
}

const L_SHAPE = "0, 0; 24', 0; 24', 8'; 14', 8'; 14', 14'; 0, 14'"
// beside stairs that turn past its clipped corner
const BESIDE_STAIRS = "0,0; 22',0; 22',9'; 18',13'; 8',13'; 8',16'; 0,16'"
const CLIPPED = "0, 0; 20', 0; 20', 9'; 15', 14'; 0, 14'"

function planOf(outline: string, edge: number, kind = 'straight'): Drawing {
  const job: StatedJob = {
    ...workedJob(),
    size: { height: '42 in' },
    shape: { outline },
    stairs: { kind, edge, width: '4 ft' },
  }
  const made = design(job)
  if (!made.ok) throw new Error(`edge ${edge}: ${JSON.stringify(made.error)}`)
  return framingPlan(made.value)
}

/** What a dimension's line and figures take up, a letter 5 in high on the deck; witness lines are not counted. */
function roomOf(p: Primitive): Box | null {
  const half = inches(5)
  if (p.kind === 'dimension') {
    const upright = p.x1 === p.x2
    const [dx, dy] = upright ? [p.offset, 0] : [0, p.offset]
    return upright
      ? { x0: p.x1 + dx - half, x1: p.x1 + dx + 1, y0: Math.min(p.y1, p.y2), y1: Math.max(p.y1, p.y2) }
      : { x0: Math.min(p.x1, p.x2), x1: Math.max(p.x1, p.x2), y0: p.y1 + dy - half, y1: p.y1 + dy + 1 }
  }
  if (p.kind === 'text' && p.layer === 'dimensions') {
    const wide = (p.text.length * inches(3)) / 2
    return { x0: p.x - wide, x1: p.x + wide, y0: p.y - half / 2, y1: p.y + half / 2 }
  }
  return null
}

function stairsOf({ primitives }: Drawing): readonly Box[] {
  return primitives.flatMap((p) => {
    if (p.layer !== 'stairs') return []
    if (p.kind === 'rect') return [{ x0: p.x, x1: p.x + p.w, y0: p.y, y1: p.y + p.h }]
    if (p.kind !== 'line') return []
    const [x0, x1] = [Math.min(p.x1, p.x2), Math.max(p.x1, p.x2)]
    return [{ x0, x1, y0: Math.min(p.y1, p.y2), y1: Math.max(p.y1, p.y2) }]
  })
}

const meet = (a: Box, b: Box) => a.x0 < b.x1 && a.x1 > b.x0 && a.y0 < b.y1 && a.y1 > b.y0

describe('the dimensions of an outline with stairs', () => {
  const cases = [
    ...[2, 3, 4, 5, 6].map((edge) => ['L', L_SHAPE, edge] as const),
    ...[2, 4, 5].map((edge) => ['clipped', CLIPPED, edge] as const),
  ]
  test.each(cases)('run across no stair of the %s-shape at edge %#', (_, outline, edge) => {
    const plan = planOf(outline, edge)
    const stairs = stairsOf(plan)
    expect(stairs.length).toBeGreaterThan(5)
    const across = plan.primitives.flatMap((p) => {
      const room = roomOf(p)
      return room && stairs.some((stair) => meet(room, stair)) ? [p.id] : []
    })
    expect(across).toEqual([])
  })

  test('never lie on one another', () => {
    for (const edge of [2, 3, 4, 5, 6]) {
      const rooms = planOf(L_SHAPE, edge).primitives.flatMap((p) => {
        const room = p.id.startsWith('post-spacing') ? null : roomOf(p)
        return room ? [{ id: p.id, room }] : []
      })
      const pairs = rooms.flatMap((a, i) => rooms.slice(i + 1).map((b) => [a, b] as const))
      const level = ({ room }: { room: Box }) => room.x1 - room.x0 > room.y1 - room.y0
      const over = pairs.filter(([a, b]) => level(a) === level(b) && meet(a.room, b.room))
      expect(over.map(([a, b]) => `${a.id} on ${b.id}`)).toEqual([])
    }
  })

  test('stay where they were beside edges without stairs', () => {
    const at = (plan: Drawing, id: string) =>
      plan.primitives.find((p) => p.id === id && p.kind === 'dimension')
    // edge 2 is the right side: stairs in front leave it 15 in out, the overhang of 1 in and 14 in; in front the posts of
    // the beam stand there, and the edge 14 in farther out
    expect(at(planOf(L_SHAPE, 5), 'edge-2')).toMatchObject({ x1: feet(24), offset: inches(15) })
    expect(at(planOf(L_SHAPE, 2), 'edge-5')).toMatchObject({ y1: feet(14), offset: inches(29) })
  })
})

// it floated 8 ft away, for a stair beside the edge's end counted as in the way of all of it
test('the length of a clipped corner stands beside it, where stairs turn past its end', () => {
  const { primitives } = planOf(BESIDE_STAIRS, 2, 'landing right')
  const words = primitives.find((p) => p.kind === 'text' && p.id === 'edge-3')
  if (words?.kind !== 'text') throw new Error('the clipped corner has no length')
  // from 22 ft, 9 ft to 18 ft, 13 ft: √32 = 5.657 ft
  expect(words.text).toBe(`5'-7 7/8"`)
  expect(Math.hypot(words.x - feet(20), words.y - feet(11))).toBeLessThan(feet(4))
})

/** From where to where dimensions measure along an axis. */
const spansOf = ({ primitives }: Drawing, axis: 'x' | 'y') =>
  primitives.flatMap((p) => {
    if (p.kind !== 'dimension') return []
    const isLevel = p.y1 === p.y2
    return isLevel === (axis === 'x') ? [isLevel ? `${p.x1} ${p.x2}` : `${p.y1} ${p.y2}`] : []
  })

test('an outline whose edges run its whole width and depth says each of them once', () => {
  const plan = planOf("0, 0; 18', 0; 18', 14'; 0, 14'", 3)
  expect(spansOf(plan, 'x').filter((span) => span === `0 ${feet(18)}`)).toHaveLength(1)
  expect(spansOf(plan, 'y').filter((span) => span === `0 ${feet(14)}`)).toHaveLength(1)
})

test('the posts of a beam are measured outside the edge that it follows, from end to end', () => {
  const { primitives } = planOf(L_SHAPE, 2)
  const chain = primitives.flatMap((p) =>
    p.kind === 'dimension' && p.id.startsWith('post-spacing-edge-5') ? [p] : [],
  )
  expect(chain.length).toBeGreaterThan(2)
  for (const p of chain) expect(p).toMatchObject({ y1: feet(14), y2: feet(14), offset: inches(15) })
  expect(Math.min(...chain.map(({ x1 }) => x1))).toBe(0)
  expect(Math.max(...chain.map(({ x2 }) => x2))).toBe(feet(14))
})

test('each beam’s distance behind its edge is said, and is the one that the job states', () => {
  const texts = planOf(L_SHAPE, 2).primitives.flatMap((p) =>
    p.kind === 'dimension' && p.id.startsWith('beam-place') ? [p.text] : [],
  )
  // the worked job states 24 in for the front beams
  expect(texts).toEqual([`2'-0"`, `2'-0"`])
})

test('three levels are dimensioned outside of all of them but for their beams’ posts and places', () => {
  const deck = CATALOGUE.find(({ file }) => file === 'three-levels.json')
  const made = design(deck?.job ?? {})
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  const plan = framingPlan(made.value)
  const boxes = made.value.layout.levels.map(({ outline }) => ({
    x0: Math.min(...outline.map(({ x }) => x)),
    x1: Math.max(...outline.map(({ x }) => x)),
    y0: Math.min(...outline.map(({ y }) => y)),
    y1: Math.max(...outline.map(({ y }) => y)),
  }))
  expect(boxes).toHaveLength(3)
  const inside = plan.primitives.flatMap((p) => {
    const room = /^(post-spacing-beam|beam-place)/.test(p.id) ? null : roomOf(p)
    return room && boxes.some((box) => meet(room, box)) ? [p.id] : []
  })
  expect(inside).toEqual([])
})
