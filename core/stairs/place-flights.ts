import type { Job } from '../job/index.ts'
import { type Ticks, ticks } from '../units/index.ts'
import { spotAt } from './deck-edges.ts'
import type { DeckEdge, PlacedFlight, Spot } from './types.ts'

/** Where a stair begins, before its risers are known. */
export interface Start {
  readonly edge: DeckEdge
  readonly place: Ticks
  readonly width: Ticks
  /** number of its upper flight */
  readonly firstFlight: number
  readonly reaches: Reaches
}

/** What makes a nosing at every step. */
export interface Reaches {
  /** of treads over the rise cuts: the riser's board and the nosing before it */
  readonly treads: number
  /** of the deck's boards and of a landing's over the face of the edge that a flight leaves */
  readonly deck: Ticks
  readonly landing: Ticks
}

/** The upper flight and, where the job asks for a landing, the lower one; with the landing's place between them. */
export interface PlacedFlights {
  readonly flights: readonly PlacedFlight[]
  readonly landing: {
    readonly corner: Spot
    readonly down: Spot
    readonly across: Spot
    readonly level: number
  } | null
  /** middle of the foot, at the lowest rise cut */
  readonly foot: Spot
  /** the way down of the last flight */
  readonly down: Spot
}

/**
 * A stair of so many risers put in place. Of two flights the upper takes half the risers, rounded up. The uppermost run is
 * shorter by what treads reach over their rise cuts further than the boards above do over their face: from nosing to
 * nosing every step is then as deep as the others (IRC 2021 R311.7.5.2).
 */
export function placeFlights(job: Job, start: Start, risers: number, rise: number): PlacedFlights {
  const { kind, run, landingDepth } = job.stairs
  const { edge, place, width, firstFlight, reaches } = start
  const head = spotAt(edge, place, 0)
  const flight = (
    number: number,
    own: {
      risers: number
      head: Spot
      down: Spot
      across: Spot
      width: Ticks
      topLevel: number
      over: Ticks
    },
  ): PlacedFlight => ({
    ...own,
    number,
    treads: own.risers - 1,
    run: ticks((own.risers - 1) * run - (reaches.treads - own.over)),
    bottomLevel: own.topLevel - own.risers * rise,
  })
  const straight = kind === 'straight' || kind === 'full width'
  const upper = flight(firstFlight, {
    risers: straight ? risers : Math.ceil(risers / 2),
    head,
    down: edge.out,
    across: edge.along,
    width,
    topLevel: edge.top,
    over: reaches.deck,
  })
  if (straight) return { flights: [upper], landing: null, ...footOf(upper) }

  const corner = spotAt(edge, place, upper.run)
  const level = upper.bottomLevel
  const rest = { risers: risers - upper.risers, topLevel: level, over: reaches.landing }
  const left = { x: edge.out.y + 0, y: 0 - edge.out.x }
  const beyond = spotAt(edge, place, upper.run + landingDepth)
  const lower =
    kind === 'landing'
      ? flight(firstFlight + 1, { ...rest, head: beyond, down: edge.out, across: edge.along, width })
      : turned(kind === 'landing left')
  return {
    flights: [upper, lower],
    landing: { corner, down: edge.out, across: edge.along, level },
    ...footOf(lower),
  }

  /** A flight that leaves the landing sideways is as wide as the landing is deep. */
  function turned(toLeft: boolean): PlacedFlight {
    const way = toLeft ? left : { x: 0 - left.x, y: 0 - left.y }
    const along = way.x * edge.along.x + way.y * edge.along.y > 0
    return flight(firstFlight + 1, {
      ...rest,
      head: along ? spotAt(edge, place + width, upper.run) : corner,
      down: way,
      across: edge.out,
      width: landingDepth,
    })
  }
}

function footOf(flight: PlacedFlight): { foot: Spot; down: Spot } {
  return { foot: onFlight(flight, flight.run, flight.width / 2), down: flight.down }
}

/** A place on a flight by its distance down from the head and across from the near side. */
export function onFlight(
  flight: Pick<PlacedFlight, 'head' | 'down' | 'across'>,
  down: number,
  across: number,
): Spot {
  return {
    x: flight.head.x + down * flight.down.x + across * flight.across.x,
    y: flight.head.y + down * flight.down.y + across * flight.across.y,
  }
}
