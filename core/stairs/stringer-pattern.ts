import { sectionOf } from '../data/index.ts'
import { ceilTicks, type Ticks, ticks } from '../units/index.ts'
import type { StringerMark, StringerPattern } from './types.ts'

const STRINGER = sectionOf('2x12')

/** What a flight asks of its stringers; lengths in ticks. */
export interface FlightSize {
  readonly flight: number
  readonly kind: 'cut' | 'closed'
  readonly risers: number
  /** exact */
  readonly rise: number
  readonly run: Ticks
  readonly width: Ticks
  readonly treadThickness: Ticks
  /** greatest distance between two stringers, centre to centre */
  readonly mostApart: number
}

/**
 * The pattern of a flight's stringers by plane geometry, the stair's line at θ = atan(rise ÷ run), treads m = risers − 1
 * and the step s = √(rise² + run²): marks stand every s along the upper edge, the lowest at nothing. A cut stringer is
 * dropped at the bottom by the thickness of a tread, so its board is m s − drop sin θ long, and under its notches are
 * left depth − rise run ÷ s. A closed one runs on to the level of the floor above: m s + rise sin θ.
 */
export function stringerPattern(size: FlightSize): StringerPattern {
  const { flight, kind, risers, rise, run, width, treadThickness, mostApart } = size
  const treads = risers - 1
  const step = Math.sqrt(rise ** 2 + run ** 2)
  const sine = rise / step
  const cut = kind === 'cut'
  const between = width - STRINGER.thickness
  const spaces = Math.max(1, Math.ceil(between / mostApart - 1e-9))
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
    step,
    drop: cut ? treadThickness : ticks(0),
    throat: cut ? STRINGER.depth - (rise * run) / step : STRINGER.depth,
    length: ceilTicks(treads * step + (cut ? -treadThickness : rise) * sine),
    span: ticks(treads * run),
    marks,
  }
}
