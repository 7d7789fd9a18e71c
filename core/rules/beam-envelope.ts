import { deflectionExtremes, greatestShear, momentExtremes } from './beam-forces.ts'
import { analyseBeams, type BeamLoad, type BeamModel } from './continuous-beam.ts'
import { liveLoadPatterns } from './load-patterns.ts'

/** Loads along a beam, lb per in; more of it over a stretch is another beam. */
export interface LineLoad {
  readonly dead: number
  readonly live: number
}

export interface StretchDemand {
  readonly kind: 'span' | 'overhang'
  readonly from: number
  readonly to: number
  /** greatest moment in size, sagging or hogging, in-lb */
  readonly moment: number
  /** lb */
  readonly shear: number
  /** greatest deflection under live load alone, in: down or up between supports, down at the tip of an overhang */
  readonly deflection: number
}

export interface SupportDemand {
  readonly at: number
  /** lb; least below 0: the beam would lift off */
  readonly greatest: number
  readonly least: number
  /** greatest reaction of the live load alone, lb */
  readonly greatestLive: number
}

/** The worst that any placing of the live load does to a beam. */
export interface BeamEnvelope {
  readonly stretches: readonly StretchDemand[]
  readonly supports: readonly SupportDemand[]
}

/** Envelope of a beam that is continuous over its supports. */
export function continuousEnvelope(model: BeamModel, { dead, live }: LineLoad): BeamEnvelope {
  const ends = [0, ...model.supports, model.length]
  const stretches = ends.slice(1).flatMap((to, i) => {
    const from = ends[i] ?? 0
    const kind = i === 0 || i === model.supports.length ? ('overhang' as const) : ('span' as const)
    return to > from ? [{ kind, from, to }] : []
  })
  const patterns = liveLoadPatterns(stretches.length)
  const liveCases = patterns.map((pattern) =>
    stretches.flatMap(({ from, to }, i): BeamLoad[] =>
      pattern[i] ? [{ kind: 'uniform', from, to, load: live }] : [],
    ),
  )
  const always: BeamLoad = { kind: 'uniform', from: 0, to: model.length, load: dead }
  const count = liveCases.length
  const results = analyseBeams(model, [...liveCases.map((loads) => [always, ...loads]), ...liveCases])
  const full = results.slice(0, count)
  const liveOnly = results.slice(count)
  return {
    stretches: stretches.map(({ kind, from, to }) => {
      const moments = full.map((result) => momentExtremes(result, from, to))
      return {
        kind,
        from,
        to,
        moment: Math.max(...moments.flatMap(({ greatest, least }) => [greatest.value, -least.value])),
        shear: Math.max(...full.map((result) => greatestShear(result, from, to))),
        deflection: Math.max(
          ...liveOnly.map((result) => {
            const { down, up } = deflectionExtremes(result, from, to)
            // an overhang's tip rises as the span beside it sags: only its own sag is limited
            return kind === 'overhang' ? Math.max(0, down.value) : Math.max(down.value, -up.value)
          }),
        ),
      }
    }),
    supports: model.supports.map((at, i) => ({
      at,
      greatest: Math.max(...full.map((result) => result.reactions[i] ?? 0)),
      least: Math.min(...full.map((result) => result.reactions[i] ?? 0)),
      greatestLive: Math.max(...liveOnly.map((result) => result.reactions[i] ?? 0)),
    })),
  }
}

/**
 * Envelope of the same beam jointed over every inner support: simple spans, the overhangs going with the end spans.
 * A ply carries no moment across a joint.
 */
export function jointedEnvelope(model: BeamModel, load: LineLoad): BeamEnvelope {
  const last = model.supports.length - 2
  if (last < 1) return continuousEnvelope(model, load)
  const parts = model.supports.slice(0, -1).map((start, i) => {
    const end = model.supports[i + 1] ?? start
    const from = i === 0 ? 0 : start
    const to = i === last ? model.length : end
    const envelope = continuousEnvelope(
      { length: to - from, supports: [start - from, end - from], stiffness: model.stiffness },
      load,
    )
    return { from, envelope }
  })
  const ends = parts.flatMap(({ envelope }) => envelope.supports)
  return {
    stretches: parts.flatMap(({ from, envelope }) =>
      envelope.stretches.map((one) => ({ ...one, from: one.from + from, to: one.to + from })),
    ),
    supports: model.supports.map((_, i) => {
      // each inner support carries the end of one part and the start of the next
      const mine = ends.filter((_support, j) => Math.ceil(j / 2) === i)
      const sum = (of: (one: SupportDemand) => number) => mine.reduce((total, one) => total + of(one), 0)
      return {
        at: model.supports[i] ?? 0,
        greatest: sum((one) => one.greatest),
        least: sum((one) => one.least),
        greatestLive: sum((one) => one.greatestLive),
      }
    }),
  }
}

/** The worse of two envelopes of one beam, value by value. */
export function worseEnvelope(a: BeamEnvelope, b: BeamEnvelope): BeamEnvelope {
  return {
    stretches: a.stretches.map((one, i) => {
      const other = b.stretches[i] ?? one
      return {
        ...one,
        moment: Math.max(one.moment, other.moment),
        shear: Math.max(one.shear, other.shear),
        deflection: Math.max(one.deflection, other.deflection),
      }
    }),
    supports: a.supports.map((one, i) => {
      const other = b.supports[i] ?? one
      return {
        at: one.at,
        greatest: Math.max(one.greatest, other.greatest),
        least: Math.min(one.least, other.least),
        greatestLive: Math.max(one.greatestLive, other.greatestLive),
      }
    }),
  }
}
