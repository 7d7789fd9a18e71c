import { twiceArea } from '../geometry/index.ts'
import { type Fault, isRectangle, type Job, middleBeamList } from '../job/index.ts'
import { fail, ok, type Result, TICKS_PER_FOOT } from '../units/index.ts'
import { layoutFaults } from './field-faults.ts'
import { flushFaults } from './flush-faults.ts'
import { hipFaults, withMitres } from './hip-beams.ts'
import { beamsOfHigher, levelBeamFaults, withLevelBeams } from './level-beams.ts'
import { furtherLevels, levelFaults, levelZone } from './levels.ts'
import { openingFaults, openingsOf, zoneOf } from './openings.ts'
import { outlineOf } from './outline.ts'
import { outlineFaults, unknownEdges } from './outline-faults.ts'
import { ringFaults, roomFaults } from './room-faults.ts'
import { LineNames, supportLines } from './supports.ts'
import type { Layout, Level, SupportLine, Zone } from './types.ts'
import { zoneFaults } from './zone-faults.ts'
import { zoneView } from './zone-view.ts'
import { zonesOf } from './zones.ts'

/** Outline, zones and support lines of a job, or what keeps it from being framed, each fault at its field. */
export function layOut(job: Job): Result<Layout, readonly Fault[]> {
  const outline = outlineOf(job)
  const further = furtherLevels(job)
  const faults = [
    ...(isRectangle(job) ? [] : outlineFaults(job, outline)),
    ...unknownEdges(job, outline.edges, further),
    ...layoutFaults(job),
  ]
  if (faults.length > 0) return fail(faults)
  const first: Level = {
    number: 1,
    outline: outline.corners,
    edges: outline.edges,
    deckTop: job.size.height,
  }
  const levels = [first, ...further]
  const beside = [...levelFaults(levels), ...zoneFaults(job, levels)]
  if (beside.length > 0) return fail(beside)
  const names = new LineNames()
  const own = zonesOf(job, outline)
  const bare = [...own, ...further.map((level, i) => levelZone(job, level, own.length + i + 1))]
  const parts = withLevelBeams(job, levels, bare)
  const misfits = [
    ...levelBeamFaults(job, levels, bare),
    ...ringFaults(
      outline.corners,
      own.map((part) => part.outline),
    ),
    ...roomFaults(
      job,
      parts.map((part) => zoneView(job, part)),
    ),
  ]
  if (misfits.length > 0) return fail(misfits)
  const outlineAt = (level: number) => levels.find(({ number }) => number === level)?.outline ?? []
  const supported = withMitres(
    parts.map((zone) => ({ ...zone, supports: supportLines(job, zone, outlineAt(zone.level), names) })),
  )
  const openings = openingsOf(job)
  const misplaced = [
    ...openingFaults(openings, supported),
    ...middleBeamFaults(job, supported),
    ...flushFaults(job, supported),
    ...(job.shape.seams === 'hip' ? hipFaults(supported) : []),
  ]
  if (misplaced.length > 0) return fail(misplaced)
  const zones = supported.map((zone) => ({
    ...zone,
    openings: openings.filter((opening) => zoneOf(opening, supported) === zone),
  }))
  return ok({
    outline: outline.corners,
    edges: outline.edges,
    zones: zones.map((zone) => ({
      ...zone,
      supports: [...zone.supports, ...shared(zone, zones), ...beamsOfHigher(zone, zones)],
    })),
    levels,
    deckTop: job.size.height,
    areaSquareFeet:
      levels.reduce((sum, level) => sum + twiceArea(level.outline), 0) / 2 / TICKS_PER_FOOT ** 2,
  })
}

/** Middle beams that no part of the deck has. */
function middleBeamFaults(job: Job, zones: readonly Pick<Zone, 'supports'>[]): readonly Fault[] {
  const stated = middleBeamList(job.shape.middleBeams).length
  const beams = zones.flatMap(({ supports }) => supports).filter(({ key }) => key.startsWith('middle'))
  const places = new Set(beams.map(({ line }) => (line.from.y === line.to.y ? line.from.y : line.from.x)))
  if (places.size >= stated) return []
  return [
    {
      path: 'shape.middleBeams',
      message: 'a middle beam lies out of the outline, or has less than 4 ft in it',
      fix: 'give how far it lies from the wall, within the deck',
    },
  ]
}

/** Beams of other zones on whose seam this zone's joists end, each with the edge of this zone that it lies along. */
function shared(zone: Zone, zones: readonly Zone[]): readonly SupportLine[] {
  return zones
    .filter((other) => other !== zone)
    .flatMap((other) =>
      other.supports.flatMap((line): readonly SupportLine[] => {
        const edge = other.edges[line.edge]
        if (line.kind !== 'beam' || edge?.seam !== 'shared beam') return []
        const own = zone.edges.findIndex(
          ({ seam, from, to }) =>
            seam === 'other zone’s beam' &&
            from.x === edge.to.x &&
            from.y === edge.to.y &&
            to.x === edge.from.x &&
            to.y === edge.from.y,
        )
        return own < 0 ? [] : [{ ...line, edge: own }]
      }),
    )
}
