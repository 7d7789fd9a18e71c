import type { Job } from '../job/index.ts'
import type { Layout, ViewEdge, ZoneView } from '../layout/index.ts'
import type { Ticks } from '../units/index.ts'
import { frameBreakers } from './breakers.ts'
import { type Course, type Decked, frameDecking } from './decking.ts'
import { fieldOf } from './decking-field.ts'
import { BoardNames, type EdgeBoard, frameHips, frameLedgers, frameRims } from './edge-boards.ts'
import { frameHeaders } from './headers.ts'
import { joistPlaces, joistRoom, type ViewOpening } from './joist-places.ts'
import { jointedPlaces } from './joist-runs.ts'
import { frameJoists, JoistNames, middleBeamsOf, type PlacedJoist } from './joists.ts'
import { type LaidZone, type Laying, linesUnder } from './laying.ts'
import type { LevelDimensions } from './placed-beams.ts'
import type { DeckedZone, Member } from './types.ts'
import { withUnderJoists } from './under-joists.ts'

/** A part of the deck with its joists, the boards along its edges and its decking, on no beam yet. */
export interface FramedZone {
  readonly id: string
  readonly view: ZoneView
  readonly joists: readonly PlacedJoist[]
  readonly boards: readonly EdgeBoard[]
  readonly hips: readonly EdgeBoard[]
  readonly openings: readonly ViewOpening[]
  readonly headers: readonly Member[]
  readonly level: number
  readonly laying: Laying
  /** breakers among them */
  readonly courses: readonly Course[]
  readonly decked: DeckedZone
  readonly short: Ticks
}

/** Every part of a layout in turn, its members named through the deck. */
export function frameZones(
  job: Job,
  levels: LevelDimensions,
  layout: Layout,
  laid: readonly LaidZone[],
): readonly FramedZone[] {
  const joistNames = new JoistNames()
  const boardNames = new BoardNames()
  let firstCourse = 1
  let firstBreaker = 1
  return laid.map(({ zone, view, laying }): FramedZone => {
    const d = levels(zone.level)
    const level = layout.levels.find(({ number }) => number === zone.level) ?? layout.levels[0]
    if (level === undefined) throw new Error('a deck has a level')
    const across = level.outline.map((corner) => view.turned(corner).x)
    const openings = zone.openings.map((opening): ViewOpening => {
      const [a, b] = [
        view.turned({ x: opening.x0, y: opening.y0 }),
        view.turned({ x: opening.x1, y: opening.y1 }),
      ]
      return { number: opening.number, x0: a.x, y0: a.y, x1: b.x, y1: b.y }
    })
    const extent = [Math.min(...across), Math.max(...across)] as const
    const room = joistRoom(view, d.joist.thickness)
    const whole = withUnderJoists(
      room,
      joistPlaces(job, view, extent, d.joist.thickness, openings),
      linesUnder(job, view, laying),
      openings,
      { spacing: job.frame.joists.spacing, gap: laying.gap },
    )
    const ledgers = frameLedgers(job, d, view, boardNames)
    // a rim names the joists that end at it, and they name it as what their length ends at
    const rimIds = frameRims(job, d, view, () => [], boardNames.copy())
    const hips = frameHips(job, d, view, underHip(zone))
    const ids = new Map([
      ...ledgers.map(({ edge, id }) => [edge.index, id] as const),
      ...rimIds.map(({ edge, plies }) => [edge.index, plies[0]?.id ?? ''] as const),
      ...hips.map(({ edge, id }) => [edge.index, id] as const),
      ...zone.supports
        .filter(({ flush, edge }) => flush && edge >= 0)
        .map(({ edge, id }) => [edge, id] as const),
    ])
    const zoned = { view, supports: zone.supports }
    const places = jointedPlaces(job, room, whole, (place) => middleBeamsOf(job, zoned, place, ids))
    const joists = frameJoists(job, d, zoned, places, ids, joistNames)
    const joistsAt = (edge: ViewEdge) => meeting(joists, edge).map(({ member }) => member.id)
    const rims = frameRims(job, d, view, joistsAt, boardNames)
    const decked: Decked = {
      field: fieldOf({ job, view, laying, level, levels: layout.levels }),
      openings,
      joists,
    }
    const decking = frameDecking(job, d, view, laying, decked, firstCourse)
    firstCourse += decking.field.rows
    const breakers = frameBreakers(job, d, view, laying, decked, firstBreaker)
    firstBreaker += breakers.length
    return {
      id: zone.id,
      view,
      joists,
      boards: [...ledgers, ...rims],
      hips,
      openings,
      headers: frameHeaders(job, d, view, openings, joists),
      level: zone.level,
      laying,
      courses: [...decking.courses, ...breakers],
      decked: decking.field,
      short: decking.short,
    }
  })
}

/** What carries a part's ply of a hip: the beam that is mitred under it, and the ledger at the inside corner. */
function underHip({ supports }: LaidZone['zone']): readonly string[] {
  const mitred = supports.filter(({ cuts }) => cuts.some((cut) => cut !== null && cut.meets !== null))
  return [...supports.filter(({ kind }) => kind === 'ledger'), ...mitred].map(({ id }) => id)
}

/** Joists that start or end at an edge. */
export function meeting(joists: readonly PlacedJoist[], edge: ViewEdge): readonly PlacedJoist[] {
  return joists.filter(
    ({ place }) => place.startsAt?.index === edge.index || place.endsAt?.index === edge.index,
  )
}
