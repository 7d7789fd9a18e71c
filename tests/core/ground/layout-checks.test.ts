import { describe, expect, it } from 'vitest'
import { designJob } from '../../../core/design.ts'
import type { Design } from '../../../core/estimate-types.ts'
import { layoutChecks, layoutCorners, layoutStrings } from '../../../core/ground/index.ts'
import type { Job } from '../../../core/job/index.ts'
import { inches, printLength } from '../../../core/units/index.ts'
import { heronLane } from '../../fixtures/heron-lane.ts'
import { shaped } from './shaped.ts'

/** A front of three edges: 12 ft along the house in the middle, 4 ft out, its sides back at 45 degrees. */
const BAY = "0, 0; 20', 0; 20', 8'; 16', 12'; 4', 12'; 0, 8'"

function designed(job: Job): Design {
  const made = designJob(job, [])
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value
}

const said = (design: Design) =>
  layoutChecks(design).map(({ kind, measures }) => [kind, printLength(measures)])

describe('checks of a layout', () => {
  it('are both long diagonals, and the outer holes in one pull', () => {
    const [square, holes] = layoutChecks(designed(heronLane))
    // by hand: the diagonal of 282 by 162 in is 325.22 in; from 12 to 270 in along are 258 in, three bays of 86
    expect(square?.measures).toBe(inches(325.25))
    expect([holes?.measures, holes?.what]).toEqual([
      inches(258),
      `Hole 1 to hole 4, centre to centre in one pull; between them 7'-2", 7'-2", 7'-2"`,
    ])
  })

  it('say how far strings move for each inch by which the diagonals differ', () => {
    const [square] = layoutChecks(designed(heronLane))
    // by hand: leaning by s, they are √((282 + s)² + 162²) and √((282 − s)² + 162²); for s = 9/16 in 325.708 and
    // 324.732, which differ by 0.975 in; for 5/8 in by 1.084
    expect(square?.otherwise).toContain(`by 9/16" for each inch`)
  })

  it('add both diagonals of the outermost crossings where there are two rows of holes', () => {
    const { site, frame } = heronLane
    const rear = { ...frame.beams.rear, setback: inches(18), posts: 4, inset: inches(12) }
    const free = designed({
      ...heronLane,
      site: { ...site, attachment: 'freestanding' },
      frame: { ...frame, beams: { ...frame.beams, rear } },
    })
    // by hand: 258 in along and 138 − 18 = 120 in away: √(258² + 120²) = 284.54 in, to the sixteenth 284-9/16
    expect(said(free)).toEqual([
      ['square', `27'-1 1/4"`],
      ['crossings', `23'-8 9/16"`],
      ['apart', `21'-6"`],
    ])
    expect(layoutChecks(free)[1]?.what).toBe(
      'Both diagonals of the crossings: A × a to B × d, and A × d to B × a',
    )
  })

  it('measure the two holes farthest apart where no row has two', () => {
    const bay = shaped(BAY)
    const holes = bay.frame.footings.slice(0, 2)
    const two = { ...bay, frame: { ...bay.frame, footings: holes } }
    const [one, other] = holes
    if (one === undefined || other === undefined) throw new Error('no two holes')
    // by hand: the bay's sides run back at 45 degrees; the first post stands 11-5/16 in along one of 67-29/32 in, the
    // second at its end: 56.59 in apart
    expect(said(two).at(-1)).toEqual(['apart', `4'-8 5/8"`])
    expect(layoutChecks(two).at(-1)?.what).toBe('Hole 1 to hole 2, centre to centre in one pull')
  })

  it('hang holes that a tape cannot tell apart under one string', () => {
    // the mirrored posts of the bay's two sides lie 80 in out, one of them 1/32 in less by rounding
    const { strings, crossings } = layoutStrings(shaped(BAY))
    const rows = strings.filter(({ runs, edge }) => runs === 'along the wall' && !edge)
    expect(rows.map(({ name, holes }) => [name, holes])).toEqual([
      ['A', [1, 5]],
      ['B', [2, 3, 4]],
    ])
    expect(crossings.map((hole) => hole.strings)).toEqual(['A × a', 'B × b', 'B × c', 'B × d', 'A × e'])
  })
})

describe('corners of an outline', () => {
  it('are proved by two diagonals each where it is no rectangle', () => {
    const [, , third, fourth, fifth] = layoutCorners(shaped(BAY))
    // by hand: (240, 96): √(240² + 96²) = 258.49 in, 96 in; (192, 144): 240 in, √(48² + 144²) = 151.79 in
    expect(
      [third, fourth, fifth].map((one) => one && [one.number, one.fromLeftCorner, one.fromRightCorner]),
    ).toEqual([
      [3, inches(258.5), inches(96)],
      [4, inches(240), inches(151.8125)],
      [5, inches(151.8125), inches(240)],
    ])
  })

  it('need no diagonals of their own on a rectangle', () => {
    expect(layoutCorners(designed(heronLane))).toEqual([])
  })
})
