import { describe, expect, it } from 'vitest'
import type { BeamSpec, Job } from '../../../core/job/index.ts'
import { layOut } from '../../../core/layout/index.ts'
import { inches } from '../../../core/units/index.ts'
import { heronLane } from '../../fixtures/heron-lane.ts'

function withFront(job: Job, change: Partial<BeamSpec>): Job {
  const { front, rear } = job.frame.beams
  return { ...job, frame: { ...job.frame, beams: { front: { ...front, ...change }, rear } } }
}
function withRear(job: Job, change: Partial<BeamSpec>): Job {
  const { front, rear } = job.frame.beams
  return { ...job, frame: { ...job.frame, beams: { front, rear: { ...rear, ...change } } } }
}
const freestanding: Job = { ...heronLane, site: { ...heronLane.site, attachment: 'freestanding' } }
const frameWith = (change: Partial<Job['frame']>): Job => ({
  ...heronLane,
  frame: { ...heronLane.frame, ...change },
})

function pathsOf(job: Job): readonly string[] {
  const laid = layOut(job)
  return laid.ok ? [] : laid.error.map((fault) => fault.path)
}

describe('laying out a rectangle', () => {
  it('carries the joists on the ledger’s face and the beam’s centre line', () => {
    const laid = layOut(heronLane)
    const supports = laid.ok ? laid.value.zones.flatMap((zone) => zone.supports) : []
    expect(supports).toMatchObject([
      { id: 'ledger', kind: 'ledger', beam: null, y: inches(1.5), from: inches(1.5), to: inches(280.5) },
      { id: 'beam-front', kind: 'beam', beam: 'front', y: inches(138), from: 0, to: inches(282) },
    ])
  })

  it('carries a freestanding deck on two beams, the rear one set back from the rear rim’s face', () => {
    const laid = layOut(withRear(freestanding, { setback: inches(18) }))
    const supports = laid.ok ? laid.value.zones.flatMap((zone) => zone.supports) : []
    expect(supports.map((line) => [line.id, line.y])).toEqual([
      ['beam-rear', inches(18)],
      ['beam-front', inches(138)],
    ])
  })

  it('measures the area of the outline', () => {
    const laid = layOut(heronLane)
    expect(laid.ok && laid.value.areaSquareFeet).toBe(317.25)
  })
})

describe('what cannot be laid out is a fault at its field', () => {
  it.each<[string, Job, string]>([
    ['a beam behind the ledger', withFront(heronLane, { setback: inches(160) }), 'frame.beams.front.setback'],
    ['a beam behind the wall', withFront(heronLane, { setback: inches(170) }), 'frame.beams.front.setback'],
    [
      'a beam that stands out of the frame',
      withFront(heronLane, { setback: inches(1) }),
      'frame.beams.front.setback',
    ],
    [
      'joists that bear too little because the rim is double',
      withFront(frameWith({ rimPlies: 2 }), { setback: inches(2.5) }),
      'frame.beams.front.setback',
    ],
    ['one post', withFront(heronLane, { posts: 1 }), 'frame.beams.front.posts'],
    [
      'an end post past the beam’s end',
      withFront(heronLane, { inset: inches(2) }),
      'frame.beams.front.inset',
    ],
    ['insets that overlap', withFront(heronLane, { inset: inches(140) }), 'frame.beams.front.inset'],
    ['footings that run into each other', withFront(heronLane, { posts: 14 }), 'frame.beams.front.posts'],
    ['a three-ply beam on a 4x4', withFront(frameWith({ postSize: '4x4' }), { plies: 3 }), 'frame.postSize'],
    ['beams that cross', withRear(freestanding, { setback: inches(150) }), 'frame.beams.rear.setback'],
    [
      'rear posts in the house wall',
      withRear(freestanding, { setback: inches(2.5) }),
      'frame.beams.rear.setback',
    ],
    [
      'no spot heights',
      { ...heronLane, site: { ...heronLane.site, ground: { kind: 'spots', spots: [] } } },
      'site.ground.spots',
    ],
    [
      'a frame narrower than its spacing',
      { ...heronLane, size: { ...heronLane.size, width: inches(18) } },
      'size.width',
    ],
  ])('%s', (_what, job, path) => {
    expect(pathsOf(job)).toContain(path)
  })

  it('says nothing of a rear beam that is not there', () => {
    expect(pathsOf(withRear(heronLane, { setback: inches(1), posts: 1, inset: inches(0) }))).toEqual([])
  })

  it('turns a 4x6 across under a three-ply beam instead of refusing it', () => {
    expect(pathsOf(withFront(frameWith({ postSize: '4x6' }), { plies: 3 }))).toEqual([])
  })

  it('is mended by the setback that the fault names, not only for the beam but for the joists on it', () => {
    const double = frameWith({ rimPlies: 2 })
    const laid = layOut(withFront(double, { setback: inches(1) }))
    expect(laid.ok ? '' : laid.error[0]?.fix).toBe('centre it at least 3" from the front rim’s outer face')
    expect(pathsOf(withFront(double, { setback: inches(3) }))).toEqual([])
  })

  it('is mended by the number of posts that the fault names', () => {
    const laid = layOut(withFront(heronLane, { posts: 20 }))
    expect(laid.ok ? '' : laid.error[0]?.fix).toBe('take 13 posts or fewer, or make the deck wider')
    expect(pathsOf(withFront(heronLane, { posts: 13 }))).toEqual([])
    expect(pathsOf(withFront(heronLane, { posts: 14 }))).toEqual(['frame.beams.front.posts'])
  })

  it('names the place that would be right', () => {
    const laid = layOut(withFront(heronLane, { setback: inches(160) }))
    expect(laid.ok ? '' : laid.error[0]?.fix).toBe(`set it back at most 13'-3", or make the deck deeper`)
  })
})
