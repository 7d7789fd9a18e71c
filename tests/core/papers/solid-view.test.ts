import { describe, expect, test } from 'vitest'
import { design } from '../../../core/design.ts'
import type { Design } from '../../../core/estimate-types.ts'
import { type Primitive, solidView } from '../../../core/papers/index.ts'
import { feet, inches } from '../../../core/units/index.ts'
import { type StatedJob, workedJob } from '../../fixtures/worked-job.ts'

function designOf(statement: StatedJob): Design {
  const made = design(statement)
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value
}

const worked = designOf(workedJob())
const faces = (turn: 0 | 1 | 2 | 3, id: string, of = worked) =>
  solidView(of, turn).primitives.flatMap((p) => (p.kind === 'polygon' && p.id === id ? [p] : []))
const first = (drawing: readonly Primitive[], id: string) => drawing.findIndex((p) => p.id === id)

describe('the solid view of the worked job', () => {
  test('shows three faces of every board, and none of them of no size', () => {
    for (const { id, role } of worked.frame.members) {
      if (role === 'knee brace') continue
      const shown = faces(0, id)
      expect(shown, id).toHaveLength(3)
      expect(shown.map(({ fill }) => fill).toSorted()).toEqual(['dark', 'shade', 'wood'])
    }
  })

  // an isometric view: along the house 1 ft goes cos 30 degrees = 0.866 ft across and 1/2 ft down, a foot up goes a foot up
  test('draws the rim along the front as long and as deep as it is, to the rule of isometric views', () => {
    const [rim] = worked.frame.members.filter(({ id }) => id === 'rim-front-1')
    const shade = faces(0, 'rim-front-1').find(({ fill }) => fill === 'shade')
    const xs = shade?.points.map(({ x }) => x) ?? []
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo((rim?.length ?? 0) * 0.8660254, 2)
    const [a, , , d] = shade?.points ?? []
    expect((a?.y ?? 0) - (d?.y ?? 0)).toBeCloseTo(inches(9.25), 6)
  })

  test('draws what stands before after what it hides: decking over joists, joists over the beam, the rim over all', () => {
    const { primitives } = solidView(worked)
    const courses = worked.frame.members.filter(({ role }) => role === 'decking').map(({ id }) => id)
    const lastJoist = primitives.findLastIndex(({ id }) => id.startsWith('joist-'))
    expect(first(primitives, 'joist-3')).toBeGreaterThan(first(primitives, 'beam-front-ply-2'))
    expect(first(primitives, courses.at(-1) ?? '')).toBeGreaterThan(first(primitives, 'rim-front-1'))
    expect(first(primitives, 'rim-front-1')).toBeGreaterThan(lastJoist)
    expect(first(primitives, 'post-front-2')).toBeLessThan(first(primitives, 'beam-front-ply-1'))
  })

  test('leaves the house out where its wall would hide the deck', () => {
    const hasHouse = ([0, 1, 2, 3] as const).map((turn) => faces(turn, 'house-wall').length > 0)
    expect(hasHouse).toEqual([true, true, false, false])
  })

  test('over another corner shows the other sides', () => {
    const width = (turn: 0 | 1 | 2 | 3) => {
      const { x0, x1 } = solidView(worked, turn)
      return x1 - x0
    }
    expect(faces(1, 'joist-3')[0]?.points).not.toEqual(faces(0, 'joist-3')[0]?.points)
    expect(width(2)).toBeGreaterThan((feet(23.5) + feet(13.5)) * 0.866)
  })
})

test('guard posts go up through the decking, and no board under them is drawn over the decking', () => {
  const { primitives } = solidView(
    designOf({ ...workedJob(), guard: { where: 'all open edges' }, stairs: { kind: 'straight' } }),
  )
  const firstCourse = primitives.findIndex(({ layer }) => layer === 'decking')
  expect(primitives.findLastIndex(({ id }) => id.startsWith('joist-'))).toBeLessThan(firstCourse)
  expect(primitives.findLastIndex(({ id }) => id.startsWith('guard-post-'))).toBeGreaterThan(firstCourse)
})

test('decks of any outline, with stairs and guards, are drawn board by board', () => {
  const all = designOf({
    ...workedJob(),
    size: { height: '42 in' },
    shape: { outline: "0, 0; 20', 0; 20', 9'; 15', 14'; 0, 14'" },
    stairs: { kind: 'straight', edge: 4, width: '4 ft' },
    guard: { where: 'all open edges' },
  })
  const drawn = new Set(solidView(all).primitives.map(({ id }) => id))
  // stringers and braces slope; blocks behind posts are not seen; level rails are the lines of their stretch's cap
  const left = new Set(['stringer', 'knee brace', 'guard blocking', 'guard rail', 'guard cap'])
  const members = [
    ...all.frame.members,
    ...all.stairs.flatMap(({ members }) => members),
    ...(all.guard?.members ?? []),
  ]
  expect(members.filter(({ id, role }) => !left.has(role) && !drawn.has(id))).toEqual([])
  const rails = [
    ...(all.guard?.stretches.map(({ number }) => `guard-cap-${number}-1`) ?? []),
    ...(all.guard?.stairs.flatMap(({ number }) => [
      `stair-guard-cap-${number}-1`,
      `stair-guard-rail-${number}-1-bottom`,
    ]) ?? []),
  ]
  expect(rails.length).toBeGreaterThan(6)
  expect(rails.filter((id) => !drawn.has(id))).toEqual([])
})
