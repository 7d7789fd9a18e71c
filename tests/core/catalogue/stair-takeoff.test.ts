import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

// The stairs of the catalogue's decks counted by hand, on level ground. As few risers as keep each at 7-3/4 in (IRC 2021
// R311.7.5.1); two boards of 5/4x6 to a tread and one to a riser, but none in the uppermost, which the rim closes;
// stringers 16 in apart at most under 5/4 boards; a flight's stringers √(rise² + run²) long for each tread, less the drop
// of a tread's thickness of 1 in × rise ÷ step, and less what the uppermost run is shorter × run ÷ step: a riser's board of
// 1 in and the nosing of 11-1/8 − 10-1/4 = 7/8 in, less what the boards above reach over, 1 in of the deck's and 7/8 in of
// the landing's. The foot at a landing runs on by 6 in, plumb, × rise ÷ step: a 2x12 is
// 11-1/4 × 12.829 ÷ 10-1/4 = 14.080 deep plumb, 7.366 of it under the landing's boards; a level cut of 1-1/2 takes
// 1-1/2 × 7.714 ÷ 10-1/4 = 1.129 off, which leaves 6.237, and 6 to the quarter below.

const RUN = 10.25

interface Flight {
  readonly risers: number
  readonly rise: number
  readonly width: number
  /** from a landing's boards down to the level cut on its strip */
  readonly below: number
  /** what the boards above reach over the face of their edge */
  readonly over: number
}

/** deck, its flights, landings with their joists and posts, and how many pads */
const HAND: readonly {
  readonly file: string
  readonly flights: readonly Flight[]
  readonly landing: { readonly joists: number; readonly posts: number; readonly courses: number } | null
  readonly feet: number
  /** boards of box steps between levels, which are treads in the hours */
  readonly boxes: number
}[] = [
  {
    // 108 ÷ 7-3/4: 14 risers of 7.714 in, 7 in each flight; the landing 48 by 37 in: beams of 3 in, joists in
    // 46-1/2 ÷ 16, 3 spaces; two posts under each beam; 37 + 7/8 + 1/8 ÷ 5-5/8, 7 courses
    file: 'high-stairs-landing.json',
    flights: [
      { risers: 7, rise: 108 / 14, width: 48, below: 6, over: 1 },
      { risers: 7, rise: 108 / 14, width: 48, below: 0, over: 0.875 },
    ],
    landing: { joists: 4, posts: 4, courses: 7 },
    // four on the pad, four on the strip at the landing
    feet: 4 + 4,
    boxes: 0,
  },
  {
    // 60 ÷ 7-3/4: 8 risers of 7.5; 32 ÷ 7-3/4: 5 of 6.4
    file: 'largest.json',
    flights: [
      { risers: 8, rise: 7.5, width: 48, below: 0, over: 1 },
      { risers: 5, rise: 6.4, width: 60, below: 0, over: 1 },
    ],
    landing: null,
    feet: 4 + 5,
    // two box steps of two risers: one tread of two boards in each
    boxes: 4,
  },
]

const stringersOf = ({ width }: Flight): number => Math.ceil((width - 1.5) / 16) + 1
const sum = (numbers: readonly number[]): number => numbers.reduce((total, one) => total + one, 0)

describe.each(HAND)('the stairs of $file', ({ file, flights, landing, feet, boxes }) => {
  const made = design(CATALOGUE.find((deck) => deck.file === file)?.job)
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  const { stairs, takeoff } = made.value
  const members = stairs.flatMap((one) => one.members)
  const of = (role: string) => members.filter((one) => one.role === role)
  const good = (sku: string) => (takeoff.goods.find((one) => one.sku === sku)?.thousandths ?? 0) / 1000
  const hours = (rate: string) =>
    (takeoff.tasks.find(({ rateId }) => rateId === rate)?.thousandths ?? 0) / 1000
  const treads = sum(flights.map(({ risers }) => risers - 1))
  const stringers = sum(flights.map(stringersOf))

  it('have the boards that a person counts, each a piece to be cut', () => {
    expect(of('stringer')).toHaveLength(stringers)
    expect(of('tread')).toHaveLength(2 * treads)
    expect(of('riser')).toHaveLength(treads)
    expect(of('stair header')).toHaveLength(flights.length)
    const ids = new Set(members.map(({ id }) => id))
    expect(takeoff.pieces.filter(({ memberId }) => ids.has(memberId))).toHaveLength(members.length)
  })

  it('have stringers as long as the steps along them', () => {
    const lengths = flights.flatMap((flight) => {
      const step = Math.hypot(flight.rise, RUN)
      const shorter = 1 + 0.875 - flight.over
      const long =
        (flight.risers - 1) * step + ((flight.below - 1) * flight.rise) / step - (shorter * RUN) / step
      return Array.from({ length: stringersOf(flight) }, () => long)
    })
    const found = of('stringer').map(({ length }) => length / 32)
    expect(found).toHaveLength(lengths.length)
    found.forEach((long, i) => {
      expect(long - (lengths[i] ?? 0)).toBeGreaterThanOrEqual(-1e-6)
      expect(long - (lengths[i] ?? 0)).toBeLessThan(1 / 32)
    })
  })

  it('have a hanger at each head and an angle at each foot', () => {
    expect(good('stringer-hanger')).toBe(stringers)
    expect(good('stringer-foot-angle')).toBe(feet)
  })

  it('have the work of their parts in the hours', () => {
    expect(hours('tread')).toBe(treads + boxes)
    expect(hours('riser')).toBe(treads)
    expect(hours('stringer-set')).toBe(stringers)
    expect(hours('stringer-first') + hours('stringer-copy')).toBe(stringers)
  })

  it('have the landing that a person counts', () => {
    expect(of('landing joist')).toHaveLength(landing?.joists ?? 0)
    // two of two plies, and the board before the outer one
    expect(of('landing beam')).toHaveLength(landing === null ? 0 : 5)
    expect(of('landing post')).toHaveLength(landing?.posts ?? 0)
    expect(of('landing decking')).toHaveLength(landing?.courses ?? 0)
    expect(sum(stairs.map(({ footings }) => footings.length))).toBe(landing?.posts ?? 0)
  })
})
