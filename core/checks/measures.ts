import { IRC_LIMITS, sectionOf } from '../data/index.ts'
import type { Beam, Frame, Post } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import type { Layout, SupportLine, Zone } from '../layout/index.ts'
import { governingLoad, spanTableLoad, squareFeet, tributaryLengths } from '../rules/index.ts'
import { type Psf, type Ticks, ticks } from '../units/index.ts'

/** A clear span of the joists between two supports, face to face, as IRC 2021 R507.6 measures it. */
export interface JoistSpan {
  readonly from: SupportLine
  readonly to: SupportLine
  readonly clear: Ticks
}

/** Joists beyond a beam: from the beam's centre to the rim's outer face. */
export interface JoistCantilever {
  readonly beam: 'front' | 'rear'
  readonly length: Ticks
  readonly adjacent: Ticks
}

export interface BeamFacts {
  readonly beam: Beam
  readonly posts: readonly Post[]
  /** post to post, centre to centre */
  readonly spans: readonly Ticks[]
  readonly overhangs: readonly [Ticks, Ticks]
  /** clear span of the joists that the beam carries, the greater where there are two sides */
  readonly joistSpan: Ticks
  /** joists beyond the beam, 0 where there are none */
  readonly cantilever: Ticks
  /** joists span on both sides of the beam: the tables assume one */
  readonly bothSides: boolean
  /** width of deck the beam carries: half of the joist spans, centre to centre, and the cantilever */
  readonly tributary: number
  /** tributary area of each post, sq ft */
  readonly areas: readonly number[]
}

/** A job and its frame with the measures that the checks share. */
export interface Measures {
  readonly job: Job
  readonly layout: Layout
  readonly frame: Frame
  /** live or ground snow load, whichever is greater */
  readonly load: Psf
  /** load with which the span tables are entered, psf */
  readonly spanLoad: number
  /** why the tables do not apply at all, or null */
  readonly noTables: string | null
  /** y of the far rim's outer face, where the joist lines end */
  readonly reach: Ticks
  readonly spans: readonly JoistSpan[]
  readonly cantilevers: readonly JoistCantilever[]
  readonly beams: readonly BeamFacts[]
}

export function measure(job: Job, layout: Layout, frame: Frame): Measures {
  const { liveLoad, snowLoad, deadLoad } = job.site
  const zones = layout.zones.map((zone) => zoneFacts(zone, frame))
  const limit = IRC_LIMITS.deadLoad.value
  return {
    job,
    layout,
    frame,
    load: governingLoad(liveLoad, snowLoad),
    spanLoad: spanTableLoad(liveLoad, snowLoad),
    noTables:
      deadLoad > limit ? `the tables include ${limit} psf of dead load; this deck states ${deadLoad}` : null,
    reach: ticks(Math.max(...layout.outline.map((point) => point.y))),
    spans: zones.flatMap((zone) => zone.spans),
    cantilevers: zones.flatMap((zone) => zone.cantilevers),
    beams: zones.flatMap((zone) => zone.beams),
  }
}

type ZoneFacts = Pick<Measures, 'spans' | 'cantilevers' | 'beams'>

function zoneFacts(zone: Zone, frame: Frame): ZoneFacts {
  const lines = [...zone.supports].sort((a, b) => a.y - b.y)
  const near = Math.min(...zone.outline.map((point) => point.y))
  const far = Math.max(...zone.outline.map((point) => point.y))
  const spans = lines.slice(1).map((to, i): JoistSpan => {
    const from = lines[i] ?? to
    return {
      from,
      to,
      clear: ticks(Math.floor(to.y - halfWidth(to, frame) - (from.y + halfWidth(from, frame)))),
    }
  })
  const beyond = (line: SupportLine | undefined, length: number, span: JoistSpan | undefined) =>
    line?.beam && span && length > 0 ? [{ beam: line.beam, length: ticks(length), adjacent: span.clear }] : []
  const first = lines[0]
  const last = lines.at(-1)
  const cantilevers = [
    ...beyond(first, (first?.y ?? near) - near, spans[0]),
    ...beyond(last, far - (last?.y ?? far), spans.at(-1)),
  ]
  const starts = first?.kind === 'ledger' ? first.y : near
  const widths = tributaryLengths(
    starts,
    lines.map((line) => line.y),
    far,
  )
  const beams = lines.flatMap((line, i) => {
    const beam = frame.beams.find((one) => one.beam === line.beam)
    if (beam === undefined) return []
    const beside = spans.filter((span) => span.from === line || span.to === line)
    const cantilever = cantilevers.find((one) => one.beam === line.beam)?.length ?? ticks(0)
    return [beamFacts(beam, frame, beside, cantilever, widths[i] ?? 0)]
  })
  return { spans, cantilevers, beams }
}

function beamFacts(
  beam: Beam,
  frame: Frame,
  beside: readonly JoistSpan[],
  cantilever: Ticks,
  tributary: number,
): BeamFacts {
  const posts = frame.posts.filter((post) => beam.postIds.includes(post.id)).sort((a, b) => a.x - b.x)
  const at = posts.map((post) => post.x)
  const lengths = tributaryLengths(beam.from, at, beam.to)
  return {
    beam,
    posts,
    spans: at.slice(1).map((x, i) => ticks(x - (at[i] ?? x))),
    overhangs: [ticks((at[0] ?? beam.from) - beam.from), ticks(beam.to - (at.at(-1) ?? beam.to))],
    joistSpan: ticks(Math.max(0, ...beside.map((span) => span.clear))),
    cantilever,
    bothSides: beside.length > 1,
    tributary,
    areas: lengths.map((length) => squareFeet(length, tributary)),
  }
}

/** Half the thickness of a beam under a line; a ledger's line is already its face. */
function halfWidth(line: SupportLine, frame: Frame): number {
  const beam = frame.beams.find((one) => line.kind === 'beam' && one.beam === line.beam)
  return beam === undefined ? 0 : (sectionOf(beam.size).thickness * beam.plies) / 2
}
