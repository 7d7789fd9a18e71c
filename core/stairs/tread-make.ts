import { DCA_LIMITS, DECKING_SPANS, type LumberSize, sectionOf } from '../data/index.ts'
import type { Job } from '../job/index.ts'
import { lookUpRow } from '../rules/index.ts'
import { inches, type Ticks, ticks } from '../units/index.ts'
import { spacesIn } from './stringer-pattern.ts'
import type { StringerPattern } from './types.ts'

/** The board that closes a riser: a 5/4x6 on edge. */
const RISER_BOARD = sectionOf('5/4x6')

export interface TreadMake {
  readonly size: LumberSize
  readonly thickness: Ticks
  readonly boards: number
  readonly depth: Ticks
  readonly nosing: Ticks
  /** thickness of the board in each riser; 0 where they are open */
  readonly riserBoard: Ticks
  /** clear opening from one tread to the next, ticks, exact, less the riser's board where there is one */
  readonly opening: number
  /** greatest distance between stringers, ticks */
  readonly mostApart: number
}

/**
 * How a tread is made: as few boards as cover the run, with the decking's gap between them. It butts against the board of
 * the riser behind it, and so reaches over that of the riser under it by what it is deeper than the run.
 */
export function treadMake(job: Job, rise: number): TreadMake {
  const { stairs, decking } = job
  const size = stairs.treads === 'as the decking' ? decking.size : stairs.treads
  const { thickness, depth: board } = sectionOf(size)
  const boards = Math.max(1, Math.ceil((stairs.run + decking.gap) / (board + decking.gap)))
  const depth = ticks(boards * board + (boards - 1) * decking.gap)
  const closed = stairs.risers === 'a board'
  return {
    size,
    thickness,
    boards,
    depth,
    nosing: ticks(depth - stairs.run),
    riserBoard: closed ? RISER_BOARD.thickness : ticks(0),
    opening: Math.max(0, rise - thickness - (closed ? RISER_BOARD.depth : 0)),
    mostApart: inches(mostApart(size, stairs.stringers)),
  }
}

/** How far apart stringers of the same stairs would stand under other treads, centre to centre, ticks. */
export function spacingFor(size: LumberSize, { kind, spacing, count }: StringerPattern): number {
  const between = spacing * (count - 1)
  return between / spacesIn(between, inches(mostApart(size, kind)))
}

/**
 * Greatest spacing of stringers, inches: what the tread boards span (IRC Table R507.7; the 2021 single-span column, from
 * memory, for treads that end at each closed stringer) and what the deck guide allows, the lesser.
 */
function mostApart(size: LumberSize, stringers: 'cut' | 'closed'): number {
  const row = size === '5/4x6' ? '1-1/4 in wood' : '2 in wood'
  const at = stringers === 'cut' ? ['2018', 'multiple spans'] : ['2021', 'single span']
  const found = lookUpRow(DECKING_SPANS, { at, row, column: 'perpendicular' })
  const guide = stringers === 'cut' ? DCA_LIMITS.cutStringerSpacing : DCA_LIMITS.closedStringerSpacing
  return Math.min(guide.value, found.kind === 'row' && found.value !== null ? found.value : guide.value)
}
