import { estimate } from '../../core/estimate.ts'
import { aboutOf, layOutPages, makeSheets, NO_FIRM } from '../../core/papers/index.ts'
import { SAMPLE_BOOK } from '../../core/pricing/index.ts'
import { makePdf } from '../../main/exports/pdf/index.ts'
import { loadHighs } from '../../main/workers/lp/highs.ts'
import { calibrate } from './calibration.ts'

/** The whole set of a large deck as one PDF: 48 ft by 14 ft, joists at 12 in, nine posts. Target 6 s, 300 MB, 5 MB. */
const JOB = {
  name: 'Largest',
  size: { width: '48 ft', depth: '14 ft', height: '9 ft' },
  frame: {
    joists: { size: '2x10', spacing: '12 in' },
    beams: { front: { size: '2x12', plies: 3, setback: '24 in', posts: 9, inset: '12 in' } },
  },
}

const unit = calibrate()
const made = estimate(JOB, SAMPLE_BOOK, await loadHighs())
if (!made.ok || made.estimate.pricing === null) throw new Error('the largest deck has a price')
const { pricing } = made.estimate
const source = {
  estimate: { ...made.estimate, pricing },
  book: SAMPLE_BOOK,
  firm: NO_FIRM,
  date: '',
  revision: '1',
}
const start = { clock: performance.now(), processor: process.cpuUsage() }
const pages = layOutPages(makeSheets(source), aboutOf(source), { paper: 'letter', scale: null })
const pdf = await makePdf(pages, aboutOf(source))
const { user, system } = process.cpuUsage(start.processor)
const processor = (user + system) / 1000
process.stdout.write(
  `Papers of a deck of 48 ft: ${pages.length} pages, ${(pdf.byteLength / 1e6).toFixed(2)} MB, clock ${(performance.now() - start.clock).toFixed(0)} ms, processor ${processor.toFixed(0)} ms (${(processor / unit.processor).toFixed(1)} × calibration), ${(process.memoryUsage().rss / 1e6).toFixed(0)} MB with the engine\n`,
)
