import { expect, it } from 'vitest'
import { design } from '../../../core/design.ts'

it('a joist that begins a part of a tick within its first support is checked like any other', () => {
  // the outline, beams and ledgers of a random deck whose checks once failed with an error of their own
  const made = design({
    version: 1,
    name: 'angled',
    shape: {
      outline: '0, 14; 14, 14; 14, 0; 105, 0; 120, 105.25; 120, 119; 97, 119; 97, 193; 0, 193',
      walls: '1, 4',
      joists: 'away',
      middleBeams: '50 dropped',
    },
    size: { height: '60 in' },
    site: { attachment: 'ledger' },
    frame: {
      joists: { size: '2x8', spacing: 12, overMiddle: 'by stock', longest: 187 },
      rimPlies: 2,
      beams: { front: { setback: 17.53125, posts: 2, plies: 1 }, rear: { setback: 17.53125 } },
    },
    ground: { base: '16 in' },
  })
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  const joists = made.value.checks.filter(({ title }) => title.startsWith('Joist'))
  expect(joists.length).toBeGreaterThan(1)
  for (const { findings } of joists)
    for (const { demand } of findings) expect(Number.isFinite(demand.value)).toBe(true)
})
