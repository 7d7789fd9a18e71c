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
