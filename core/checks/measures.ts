import { IRC_LIMITS, sectionOf } from '../data/index.ts'
import type { Beam, Frame, JoistSupport, Post } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import type { Layout } from '../layout/index.ts'
import { governingLoad, spanTableLoad, squareFeet, tributaryLengths } from '../rules/index.ts'
import { type Psf, type Ticks, ticks } from '../units/index.ts'
import { hipAreas } from './hip-areas.ts'
import { type JoistMeasures, measureJoists } from './joist-measures.ts'

/** A clear span of the joists between two supports, face to face, as IRC 2021 R507.6 measures it. */
export interface JoistSpan {
  readonly from: Pick<JoistSupport, 'id' | 'kind'>
  readonly to: Pick<JoistSupport, 'id' | 'kind'>
  readonly clear: Ticks
}

/** Joists beyond a beam: from the beam's centre to the rim's outer face. */
export interface JoistCantilever {
  /** whose field of the job the beam goes by, its own name and its mark */
  readonly beam: 'front' | 'rear'
  readonly key: string
  readonly mark: string
  readonly lies: Beam['lies']
  readonly side: 'start' | 'end'
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
  /** joists of one level lie on its top and those of a lower one hang from its side */
  readonly twoLevels: boolean
  /** joists lie on it askew, or it meets another beam at an angle: no table is for that */
  readonly slanting: boolean
  /** width of deck the beam carries: half of the joist spans, centre to centre, and the cantilever */
  readonly tributary: number
  /** tributary area of each post, sq ft; of a post under two beams, that of both */
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
  /** joists by what carries them */
  readonly groups: readonly JoistMeasures[]
  readonly beams: readonly BeamFacts[]
}

export function measure(job: Job, layout: Layout, frame: Frame): Measures {
  const { liveLoad, snowLoad, deadLoad } = job.site
  const groups = frame.joistGroups.map((group) => measureJoists(group, frame))
  const limit = IRC_LIMITS.deadLoad.value
  return {
    job,
    layout,
    frame,
    load: governingLoad(liveLoad, snowLoad),
    spanLoad: spanTableLoad(liveLoad, snowLoad),
    noTables:
      deadLoad > limit ? `the tables include ${limit} psf of dead load; this deck states ${deadLoad}` : null,
    groups,
    beams: withHips(withSharedPosts(frame.beams.map((beam) => beamFacts(beam, frame, groups))), frame),
  }
}

/** What one group of joists brings to a beam. */
interface Brought {
  readonly zone: string
  readonly tributary: number
  readonly clear: number
  readonly cantilever: number
  readonly between: boolean
  readonly hung: boolean
  readonly slanting: boolean
}

function broughtBy(group: JoistMeasures, beamId: string): readonly Brought[] {
  const { supports, line, clears } = group
  return supports.flatMap((support, i): readonly Brought[] => {
    if (support.id !== beamId) return []
    const widths = tributaryLengths(0, line.supports, line.length)
    const first = i === 0 ? (line.supports[0] ?? 0) : 0
    const last = i === supports.length - 1 ? line.length - (line.supports[i] ?? line.length) : 0
    return [
      {
        zone: group.zone,
        tributary: (widths[i] ?? 0) * alongBeam(support),
        clear: Math.max(0, clears[i - 1] ?? 0, clears[i] ?? 0),
        cantilever: Math.max(first, last),
        between: i > 0 && i < supports.length - 1,
        hung: support.seat === 'hung',
        slanting: support.skew !== 0,
      },
    ]
  })
}

/** What lies on a foot across the joists lies on more than a foot of a slanting beam. */
export function alongBeam({ skew }: Pick<JoistSupport, 'skew'>): number {
  return skew === 0 ? 1 : Math.cos((skew * Math.PI) / 18_000)
}

function beamFacts(beam: Beam, frame: Frame, groups: readonly JoistMeasures[]): BeamFacts {
  const posts = beam.postIds.flatMap((id) => frame.posts.find((post) => post.id === id) ?? [])
  const at = beam.postsAt
  const brought = groups.flatMap((group) => broughtBy(group, beam.id))
  const zones = [...new Set(brought.map(({ zone }) => zone))]
  const worst = (zone: string) =>
    Math.max(...brought.filter((one) => one.zone === zone).map(({ tributary }) => tributary))
  // joists of one zone lie beside each other, those of two zones end against each other
  // joists load a flush beam from its face; what lies on the beam itself it carries too
  const own = beam.flush ? sectionOf(beam.size).thickness * beam.plies : 0
  const tributary = zones.reduce((sum, zone) => sum + worst(zone), own)
  const lengths = tributaryLengths(0, at, beam.length)
  const meets = frame.beams.some(
    (other) => other !== beam && other.postIds.some((id) => beam.postIds.includes(id)),
  )
  return {
    beam,
    posts,
    spans: at.slice(1).map((x, i) => ticks(x - (at[i] ?? x))),
    overhangs: [ticks(at[0] ?? 0), ticks(beam.length - (at.at(-1) ?? beam.length))],
    joistSpan: ticks(Math.max(0, ...brought.map(({ clear }) => clear))),
    cantilever: ticks(Math.ceil(Math.max(0, ...brought.map(({ cantilever }) => cantilever)))),
    bothSides: zones.length > 1 || brought.some(({ between }) => between),
    twoLevels: !beam.flush && brought.some(({ hung }) => hung),
    slanting: meets || brought.some(({ slanting }) => slanting),
    tributary,
    areas: lengths.map((length) => squareFeet(length, tributary)),
  }
}

/** A post under the mitre of two beams carries both. */
function withSharedPosts(facts: readonly BeamFacts[]): readonly BeamFacts[] {
  const areaOf = (id: string) =>
    facts.reduce((sum, one) => sum + (one.areas[one.posts.findIndex((post) => post.id === id)] ?? 0), 0)
  return facts.map((one) => ({ ...one, areas: one.posts.map(({ id }) => areaOf(id)) }))
}

/** A post under a hip bears what the hip brings beside what its beams bring. */
function withHips(facts: readonly BeamFacts[], { hips }: Frame): readonly BeamFacts[] {
  const brought = (id: string) =>
    hips.filter(({ postId }) => postId === id).reduce((sum, hip) => sum + hipAreas(hip).post, 0)
  return facts.map((one) => ({
    ...one,
    areas: one.areas.map((area, i) => area + brought(one.posts[i]?.id ?? '')),
  }))
}
