import { describe, expect, it } from 'vitest'
import { innerJoistCentres } from '../../../core/frame/joist-centres.ts'
import { inches, toInches } from '../../../core/units/index.ts'

const centres = (width: number, spacing: number, from: 'left' | 'right' = 'left') =>
  innerJoistCentres(inches(width), inches(spacing), inches(1.5), from).map(toInches)

describe('joist layout', () => {
  it('marks centres at whole spacings from the outer face of the end joist', () => {
    expect(centres(100, 16)).toEqual([16, 32, 48, 64, 80, 96])
  })

  it('stops 3 in before the far end joist’s centre', () => {
    // 80 is 3 in from 83, 80 1/32 would be nearer
    expect(centres(83.75, 16).at(-1)).toBe(80)
    expect(centres(83.71875, 16).at(-1)).toBe(79.96875)
  })

  it('adds a joist 3 in from the end joist’s centre where the bay left is wider than the spacing', () => {
    // after 64 the end joist’s centre is at 82.25, 18 1/4 in away
    expect(centres(83, 16)).toEqual([16, 32, 48, 64, 79.25])
  })

  it('adds none where the bay left is just the spacing', () => {
    expect(centres(80.75, 16)).toEqual([16, 32, 48, 64])
  })

  it('is the mirror image when laid out from the right', () => {
    expect(centres(100, 16, 'right')).toEqual([4, 20, 36, 52, 68, 84])
  })

  it('frames a narrow deck with one joist', () => {
    expect(centres(30, 24)).toEqual([24])
  })
})
