import { describe, expect, it } from 'vitest'
import { design } from '../../../core/estimate.ts'
import type { Design } from '../../../core/estimate-types.ts'
import {
  boardDrawing,
  type Drawing,
  deckingPlan,
  framingPlan,
  type Primitive,
} from '../../../core/papers/index.ts'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { feet, inches } from '../../../core/units/index.ts'
import { estimateOf } from '../../fixtures/engine.ts'
import { type StatedJob, smallJob, workedJob } from '../../fixtures/worked-job.ts'

function designOf(statement: StatedJob): Design {
  const made = design(statement)
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value
}

const worked = designOf(workedJob())
const plan = framingPlan(worked)
const of = (drawing: Drawing, kind: Primitive['kind']) => drawing.primitives.filter((p) => p.kind === kind)
const textsOf = (drawing: Drawing, layer: string) =>
  drawing.primitives.flatMap((p) => (p.kind === 'text' && p.layer === layer ? [p.text] : []))
const dimensionsOf = (drawing: Drawing) =>
  Object.fromEntries(drawing.primitives.flatMap((p) => (p.kind === 'dimension' ? [[p.id, p.text]] : [])))

describe('the framing plan of the worked job', () => {
  it('draws every member of the frame where it stands, by its id', () => {
    for (const member of worked.frame.members.filter(({ role }) => role !== 'decking')) {
      const drawn = plan.primitives.find((p) => p.kind === 'rect' && p.id === member.id)
      const { x0, x1, y0, y1 } = member.box
      expect(drawn).toMatchObject({ x: x0, y: y0, w: x1 - x0, h: y1 - y0 })
    }
  })

  // sizes and post centres as worked by hand: 12, 98, 184, 270 in along, 24 in behind the rim's face
  it('says the whole width and depth, the post centres and the beam’s place', () => {
    expect(dimensionsOf(plan)).toEqual({
      'size.width': '23\'-6"',
      'size.depth': '13\'-6"',
      'post-spacing-1': '1\'-0"',
      'post-spacing-2': '7\'-2"',
      'post-spacing-3': '7\'-2"',
      'post-spacing-4': '7\'-2"',
      'post-spacing-5': '1\'-0"',
      'beam-place-1': '11\'-6"',
      'beam-place-2': '2\'-0"',
    })
  })

  it('numbers the posts as on the ground and dashes tube and base of each footing', () => {
    expect(textsOf(plan, 'posts')).toEqual(['1', '2', '3', '4'])
    const circles = plan.primitives.flatMap((p) => (p.kind === 'circle' ? [p] : []))
    expect(circles.map((circle) => circle.r * 2)).toEqual(
      [12, 20, 12, 20, 12, 20, 12, 20].map((d) => inches(d)),
    )
    expect(circles.every((circle) => circle.stroke === 'hidden')).toBe(true)
  })

  it('hatches the house above the wall line, and draws none beside a freestanding deck', () => {
    const house = plan.primitives.find((p) => p.kind === 'rect' && p.fill === 'house')
    expect(house).toMatchObject({ y: -inches(14), h: inches(14) })
    const free = framingPlan(designOf(smallJob('12 ft', { site: { attachment: 'freestanding' } })))
    expect(free.primitives.some((p) => p.kind === 'rect' && p.fill === 'house')).toBe(false)
    expect(dimensionsOf(free)).toHaveProperty('beam-place-3')
  })

  it('has an extent that holds all of it', () => {
    for (const p of plan.primitives) {
      if (p.kind !== 'rect') continue
      expect(p.x).toBeGreaterThanOrEqual(plan.x0)
      expect(p.y + p.h).toBeLessThanOrEqual(plan.y1)
    }
    expect(plan.x0).toBeLessThan(0)
    expect(plan.x1).toBeGreaterThan(feet(23.5))
  })

  it('strokes no joints before there is a cutting plan', () => {
    expect(of(plan, 'joint')).toEqual([])
  })
})

describe('joints and boards', () => {
  const estimate = estimateOf(workedJob(), SAMPLE_BOOK)
  const joints = estimate.plans.flatMap(({ plan: cut }) => cut.joints)

  it('stroke every framing joint across its member, and every joint of a course on the decking plan', () => {
    const framing = of(framingPlan(estimate, estimate.plans), 'joint')
    const decking = of(deckingPlan(estimate, estimate.plans), 'joint')
    expect(framing.length + decking.length).toBe(joints.length)
    const members = new Map(estimate.frame.members.map((member) => [member.id, member]))
    for (const stroke of [...framing, ...decking]) {
      const member = members.get(stroke.id)
      if (stroke.kind !== 'joint' || member === undefined) throw new Error('a joint without a member')
      expect(stroke.x).toBeGreaterThan(member.box.x0)
      expect(stroke.x).toBeLessThan(member.box.x1)
      expect(stroke.half * 2).toBe(member.box.y1 - member.box.y0)
    }
  })

  it('stroke a board at an angle no farther than it is wide', () => {
    const joint = { at: feet(4), memberId: '' }
    const diagonal = designOf({ ...workedJob(), decking: { angle: 30 } })
    const boards = diagonal.frame.members.filter(
      ({ role, plan: shape, length }) => role === 'decking' && shape && length > feet(8),
    )
    expect(boards.length).toBeGreaterThan(5)
    const joints = boards.map(({ id }) => ({ ...joint, memberId: id }))
    const plans = [{ plan: { joints } }] as unknown as Parameters<typeof deckingPlan>[1]
    for (const stroke of of(deckingPlan(diagonal, plans), 'joint'))
      expect(stroke.kind === 'joint' && stroke.half * 2).toBe(inches(5.5))
  })

  it('draw every board of a plan with every piece at its place', () => {
    const first = estimate.plans[0]
    if (first === undefined) throw new Error('no plan')
    const drawing = boardDrawing('2x10', first.plan)
    const cuts = first.plan.boards.flatMap((board) => board.cuts)
    const pieces = drawing.primitives.flatMap((p) => (p.kind === 'rect' && p.fill === 'wood' ? [p] : []))
    expect(pieces.map(({ id, x, w }) => ({ id, x, w }))).toEqual(
      cuts.map((cut) => ({ id: cut.pieceId, x: cut.from, w: cut.to - cut.from })),
    )
  })
})
