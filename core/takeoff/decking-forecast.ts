import { sectionOf } from '../data/index.ts'
import { courseWidths, type Frame } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import { type Ticks, ticks } from '../units/index.ts'

/** Width that a board loses from green to 15 % moisture, in 1/1000: 2.8 % (USDA FPL-RP-489, read). */
const SHRINKS = 28

/** Courses and gaps of decking laid dry and gapped, and laid wet and tight. */
export interface DeckingForecast {
  readonly dry: { readonly courses: number; readonly gap: Ticks }
  readonly wet: {
    readonly courses: number
    /** to the nearest tick, when the boards have dried */
    readonly finalGap: Ticks
  }
}

/** How many courses the stretch takes either way, and the gap that boards laid tight open; null without decking. */
export function deckingForecast(job: Job, frame: Frame): DeckingForecast | null {
  const courses = frame.members.filter(({ role }) => role === 'decking')
  const first = courses[0]
  if (first === undefined) return null
  const along = first.box.x1 - first.box.x0 >= first.box.y1 - first.box.y0
  const from = Math.min(...courses.map(({ box }) => (along ? box.y0 : box.x0)))
  const to = Math.max(...courses.map(({ box }) => (along ? box.y1 : box.x1)))
  const cover = ticks(Math.round(to - from))
  const board = sectionOf(job.decking.size).depth
  const count = (gap: Ticks) => courseWidths(cover, board, gap).widths.length
  const { gap } = job.decking
  return {
    dry: { courses: count(gap), gap },
    wet: { courses: count(ticks(0)), finalGap: ticks(Math.round((board * SHRINKS) / 1000)) },
  }
}
