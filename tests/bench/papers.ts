import { readFileSync } from 'node:fs'
import { estimate } from '../../core/estimate.ts'
import { aboutOf, layOutPages, makeSheets, NO_FIRM } from '../../core/papers/index.ts'
import { SAMPLE_BOOK } from '../../core/pricing/index.ts'
import { makePdf } from '../../main/exports/pdf/index.ts'
import { loadHighs } from '../../main/workers/lp/highs.ts'
import { calibrate } from './calibration.ts'

/** The whole set of the largest deck of the catalogue as one PDF. Target 6 s, 300 MB, 5 MB. */
const file = new URL('../fixtures/catalogue/largest.json', import.meta.url)
const { job } = JSON.parse(readFileSync(file, 'utf8'))

const unit = calibrate()
const made = estimate(job, SAMPLE_BOOK, await loadHighs())
if (!made.ok || made.estimate.pricing === null) throw new Error('the largest deck has a price')
const { pricing } = made.estimate
const source = {
  estimate: { ...made.estimate, pricing },
  book: SAMPLE_BOOK,
  firm: NO_FIRM,
  date: '',
  revision: '1',
}
const start = { clock: performance.now(), processor: process.cpuUsage(), memory: process.memoryUsage().rss }
const pages = layOutPages(makeSheets(source), aboutOf(source), { paper: 'letter', scale: null })
const pdf = await makePdf(pages, aboutOf(source))
const { user, system } = process.cpuUsage(start.processor)
const processor = (user + system) / 1000
process.stdout.write(
  `Papers of the largest deck: ${pages.length} pages, ${(pdf.byteLength / 1e6).toFixed(2)} MB, clock ${(performance.now() - start.clock).toFixed(0)} ms, processor ${processor.toFixed(0)} ms (${(processor / unit.processor).toFixed(1)} × calibration), ${(process.memoryUsage().rss / 1e6).toFixed(0)} MB, of which ${(start.memory / 1e6).toFixed(0)} MB were there after the estimate with its engine\n`,
)
