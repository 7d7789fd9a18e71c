import { IRC_LIMITS, sectionOf } from '../data/index.ts'
import { ceilTicks, inches, type Ticks, ticks } from '../units/index.ts'
import type { StringerMark, StringerPattern } from './types.ts'

const STRINGER = sectionOf('2x12')

/** Least bearing of wood on wood, IRC 2021 R507.6.1 and R502.6. */
const BEARING = inches(IRC_LIMITS.bearingOnWood.value)

/** The level cut comes at whole quarters of an inch, for the tape. */
const QUARTER = inches(0.25)

/** What a flight asks of its stringers; lengths in ticks. */
export interface FlightSize {
  readonly flight: number
  readonly kind: 'cut' | 'closed'
  readonly risers: number
  /** exact */
  readonly rise: number
  readonly run: Ticks
  /** of the whole flight, from the face above to the lowest rise cut */
  readonly span: Ticks
  readonly width: Ticks
  readonly treadThickness: Ticks
  /** greatest distance between two stringers, centre to centre */
  readonly mostApart: number
  /** on a landing's beam: how far under its boards a strip may lie; null on the ground or a floor */
  readonly strip: Ticks | null
}

/**
 * The pattern of a flight's stringers by plane geometry, the stair's line at θ = atan(rise ÷ run), treads m = risers − 1
 * and the step s = √(rise² + run²): marks stand every s along the upper edge, the lowest at nothing. A cut stringer is
 * dropped at the bottom by the thickness of a tread, so its board is m s − drop sin θ long, and under its notches are
 * left depth − rise run ÷ s. A closed one runs on to the level of the floor above: m s + rise sin θ. The uppermost run is
 * shorter by a slide d, so that steps are equal from nosing to nosing: a cut board by d cos θ, a closed one by d s ÷ run. Where a flight ends
 * at a landing's beam its plumb end runs on by `below`, which makes the board below × sin θ longer: there the level cut,
 * 1-1/2 in long at least, stands on a strip, under the whole throat and not under a tooth that would split off.
 */
export function stringerPattern(size: FlightSize): StringerPattern {
  const { flight, kind, risers, rise, run, span, width, treadThickness, mostApart, strip } = size
  const treads = risers - 1
  const step = Math.sqrt(rise ** 2 + run ** 2)
  const sine = rise / step
  const cut = kind === 'cut'
  const drop = cut ? treadThickness : ticks(0)
  const below = strip === null ? ticks(0) : belowLanding(rise, run, drop, strip)
  const between = width - STRINGER.thickness
  const spaces = spacesIn(between, mostApart)
  const slide = treads * run - span
  const marks = Array.from(
    { length: treads },
    (_, i): StringerMark => ({ riser: i + 1, at: ticks(Math.round(i * step)) }),
  )
  return {
    flight,
    kind,
    count: spaces + 1,
    spacing: between / spaces,
    rise,
    run,
    topRun: ticks(run - slide),
    step,
    drop,
    below,
    throat: cut ? STRINGER.depth - (rise * run) / step : STRINGER.depth,
    length: ceilTicks(
      treads * step +
        (cut ? -treadThickness : rise) * sine -
        (cut ? (slide * run) / step : (slide * step) / run) +
        below * sine,
    ),
    span,
    marks,
  }
}

/** Spaces between stringers, the fewest. */
export function spacesIn(between: number, mostApart: number): number {
  return Math.max(1, Math.ceil(between / mostApart - 1e-9))
}

/** As low as the plumb end is, less what a level cut of 1-1/2 in takes off it, and no lower than the strip may lie. */
function belowLanding(rise: number, run: number, drop: number, strip: Ticks): Ticks {
  const plumbEnd = (STRINGER.depth * Math.hypot(rise, run)) / run - rise + drop
  const lowest = Math.min(plumbEnd - (BEARING * rise) / run, strip)
  return ticks(Math.floor(lowest / QUARTER) * QUARTER)
}
