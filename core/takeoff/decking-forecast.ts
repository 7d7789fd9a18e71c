import { sectionOf } from '../data/index.ts'
import { courseWidths, type Frame, slantingWidths } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import { type Ticks, ticks } from '../units/index.ts'

/** Width that a board loses from green to 15 % moisture, in 1/1000: 2.8 % (USDA FPL-RP-489, read). */
const SHRINKS = 28

/** Courses and gaps of decking laid dry and gapped, and laid wet and tight; borders are not among the courses. */
export interface DeckingForecast {
  readonly dry: { readonly courses: number; readonly gap: Ticks }
  readonly wet: {
    readonly courses: number
    /** to the nearest tick, when the boards have dried */
    readonly finalGap: Ticks
  }
}

/** How many courses each zone's field takes either way, and the gap that boards laid tight open; null without decking. */
export function deckingForecast(job: Job, { decked }: Pick<Frame, 'decked'>): DeckingForecast | null {
  if (decked.length === 0) return null
  const board = sectionOf(job.decking.size).depth
  const count = (gap: Ticks) =>
    decked.reduce((sum, { cover, degrees }) => {
      const widths =
        degrees === 0 ? courseWidths(cover, board, gap).widths : slantingWidths(cover, board, gap)
      return sum + widths.length
    }, 0)
  const { gap } = job.decking
  return {
    dry: { courses: count(gap), gap },
    wet: { courses: count(ticks(0)), finalGap: ticks(Math.round((board * SHRINKS) / 1000)) },
  }
}
