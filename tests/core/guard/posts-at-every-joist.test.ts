import { describe, expect, it } from 'vitest'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { estimateOf } from '../../fixtures/engine.ts'

// Joists 24 in apart and guard posts no farther apart: one stands beside every joist, where a joint's blocks would stand.
// The sample book's longest 2x10 is 24 ft, so a rim of 26 ft has to be jointed.

function built(postSpacing: string, rimPlies = 1) {
  return estimateOf(
    {
      size: { width: '26 ft', depth: '12 ft', height: '48 in' },
      frame: { joists: { size: '2x10', spacing: '24 in' }, rimPlies },
      guard: { where: 'where needed', postSpacing },
    },
    SAMPLE_BOOK,
  )
}

describe('a rim that has a guard post beside every joist and is longer than any board', () => {
  const { infeasible, pricing, takeoff } = built('24 in')

  it('is named, and what is asked for is another distance of the posts, not a post more', () => {
    expect(takeoff.runs.find(({ kind }) => kind === 'rim')?.points).toEqual([])
    expect(infeasible.map(({ subject }) => subject)).toEqual(['Front rim'])
    expect(infeasible[0]?.help).toContain('guard posts more than 2\'-0" apart')
    expect(infeasible[0]?.help).not.toContain('a post or another bearing')
    expect(pricing).toBeNull()
  })

  it('is jointed once they stand farther apart', () => {
    for (const plies of [1, 2]) {
      const made = built('30 in', plies)
      expect(made.infeasible).toEqual([])
      expect(made.pricing).not.toBeNull()
    }
  })
})

it('a rim that comes whole needs no other distance', () => {
  const made = estimateOf(
    {
      size: { width: '20 ft', depth: '12 ft', height: '48 in' },
      frame: { joists: { size: '2x10', spacing: '24 in' } },
      guard: { where: 'where needed', postSpacing: '24 in' },
    },
    SAMPLE_BOOK,
  )
  expect(made.infeasible).toEqual([])
  expect(made.pricing).not.toBeNull()
})
