import { expect, it } from 'vitest'
import { design } from '../../../core/design.ts'

it('a joist that ends at the beam over which it would be lapped is in one piece', () => {
  // a random deck whose frame once had a joist of no length, and so failed with an error of its own
  const made = design({
    version: 1,
    name: 'neck',
    shape: {
      outline: '0, 0; 309, 0; 309, 96; 121, 96; 121, 110; 97, 110; 97, 96; 0, 96',
      joists: 'away',
      zones: '120, 0, 48, 48: away',
    },
    size: { height: '60 in' },
    site: { attachment: 'ledger' },
    frame: {
      joists: { size: '2x8', spacing: 12, overMiddle: 'lapped', longest: 96 },
      beams: { front: { setback: 6, posts: 2, plies: 2 }, rear: { setback: 6 } },
    },
    ground: { base: '16 in' },
  })
  expect(made.ok ? [] : made.error.map(({ path }) => path)).toEqual(['shape.zones'])
})

it('a joist is jointed over a beam only where what goes on beyond has 1-1/2 in of it to bear on', () => {
  // the ledger along the slanting wall from 126, 130 to 86, 168 meets joist 8 right over the beam at 150-1/16 in
  const made = design({
    version: 1,
    name: 'wedge',
    shape: {
      outline: '86, 168; 87, 180; 62, 178; 47, 102; 0, 0; 126, 130',
      walls: '6, 1',
      middleBeams: '150.0625 in',
    },
    size: { height: '60 in' },
    frame: {
      joists: { size: '2x8', spacing: 12, layoutFrom: 'right', overMiddle: 'by stock', longest: 96 },
      beams: { front: { setback: 6, posts: 2, plies: 2 } },
    },
    ground: { base: '16 in' },
  })
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  const { members } = made.value.frame
  expect(members.find(({ id }) => id === 'joist-8')?.bearings).toEqual([
    'rim-rear-1',
    'beam-middle',
    'ledger-b',
  ])
  const beyond = members.filter(({ id }) => /^joist-\d+-b$/.test(id))
  expect(beyond.length).toBeGreaterThan(2)
  // IRC 2021 R507.6.1: 1-1/2 in on wood; both corners of each piece lie so far beyond the beam’s middle
  for (const { id, plan = [] } of beyond) {
    const far = plan.map(({ y }) => y / 32).toSorted((a, b) => b - a)
    expect(far[1], id).toBeGreaterThanOrEqual(150.0625 + 1.5)
  }
})
