import { common, firstCrossing, turnedPositive, twiceArea } from '../geometry/index.ts'
import { type Fault, type Job, levelList } from '../job/index.ts'
import { feet, inches } from '../units/index.ts'
import type { Level, OutlineEdge, ZoneEdge } from './types.ts'
import { zoneOver } from './zone-faults.ts'
import type { Part } from './zones.ts'

/** A shorter edge has no room for the boards that meet there: common practice, no source. */
const LEAST_EDGE = inches(12)

/** Farthest corner from the deck's left end at the wall, either way. */
const REACH = feet(100)

/** The platforms beside the deck, each on beams of its own: all their edges are open. */
export function furtherLevels(job: Job): readonly Level[] {
  return levelList(job.shape.levels).map(({ height, corners }, i) => {
    const number = i + 2
    const outline = turnedPositive(corners)
    const edges = outline.map((from, k): OutlineEdge => {
      const to = outline[(k + 1) % outline.length] ?? from
      return { number: number * 100 + k + 1, from, to, kind: 'open' }
    })
    return { number, outline, edges, deckTop: height }
  })
}

/** A level as one zone, its joists as the deck's or as the stated part says that it lies in. */
export function levelZone(job: Job, level: Level, number: number): Part {
  const edges = level.edges.map((edge): ZoneEdge => ({ ...edge, seam: null }))
  return {
    id: `zone-${number}`,
    level: level.number,
    joists: zoneOver(job, level)?.joists ?? job.shape.joists,
    outline: level.outline,
    edges,
  }
}

/** What is wrong with the outlines of further levels. */
export function levelFaults(levels: readonly Level[]): readonly Fault[] {
  const at = (message: string, fix: string): Fault => ({ path: 'shape.levels', message, fix })
  return levels.slice(1).flatMap((level, i): readonly Fault[] => {
    const name = `level ${level.number}`
    if (firstCrossing(level.outline) !== null)
      return [at(`the edges of ${name} cross or touch`, 'name its corners in their order around it')]
    if (level.outline.some(({ x, y }) => x < 0 || y < 0 || x > REACH || y > REACH))
      return [
        at(`a corner of ${name} lies left of the deck, behind its wall, or over 100 ft out`, 'move it in'),
      ]
    if (level.edges.some(({ from, to }) => Math.hypot(to.x - from.x, to.y - from.y) < LEAST_EDGE))
      return [at(`an edge of ${name} is shorter than 1 ft`, 'make it longer, or leave a corner out')]
    const over = levels
      .slice(0, i + 1)
      .find((other) =>
        common([level.outline], [other.outline]).some((shape) => twiceArea(shape) > 2 * inches(1) ** 2),
      )
    if (over === undefined) return []
    return [at(`${name} lies over level ${over.number}`, 'let levels lie side by side')]
  })
}
