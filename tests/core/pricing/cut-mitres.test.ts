import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import { cutJobs, SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

function jobsOf(file: string, more: object = {}) {
  const deck = CATALOGUE.find((one) => one.file === file)
  const made = deck === undefined ? null : design({ ...deck.job, ...more })
  if (made === null || !made.ok) throw new Error(file)
  return cutJobs(made.value, SAMPLE_BOOK).classes
}

describe('mitres of what is to be cut', () => {
  it('go across the width of decking and the thickness of what stands on edge', () => {
    const classes = jobsOf('wrap-hip.json')
    const across = (size: string) => {
      const own = classes.find(({ product }) => product.size === size)?.cutJob
      const all = [...(own?.pieces ?? []), ...(own?.runs ?? [])].flatMap(({ mitres }) => mitres?.across ?? [])
      return [...new Set(all)]
    }
    // 5-1/2 in and 1-1/2 in, in 1/32 in
    expect(across('5/4x6')).toEqual([176])
    expect(across('2x10')).toEqual([48])
  })

  it('of level caps of a guard go across their width, at the corners where they meet', () => {
    const caps = jobsOf('wrap-hip.json').find(({ product }) => product.size === '2x6')?.cutJob.pieces ?? []
    // four stretches, two of which turn a corner at either end and two at one; a 2x6 is 5-1/2 in wide
    expect(
      caps.filter(({ mitres }) => mitres !== undefined).map(({ mark, mitres }) => [mark, mitres?.across]),
    ).toEqual(['GC1-1', 'GC2-1', 'GC3-1', 'GC3-3', 'GC4-1', 'GC4-2'].map((mark) => [mark, 176]))
    for (const { mitres } of caps)
      for (const end of mitres?.ends ?? []) expect([0, 4500]).toContain(Math.abs(end))
  })

  it('of diagonal courses are those of their ends, and along the joists at their joints', () => {
    const decking = jobsOf('diagonal.json').find(({ product }) => product.size === '5/4x6')?.cutJob
    const jointed = decking?.runs.filter(({ points }) => points.length > 0) ?? []
    expect(jointed.length).toBeGreaterThan(10)
    // joists run away from the wall, courses to the right and away. Seen along such a course the near edge is the one in
    // front at the left; from the far edge a joist reaches it further on: the far edge of a joint ends further left
    for (const { mitres } of jointed) expect(mitres?.joint).toBe(-4500)
  })

  it('are left out where a joist is cut in place', () => {
    const plain = jobsOf('clipped-corner.json').flatMap(({ cutJob }) => cutJob.pieces)
    const wild = jobsOf('clipped-corner.json', { cutting: { joistsWild: '2 in' } }).flatMap(
      ({ cutJob }) => cutJob.pieces,
    )
    expect(plain.filter(({ mitres }) => mitres !== undefined)).toHaveLength(4)
    expect(wild.filter(({ mitres }) => mitres !== undefined)).toHaveLength(0)
  })
})
