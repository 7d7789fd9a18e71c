import type { Block } from '../sheet-types.ts'
import { fitsUnbroken } from './column-widths.ts'
import { columnWidth, type Flow } from './flow.ts'
import { TICK } from './table-block.ts'
import { BEFORE_HEADING } from './text-blocks.ts'

/** Running text is not set narrower than this, points. */
const NARROWEST_TEXT = 240
const MOST_COLUMNS = 4
/** over columns that something stands above, points */
const BEFORE = 8
/** Columns that do not end on a page are not begun in less than this share of it. */
const LEAST_SHARE = 0.3
/** What ends on a page of its own is not begun on less than this share of one before it. */
const LEAST_OF_TWO = 0.5
/** So little stands in one column, points: side by side its parts would be hard to see as one. */
const LITTLE = 140
/** Columns are made alike to so many points. */
const FINE = 12
/** Higher than anything that is tried for its height. */
const ENDLESS = 1e7

/**
 * In columns that have room for every block unbroken: two, or as many more as let it end on this page. What ends on this
 * page ends in columns that are as high as one another, so that the next block stands under all of them.
 */
export function inColumns(flow: Flow, blocks: readonly Block[], write: (flow: Flow) => void): void {
  const most = mostColumns(flow, blocks)
  if (most === 1) {
    write(flow)
    return
  }
  const fits = (count: number, height: number): boolean => {
    const trial = flow.trial(height)
    trial.beginColumns(count)
    write(trial)
    return trial.count === 1
  }
  const alone = flow.trial(ENDLESS)
  write(alone)
  if (alone.y - alone.top <= Math.min(LITTLE, flow.room)) {
    write(flow)
    return
  }
  const counts = Array.from({ length: most - 1 }, (_, i) => i + 2)
  const ending = (): number | undefined => counts.find((count) => fits(count, flow.room))
  const endsOnOne = counts.some((count) => fits(count, flow.whole))
  if (!flow.isFresh) flow.y += BEFORE
  let ends = ending()
  if (ends === undefined && flow.room < flow.whole * (endsOnOne ? LEAST_OF_TWO : LEAST_SHARE)) {
    flow.need(flow.whole)
    ends = ending()
  }
  const count = ends ?? most
  flow.isClose = ends === undefined && savesPage(flow, count, write)
  const height = ends === undefined ? null : leastHeight(flow.room, (high) => fits(count, high))
  const tail = ends === undefined ? leastTail(flow, count, write) : null
  flow.beginColumns(count)
  if (height !== null) flow.limit(height)
  if (tail !== null) flow.limitTail(tail.page, tail.height)
  write(flow)
  flow.endColumns()
  flow.isClose = false
}

/** Whether rows set closer leave nothing for the last page. */
function savesPage(flow: Flow, count: number, write: (flow: Flow) => void): boolean {
  const pages = (isClose: boolean): number => {
    const trial = flow.trial(flow.whole)
    trial.isClose = isClose
    trial.y = flow.y
    trial.beginColumns(count)
    write(trial)
    return trial.count
  }
  return pages(true) < pages(false)
}

/** How high the columns of the last of several pages are, so that they end alike there. */
function leastTail(
  flow: Flow,
  count: number,
  write: (flow: Flow) => void,
): { readonly page: number; readonly height: number } {
  const tried = (tail: { readonly page: number; readonly height: number } | null): number => {
    const trial = flow.trial(flow.whole)
    trial.y = flow.y
    trial.beginColumns(count)
    if (tail !== null) trial.limitTail(tail.page, tail.height)
    write(trial)
    return trial.count
  }
  const pages = tried(null)
  const page = pages - 1
  return { page, height: leastHeight(flow.whole, (height) => tried({ page, height }) <= pages) }
}

/** The least height to within a line at which it fits; so much is known to do. */
function leastHeight(enough: number, fits: (height: number) => boolean): number {
  let [low, high] = [0, enough]
  while (high - low > FINE) {
    const middle = (low + high) / 2
    if (fits(middle)) high = middle
    else low = middle
  }
  return high
}

function mostColumns(flow: Flow, blocks: readonly Block[]): number {
  for (let count = MOST_COLUMNS; count > 1; count -= 1) {
    const width = columnWidth(flow.width, count)
    const narrow = blocks.every((block) =>
      block.kind === 'table'
        ? fitsUnbroken(block.table, block.strong ?? [], width - (block.tick === true ? TICK : 0))
        : width >= NARROWEST_TEXT,
    )
    if (narrow) return count
  }
  return 1
}

/** On the page that is begun where all of it has room there, else on the next; what is longer than a page runs on. */
export function onOnePage(flow: Flow, write: (flow: Flow) => void): void {
  const trial = flow.trial(ENDLESS)
  write(trial)
  // at the top of a page a heading keeps no distance from what stands over it
  const over = flow.isFresh ? 0 : BEFORE_HEADING
  flow.need(Math.min(trial.y - trial.top + over, flow.whole))
  write(flow)
}
