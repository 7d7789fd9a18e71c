import { expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import { apart, corners } from '../../fixtures/shapes-apart.ts'

it('fascia of a level ends where a lower level’s boards begin, whose own begins at the higher one’s rim', () => {
  // the lower level's boards reach 1 in past its side at 60 in, which runs from its corner at 96 in to 144 in
  const made = design({
    shape: {
      outline: '0, 0; 120, 0; 120, 96; 0, 96',
      levels: '52.5 in: 0, 96; 60, 96; 60, 144; 0, 144',
    },
    size: { height: '60 in' },
    frame: { joists: { size: '2x8', spacing: 12 }, beams: { front: { setback: 6 }, rear: { setback: 6 } } },
    decking: { fascia: '1x10' },
    ground: { base: '16 in' },
  })
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  const boards = made.value.frame.members.filter(({ role }) => role === 'fascia')
  const place = ({ box }: (typeof boards)[number]) => [box.x0, box.x1, box.y0, box.y1].map((at) => at / 32)
  const front = boards.find(({ box }) => box.y0 === 96 * 32 && box.x1 > 100 * 32)
  const side = boards.find(({ box }) => box.x0 === 60 * 32 && box.y1 > 140 * 32)
  if (front === undefined || side === undefined) throw new Error('a fascia is missing')
  // 3/4 in thick: both are mitred where their own level's corner is
  expect(place(front)).toEqual([61, 120.75, 96, 96.75])
  expect(place(side)).toEqual([60, 60.75, 96, 144.75])
})

it('fascia along a slanting edge ends before a lower level’s boards at its far corner', () => {
  // the edge from 0, 82 to 14.09, 96 ends at the lower level’s rim at 96 in, whose boards begin at 95 in; a board square
  // at its end would reach 3/4 in × cos 45° = 0.53 in past its line
  const made = design({
    shape: {
      outline: '0, 14; 22, 14; 22, 0; 120, 0; 120, 96; 14.09375, 96; 0, 82',
      walls: '7',
      levels: '52.5 in: 0, 96; 60, 96; 60, 144; 0, 144',
    },
    size: { height: '60 in' },
    frame: {
      joists: { size: '2x8', spacing: 12, longest: 96 },
      beams: { front: { setback: 6, posts: 2 }, rear: { setback: 6 } },
    },
    decking: { fascia: '1x10', gap: 0 },
    ground: { base: '16 in' },
  })
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  const slanting = made.value.frame.members.find(
    ({ role, plan }) => role === 'fascia' && plan?.some(({ x, y }) => x === 0 && y === 82 * 32),
  )
  expect((slanting?.box.y1 ?? Number.NaN) / 32).toBeLessThanOrEqual(95)
  expect((slanting?.box.y1 ?? Number.NaN) / 32).toBeGreaterThan(94)
})

it('fascia beside a lower level’s that runs nearly along it is cut back until both have room', () => {
  const made = design({
    shape: {
      outline: '81, 43; 76, 57; 66, 68; 24, 72; 5, 22; 0, 10; 60, 0; 91, 36',
      walls: '8, 1',
      levels: '52.5 in: 0, 72; 60, 72; 60, 120; 0, 120',
    },
    size: { height: '60 in' },
    frame: {
      joists: { size: '2x8', spacing: 12, longest: 96 },
      beams: { front: { setback: 6, posts: 2 }, rear: { setback: 6 } },
    },
    decking: { fascia: '1x10', gap: 0 },
    ground: { base: '16 in' },
  })
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  const boards = made.value.frame.members.filter(({ role }) => role === 'fascia')
  // both rise 1-1/2 in from each other over 42 × 1-1/2 ÷ 4 = 16 in: more than the foot that was cut at most
  const pairs = boards.flatMap((a, i) => boards.slice(i + 1).map((b) => [a, b] as const))
  const meeting = pairs.filter(([a, b]) => a.box.z0 < b.box.z1 && b.box.z0 < a.box.z1)
  expect(meeting.length).toBeGreaterThan(0)
  for (const [a, b] of meeting) expect(apart(corners(a), corners(b)), `${a.id} ${b.id}`).toBeGreaterThan(-1)
})
