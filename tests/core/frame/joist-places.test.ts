import { describe, expect, it } from 'vitest'
import { joistPlaces } from '../../../core/frame/joist-places.ts'
import { layOut, zoneView } from '../../../core/layout/index.ts'
import { inches, toInches } from '../../../core/units/index.ts'
import { heronLane } from '../../fixtures/heron-lane.ts'

/** Centres of the joists between the end joists of a rectangle. */
function centres(width: number, spacing: number, layoutFrom: 'left' | 'right' = 'left') {
  const laid = layOut(heronLane)
  const [zone] = laid.ok ? laid.value.zones : []
  if (zone === undefined) throw new Error('the demonstration job has a zone')
  const moved = <P extends { readonly x: number }>(point: P) => ({
    ...point,
    x: inches(point.x === 0 ? 0 : width),
  })
  const edges = zone.edges.map((edge) => ({ ...edge, from: moved(edge.from), to: moved(edge.to) }))
  const job = {
    ...heronLane,
    frame: {
      ...heronLane.frame,
      joists: { ...heronLane.frame.joists, spacing: inches(spacing), layoutFrom },
    },
  }
  const view = zoneView(job, { id: zone.id, joists: 'away', edges })
  return joistPlaces(job, view, [0, inches(width)], inches(1.5))
    .filter(({ end }) => !end)
    .map(({ centre }) => toInches(centre))
}

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
