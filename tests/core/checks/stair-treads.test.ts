import { describe, expect, it } from 'vitest'
import { designed } from '../../fixtures/designed.ts'

// Closed stringers end each tread board at both its ends; Table R507.7 has no row for a 5/4 board over one span that was
// read. What is named in its stead is what the same stairs come to when they are built so.

function treads(stairs: object, height = '42 in', species = 'SP') {
  const made = designed({
    size: { width: '16 ft', depth: '12 ft', height },
    frame: { species },
    stairs: { kind: 'straight', stringers: 'closed', treads: '5/4x6', ...stairs },
  })
  const check = made.checks.find(({ id }) => id === 'stair-treads')
  if (check === undefined) throw new Error('no check of the treads')
  return check
}

describe('treads of 5/4x6 between closed stringers', () => {
  it.each(['36 in', '40 in', '48 in', '60 in'])(
    'name treads of 2x6 by the share they would use, %s wide',
    (width) => {
      const share = treads({ width, treads: '2x6' }).message.match(/\d+ %/)?.[0]
      const { status, remedy } = treads({ width })
      expect(status).toBe('outside scope')
      expect(remedy).toContain(`treads of 2x6, ${share} used`)
    },
  )

  it('do not name treads of 2x6 that would fail, and such are not told to become what they are', () => {
    // 49-1/2 − 1-1/2 = 48 in: two spaces of 24 in, in incised Douglas fir-larch
    const width = '49.5 in'
    const failing = treads({ width, treads: '2x6' }, '42 in', 'DFL')
    expect(failing.status).toBe('fails')
    expect(failing.remedy).toContain('take cut stringers')
    for (const { remedy } of [failing, treads({ width }, '42 in', 'DFL')])
      expect(remedy).not.toContain('take treads of 2x6')
  })

  it('name cut stringers only where those reach, 6 ft at most', () => {
    expect(treads({ stringers: 'cut' }).status).not.toBe('outside scope')
    expect(treads({}).remedy).toContain('cut stringers')
    // 72 in and 8 risers or more: 7 treads of 10-1/4 in are 71-3/4 in, 8 are 82 in
    expect(treads({}, '66 in').remedy).not.toContain('cut stringers')
  })

  it('call a share by a figure that was recalled no calculation', () => {
    // a span of 17-1/4 in of the 24 in that are recalled is 72 %; bending and deflection alone use less
    expect(treads({ width: '36 in', treads: '2x6' }).message).toMatch(
      /; by a figure that is no table row 72 % is used\.$/,
    )
  })
})
