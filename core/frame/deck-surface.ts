import type { Job } from '../job/index.ts'
import type { Layout, ZoneView } from '../layout/index.ts'
import { frameBorder } from './border.ts'
import { frameDeckBlocking } from './deck-blocking.ts'
import type { Course } from './decking.ts'
import { frameFascia } from './fascia.ts'
import { freeStretches } from './free-edges.ts'
import type { PlacedJoist } from './joists.ts'
import type { Laying } from './laying.ts'
import type { LevelDimensions } from './placed-beams.ts'
import type { Member } from './types.ts'

/** A zone as far as what lies on it and along it asks. */
interface SurfacedZone {
  readonly level: number
  readonly view: ZoneView
  readonly laying: Laying
  readonly joists: readonly PlacedJoist[]
}

/** Border boards of every level, numbered through the deck. */
export function borderOf(
  job: Job,
  levels: LevelDimensions,
  layout: Layout,
  zones: readonly SurfacedZone[],
): readonly Course[] {
  const boards: Course[] = []
  for (const level of layout.levels) {
    const own = zones.filter((zone) => zone.level === level.number)
    const laying = own[0]?.laying
    if (laying === undefined) continue
    const joists = own.flatMap((zone) => zone.joists)
    boards.push(
      ...frameBorder(job, levels(level.number), level, layout.levels, laying, joists, boards.length + 1),
    )
  }
  return boards
}

/**
 * Free edges of every level, and the fascia along them, numbered through the deck.
 * @param boards those along the levels' edges and of the decking, in which none lies
 */
export function fasciaOf(job: Job, levels: LevelDimensions, layout: Layout, boards: readonly Member[]) {
  let first = 1
  const before = [...boards]
  return layout.levels.map((level) => {
    const d = levels(level.number)
    const stretches = freeStretches(job, d, level, layout)
    const own = frameFascia(job, d, level, stretches, first, before)
    first += own.length
    before.push(...own.map(({ member }) => member))
    const edges = stretches.map(({ level: of, number, length, over, clear }) => ({
      level: of,
      number,
      length,
      over: over?.number ?? null,
      clear,
    }))
    return { edges, boards: own }
  })
}

/** Blocks under the decking's ends, but for those whose place a block over a beam has. */
export function deckBlocks(
  job: Job,
  levels: LevelDimensions,
  zones: readonly SurfacedZone[],
  overBeams: readonly Member[],
): readonly Member[] {
  const blocks: Member[] = []
  for (const { level, view, laying, joists } of zones)
    blocks.push(
      ...frameDeckBlocking(
        job,
        levels(level),
        view,
        laying,
        joists,
        [...overBeams, ...blocks],
        blocks.length + 1,
      ),
    )
  return blocks
}
