import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import { fromAbove } from '../../../core/frame/index.ts'
import { convexOverlap } from '../../../core/geometry/index.ts'
import { inches } from '../../../core/units/index.ts'

const file = new URL('../../fixtures/catalogue/l-shape.json', import.meta.url)
const { job } = JSON.parse(readFileSync(file, 'utf8'))

it('blocks stand in the bay between a wing’s first joist and the joist at whose face its beam ends', () => {
  const made = design(job)
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  const { members } = made.value.frame
  // by hand, from the marks on the ledger: end joist 3 reaches to 14'-0", joist 11 begins at 14'-7 1/4"
  const block = members.find(({ id }) => id === 'blocking-front-b-1')
  expect(block?.length).toBe(inches(7.25))
  expect(block?.bearings).toEqual(['end-joist-3', 'joist-11'])
  expect(members.filter(({ id }) => id.startsWith('blocking-front-b-'))).toHaveLength(8)
})

it('one block stands in the bay in whose middle two beams meet at an angle', () => {
  // joists at 84 and 96 in, the beams' joint behind the corner at 90 in
  const made = design({
    shape: { outline: '0, 0; 120, 0; 120, 96; 90, 96; 0, 82' },
    size: { height: '60 in' },
    frame: {
      joists: { size: '2x8', spacing: 12 },
      beams: { front: { setback: 6, posts: 2 } },
    },
    ground: { base: '16 in' },
  })
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  const { members } = made.value.frame
  const between = members.filter(
    ({ role, box }) => role === 'blocking' && box.x0 < 90 * 32 && box.x1 > 90 * 32,
  )
  expect(between.map(({ bearings }) => bearings)).toEqual([['joist-7', 'joist-8']])
})

it('no block stands where a corner of the house points into the bay between two joists', () => {
  // walls from 229, 273 to 224, 262 and from 214, 228 to 201, 260; the corner between two bays' joists lies at 213, 256
  const made = design({
    shape: {
      outline: '229, 273; 224, 262; 213, 256; 201, 260; 214, 228; 0, 181; 186, 0; 287, 214; 293, 234',
      walls: '6, 1',
      joists: 'along',
      zones: '120, 0, 48, 67: away',
    },
    size: { height: '60 in' },
    frame: {
      joists: { size: '2x8', spacing: 12, longest: 96 },
      beams: { front: { setback: 6, posts: 2 }, rear: { setback: 6 } },
    },
    ground: { base: '16 in' },
  })
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  const wood = made.value.frame.members.filter(({ role }) => role === 'blocking' || role === 'ledger')
  const clashes = wood.flatMap((one, i) =>
    wood
      .slice(i + 1)
      .filter((other) => convexOverlap(fromAbove(one), fromAbove(other), 1))
      .map(({ id }) => `${one.id} and ${id}`),
  )
  expect(clashes).toEqual([])
})
