import { describe, expect, it } from 'vitest'
import { nominalBoardFeet } from '../../core/data/ps20/section.ts'
import { designJob } from '../../core/design.ts'
import { diagonal } from '../../core/frame/index.ts'
import type { Job } from '../../core/job/index.ts'
import { feet, inches, printLength, ticks } from '../../core/units/index.ts'
import { heronLane } from '../fixtures/heron-lane.ts'

function made(change: Partial<Job>) {
  const result = designJob({ ...heronLane, ...change }, [])
  if (!result.ok) throw new Error(JSON.stringify(result.error))
  return result.value
}

describe('squaring, example LA-01', () => {
  // diynot.com thread 169166 (6-8-10), diychatroom.com thread 27018 (15-20-25), asktooltalk.com squaring page (21-28-35)
  it.each([
    [6, 8, 10],
    [15, 20, 25],
    [21, 28, 35],
  ])('legs of %i and %i ft have a diagonal of %i ft', (a, b, c) => {
    expect(diagonal(feet(a), feet(b))).toBe(feet(c))
  })

  // recomputed: √(30² + 20²) = 36.0555 ft, 10.66 sixteenths over 36 ft
  it('a rectangle of 30 by 20 ft has a diagonal of 36 ft 0-11/16 in', () => {
    expect(printLength(diagonal(feet(30), feet(20)))).toBe(`36'-0 11/16"`)
  })
})

describe('board feet, example TK-01', () => {
  // I. S. Griffith, Carpentry, section 77; US Army course EN5155
  it('a 6x8 of 16 ft has 64, and eight 1x4 of 14 ft have 37 1/3', () => {
    expect(nominalBoardFeet(6, 8, feet(16))).toBe(64_000)
    expect(nominalBoardFeet(1, 4, feet(8 * 14))).toBe(37_333)
  })
})

describe('joist count, example TK-03', () => {
  // Builder's Guide, Estimating Floor Joists (chestofbooks.com); carpentry course cards, 20 ft 8 in floor
  it.each([
    [feet(32), 12, 33],
    [feet(32), 16, 25],
    [inches(248), 16, 17],
  ])('a floor %i ticks long with joists at %i in has %i, both ends counted', (width, spacing, count) => {
    const { frame } = made({
      size: { ...heronLane.size, width },
      frame: { ...heronLane.frame, joists: { ...heronLane.frame.joists, spacing: inches(spacing) } },
    })
    const joists = frame.members.filter(({ role }) => role === 'joist' || role === 'end joist')
    expect(joists).toHaveLength(count)
  })
})

describe('decking rows, example TK-04', () => {
  const courses = (gap: number) =>
    made({
      size: { ...heronLane.size, depth: inches(288) },
      decking: { ...heronLane.decking, overhang: ticks(0), gap: inches(gap), wallGap: ticks(0) },
    }).frame.members.filter(({ role }) => role === 'decking')

  // ehow.co.uk article 5593147: 288 in by boards of 5-1/2 in and gaps of 1/4 in is just over 50 rows: 51 cover it
  it('288 in takes 51 rows, for 50 and their gaps cover 287-1/4 in', () => {
    const rows = courses(0.25)
    expect(rows).toHaveLength(51)
    // the first and the last are ripped alike, so that 49 are whole: one row and one gap less than 50
    const whole = (rows[49]?.box.y1 ?? 0) - (rows[1]?.box.y0 ?? 0)
    expect(whole).toBe(inches(287.25 - 5.75))
    const pitch = (rows[2]?.box.y0 ?? 0) - (rows[1]?.box.y0 ?? 0)
    expect(inches(288) / pitch).toBeCloseTo(50.09, 2)
  })

  // ehow.co.uk article 6520272, printed 3.8 from a rounded figure
  it('a board of 8 ft with its gap of 1/8 in covers 3.75 sq ft', () => {
    const [, first, second] = courses(0.125)
    const pitch = (second?.box.y0 ?? 0) - (first?.box.y0 ?? 0)
    expect((pitch / 32) * 96).toBeCloseTo(3.75 * 144, 6)
  })
})

describe('a form tube of 10 in, example CN-04', () => {
  // 3 ft: buildzoom.com question 855, which prints 1.66 from a rounded radius; 4 ft recomputed
  it('six of 4 ft with 10 % of waste take 24 bags of 80 lb: 14.399 cu ft are 23.998 of them', () => {
    const { takeoff } = made({
      site: { ...heronLane.site, frostDepth: inches(48) },
      frame: {
        ...heronLane.frame,
        beams: { ...heronLane.frame.beams, front: { ...heronLane.frame.beams.front, posts: 6 } },
      },
      ground: { ...heronLane.ground, tube: inches(10), base: ticks(0), projection: ticks(0) },
    })
    expect(takeoff.volumes.concrete * 1.1).toBeCloseTo(14.399, 3)
    expect(takeoff.volumes.bags).toBe(24)
    // the program buys bags of 80 lb alone; of its volume 60 lb ones, 0.45 cu ft each, would be 32
    expect(Math.ceil((takeoff.volumes.concrete * 1.1) / 0.45)).toBe(32)
    expect((takeoff.volumes.concreteEach[0]?.cubicFeet ?? 0) * 0.75).toBeCloseTo(1.6362, 4)
  })
})
