import { sectionOf } from '../data/index.ts'
import type { Fault, Job } from '../job/index.ts'
import { inches, printInches, printLength, type Ticks, ticks } from '../units/index.ts'
import { beamThickness } from './beam-on-post.ts'
import type { Level, SupportLine, Zone, ZoneEdge } from './types.ts'
import { beamAt, type ViewEdge, zoneView } from './zone-view.ts'
import type { Part } from './zones.ts'

/** Least bearing of a joist on wood, IRC 2021 R507.6.1: 1-1/2 in. */
const LEAST_BEARING = inches(1.5)

/** Where joists of a level end along an edge of a higher one: zones by index, edges by theirs. */
interface Meeting {
  readonly lower: { readonly zone: number; readonly edge: number; readonly level: number }
  readonly higher: { readonly zone: number; readonly edge: number; readonly level: number }
  /** whose fields the beam at the higher level's edge goes by */
  readonly beam: 'front' | 'rear'
  /** from decking to decking */
  readonly drop: Ticks
}

/** The zones with every edge marked at which one beam carries two levels, where the job asks for that. */
export function withLevelBeams(job: Job, levels: readonly Level[], zones: readonly Part[]): readonly Part[] {
  const marks = meetingsOf(job, levels, zones).filter((one) => wrongWith(job, one) === null)
  const seamAt = (zone: number, edge: number): ZoneEdge['seam'] => {
    const is = (at: Meeting['lower']) => at.zone === zone && at.edge === edge
    if (marks.some(({ lower }) => is(lower))) return 'higher level’s beam'
    return marks.some(({ higher }) => is(higher)) ? 'lower level’s joists' : null
  }
  return zones.map((zone, i) => ({
    ...zone,
    edges: zone.edges.map((edge, k) => ({ ...edge, seam: seamAt(i, k) ?? edge.seam })),
  }))
}

/** What keeps levels from sharing a beam as the job asks. */
export function levelBeamFaults(
  job: Job,
  levels: readonly Level[],
  zones: readonly Part[],
): readonly Fault[] {
  if (job.shape.levelBeams === 'own') return []
  const meetings = meetingsOf(job, levels, zones)
  if (meetings.length > 0) return meetings.flatMap((one) => wrongWith(job, one) ?? [])
  return [
    {
      path: 'shape.levelBeams',
      message: 'no level’s joists end along the edge of a higher level: there is no beam for both',
      fix: 'let a level lie along such an edge with one of its own that is no longer, or give each level its own beams',
    },
  ]
}

function meetingsOf(job: Job, levels: readonly Level[], zones: readonly Part[]): readonly Meeting[] {
  if (job.shape.levelBeams === 'own') return []
  const topOf = (zone: Part) => levels.find(({ number }) => number === zone.level)?.deckTop ?? job.size.height
  const seen = zones.map((zone) => ({ zone, edges: acrossJoists(job, zone) }))
  return seen.flatMap(({ zone: low, edges }, lower) =>
    seen.flatMap(({ zone: high, edges: others }, higher) => {
      const drop = ticks(topOf(high) - topOf(low))
      if (drop <= 0 || high.joists !== low.joists) return []
      return edges.flatMap((own): readonly Meeting[] => {
        const along = others.find((other) => liesAlong(own.edge, other.edge))
        if (along === undefined) return []
        return [
          {
            lower: { zone: lower, edge: own.index, level: low.level },
            higher: { zone: higher, edge: along.index, level: high.level },
            beam: beamAt(along),
            drop,
          },
        ]
      })
    }),
  )
}

/** Open edges at which a zone's joists end. */
function acrossJoists(job: Job, zone: Part): readonly ViewEdge[] {
  return zoneView(job, zone).edges.filter(
    ({ role, edge: { kind, from, to } }) =>
      role !== 'side' && kind === 'open' && (from.x === to.x || from.y === to.y),
  )
}

/** Whether an edge lies on another all along, the two facing each other. */
function liesAlong(own: ZoneEdge, other: ZoneEdge): boolean {
  const axis = own.from.y === own.to.y ? 'x' : 'y'
  const across = axis === 'x' ? 'y' : 'x'
  if (other.from[across] !== other.to[across] || other.from[across] !== own.from[across]) return false
  const way = Math.sign(own.to[axis] - own.from[axis])
  return (
    Math.sign(other.to[axis] - other.from[axis]) === -way &&
    (own.from[axis] - other.to[axis]) * way >= 0 &&
    (other.from[axis] - own.to[axis]) * way >= 0
  )
}

/** Why the joists of a lower level cannot hang from the beam of the higher one, or null. */
function wrongWith({ frame }: Job, { lower, higher, beam, drop }: Meeting): Fault | null {
  const spec = frame.beams[beam]
  const joist = sectionOf(frame.joists.size)
  const { depth } = sectionOf(spec.size)
  if (spec.set === 'flush')
    return {
      path: `frame.beams.${beam}.set`,
      message: `the beam that levels ${higher.level} and ${lower.level} would share is flush: joists of one level hang from it already`,
      fix: 'drop it, or give each level its own beams',
    }
  if (drop < joist.depth || drop > depth)
    return {
      path: 'shape.levels',
      message: `level ${lower.level} lies ${printLength(drop)} below level ${higher.level}; joists ${printInches(joist.depth)} deep hang from the side of a beam ${printInches(depth)} deep, under joists as deep as themselves, only from ${printInches(joist.depth)} to ${printInches(depth)} below`,
      fix: 'change the height of one of the two, take other joists or another beam, or give each level its own beams',
    }
  const bearing = beamThickness(spec) - joist.thickness * frame.rimPlies
  if (bearing < LEAST_BEARING)
    return {
      path: `frame.beams.${beam}.plies`,
      message: `joists of level ${higher.level} would bear ${printInches(ticks(Math.max(0, bearing)))} on the beam at its edge, for the rim stands on it too; 1-1/2 in are needed (IRC 2021 R507.6.1)`,
      fix: 'give the beam another ply, or the rim one only',
    }
  return null
}

/** Beams of higher levels at whose side a zone's joists end, each with the edge of this zone. */
export function beamsOfHigher(zone: Zone, zones: readonly Zone[]): readonly SupportLine[] {
  return zone.edges.flatMap(({ seam, from, to }, edge): readonly SupportLine[] => {
    if (seam !== 'higher level’s beam') return []
    const line = zones
      .filter(({ edges }) => edges.some((one) => one.seam === 'lower level’s joists'))
      .flatMap(({ supports }) => supports)
      .find((one) => one.kind === 'beam' && !one.flush && liesBehind(one, from, to))
    return line === undefined ? [] : [{ ...line, flush: true, edge, ofHigher: true }]
  })
}

/** Whether a beam lies along an edge from end to end, within its own thickness. */
function liesBehind({ line }: SupportLine, from: ZoneEdge['from'], to: ZoneEdge['to']): boolean {
  const axis = from.y === to.y ? 'x' : 'y'
  const across = axis === 'x' ? 'y' : 'x'
  const [low, high] = [Math.min(from[axis], to[axis]), Math.max(from[axis], to[axis])]
  return (
    line.from[across] === line.to[across] &&
    Math.abs(line.from[across] - from[across]) <= THICKEST / 2 &&
    Math.min(line.from[axis], line.to[axis]) <= low + 1 &&
    Math.max(line.from[axis], line.to[axis]) >= high - 1
  )
}

/** Three plies. */
const THICKEST = inches(4.5)
