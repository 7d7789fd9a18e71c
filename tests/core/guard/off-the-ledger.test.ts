import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import type { Box } from '../../../core/frame/index.ts'
import { inches, toInches } from '../../../core/units/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

/** Between two boxes as seen from above, inches. */
function apart(a: Box, b: Box): number {
  const x = Math.max(0, a.x0 - b.x1, b.x0 - a.x1)
  const y = Math.max(0, a.y0 - b.y1, b.y0 - a.y1)
  return Math.hypot(x, y) / 32
}

describe('guard posts at the house', () => {
  it.each(CATALOGUE.map(({ file, job }) => [file, job] as const))(
    'leave room on the ledger for heads of its fasteners and the end joist’s angle: %s',
    (_, job) => {
      const made = design(job)
      if (!made.ok) throw new Error(JSON.stringify(made.error))
      const { frame, guard } = made.value
      const ledgers = frame.members.filter(({ role, plan }) => role === 'ledger' && plan === undefined)
      const posts = (guard?.members ?? []).filter(
        ({ role, plan }) => role === 'guard post' && plan === undefined,
      )
      for (const post of posts)
        for (const ledger of ledgers)
          if (post.box.z0 < ledger.box.z1)
            expect(apart(post.box, ledger.box)).toBeGreaterThanOrEqual(2 - 1e-9)
    },
  )

  it('leave less than 4 in to the wall', () => {
    const made = design({ size: { height: '44 in' }, guard: { where: 'all open edges' } })
    if (!made.ok) throw new Error(JSON.stringify(made.error))
    const posts = (made.value.guard?.members ?? []).filter(({ role }) => role === 'guard post')
    const least = Math.min(...posts.map(({ box }) => box.y0))
    // the ledger of 1-1/2 in and 2 in off it
    expect(toInches(least)).toBe(3.5)
    expect(least).toBeLessThan(inches(4))
  })
})
