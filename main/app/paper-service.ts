import { fileNameFor } from '../../core/job/index.ts'
import {
  type Firm,
  fingerprint,
  NO_FIRM,
  NO_QUOTE,
  type PageOptions,
  type PaperSource,
  quoteWarnings,
  type SheetId,
} from '../../core/papers/index.ts'
import type { Methods } from '../../shared/contract/index.ts'
import type { KeptQuote, Store } from '../store/index.ts'
import type { Pool } from '../workers/index.ts'
import { firmInput } from './firm-file.ts'
import type { PdfMaker } from './papers.ts'
import { mustBePriced } from './priced.ts'
import type { Prices } from './prices.ts'
import { type MadeFrom, quoteReckoner } from './quote-service.ts'
import type { Rack } from './rack.ts'
import { ServiceError } from './service-types.ts'

type Asked = Methods['papers.make'][0]
type Answer<M extends keyof Methods> = Promise<Methods[M][1]>

/** The papers of the job in the window, the firm that stands on them, and the quotes that were sent. */
export interface PaperService {
  readonly preview: (asked: Asked) => Answer<'papers.preview'>
  readonly make: (asked: Asked) => Answer<'papers.make'>
  readonly order: (asked: Methods['papers.order'][0]) => Answer<'papers.order'>
  readonly quotes: (asked: Methods['quotes.read'][0]) => Answer<'quotes.read'>
  readonly sinceQuote: (asked: Methods['quotes.lines'][0]) => Answer<'quotes.lines'>
  readonly send: (asked: Methods['quotes.send'][0]) => Answer<'quotes.send'>
  readonly sentPaper: (asked: Methods['quotes.paper'][0]) => Methods['quotes.paper'][1]
  readonly changeOrder: (asked: Methods['quotes.changeOrder'][0]) => Answer<'quotes.changeOrder'>
  readonly firm: () => Firm
  readonly saveFirm: (firm: Firm) => Firm
}

/** Another window may send a quote at the same moment: so often the next number is tried. */
const TRIES = 3
/** Sheets that tell of options and changes; the others need no further estimates. */
const OF_QUOTES: readonly SheetId[] = ['quote', 'change', 'cost']

export function paperService(parts: {
  readonly store: Store
  readonly pool: Pool
  readonly prices: Prices
  readonly rack: Rack
  readonly now: () => Date
  readonly makePdf: PdfMaker
}): PaperService {
  const { store, pool, prices, rack, now, makePdf } = parts
  const pdfOf = async (
    source: PaperSource,
    asked: { readonly only: readonly SheetId[]; readonly page: PageOptions },
  ): Promise<Uint8Array> => {
    const { makePapers } = await import('./papers.ts')
    const { files } = await makePapers(source, { ...asked, formats: ['pdf'], stem: 'papers' }, makePdf)
    const [file] = files
    if (file === undefined || typeof file.content === 'string')
      throw new ServiceError('bad-input', 'The job has nothing for these sheets.')
    return file.content
  }
  const reckoner = quoteReckoner(store, pool)
  const firm = (): Firm => {
    const text = store.settings.read('firm')
    if (text === null) return NO_FIRM
    // what this program wrote reads well; what another version wrote may not, and is then as good as absent
    const read = firmInput.safeParse(JSON.parse(text))
    return read.success ? read.data : NO_FIRM
  }
  const estimated = async (from: Omit<MadeFrom, 'firm'>) =>
    mustBePriced(await pool.estimate({ ...from, givesWay: false }), 'There are no papers yet')
  const sourceOf = async (
    { statement, jobId, date, revision }: Omit<Asked, 'only' | 'page'>,
    withQuote: boolean,
  ): Promise<PaperSource> => {
    const standing = { statement, book: prices.book(), rack: rack.onHand(jobId), jobId, date }
    const estimate = await estimated(standing)
    return {
      estimate,
      book: standing.book,
      firm: firm(),
      date,
      revision: revision === '' ? fingerprint(estimate.job) : revision,
      quote: withQuote ? await reckoner.contextOf(standing, estimate) : NO_QUOTE,
    }
  }
  const aboutQuotes = ({ only }: Asked): boolean => only.some((id) => OF_QUOTES.includes(id))
  const mustBeKept = ({ jobId, revision }: Methods['quotes.paper'][0]): KeptQuote => {
    const kept = store.quotes.read(jobId, revision)
    if (kept === null) throw new ServiceError('not-found', 'There is no such quote in the store.')
    return kept
  }

  return {
    preview: async (asked) => {
      const { paperPages } = await import('./papers.ts')
      return { pages: paperPages(await sourceOf(asked, aboutQuotes(asked)), asked.only, asked.page) }
    },
    make: async (asked) => {
      const source = await sourceOf(asked, aboutQuotes(asked))
      return { fileName: fileNameFor(asked.statement, 'pdf'), base64: base64Of(await pdfOf(source, asked)) }
    },
    order: async ({ as, ...asked }) => {
      const { makePapers } = await import('./papers.ts')
      const stem = fileNameFor(asked.statement, 'x').slice(0, -2)
      const page = { paper: 'letter', scale: null } as const
      const wish = { only: ['order'], formats: [as], page, stem } as const
      const { files } = await makePapers(await sourceOf(asked, false), wish, makePdf)
      return {
        files: files.map(({ name, content }) => ({
          fileName: name,
          base64: Buffer.from(content as string).toString('base64'),
        })),
      }
    },
    quotes: async (asked) => {
      const source = await sourceOf({ ...asked, revision: '' }, true)
      const { options, change } = source.quote ?? NO_QUOTE
      const sent = asked.jobId === undefined ? [] : store.quotes.list(asked.jobId)
      return { sent, options, change, warnings: quoteWarnings(source) }
    },
    sinceQuote: async ({ statement, jobId }) => {
      const { pricing } = await estimated({ statement, book: prices.book(), rack: rack.onHand(jobId) })
      return reckoner.sinceLast(jobId, pricing)
    },
    send: async ({ jobId, page, ...asked }) => {
      if (store.jobs.read(jobId) === null)
        throw new ServiceError('not-found', 'The job is not in the store, so its quote has no number.')
      const source = await sourceOf({ ...asked, jobId, revision: '' }, true)
      const { totals } = source.estimate.pricing
      if (totals.method === 'none')
        throw new ServiceError('bad-input', 'The job says that its owner builds: there is no price to quote.')
      const { book, firm: sender, quote = NO_QUOTE } = source
      const madeFrom: MadeFrom = { statement: asked.statement, book, rack: rack.onHand(jobId), firm: sender }
      for (let turn = 0; turn < TRIES; turn += 1) {
        const next = store.quotes.next(jobId)
        const numbered = { ...source, revision: `${next.revision}`, quote: { ...quote, ...next } }
        const pdf = await pdfOf(numbered, { only: ['quote'], page })
        const sent = {
          ...next,
          date: asked.date,
          sentAt: now().toISOString(),
          price: totals.priceWithTax,
        }
        if (store.quotes.add({ ...sent, jobId, madeFrom: JSON.stringify(madeFrom), pdf }))
          return { sent, fileName: quoteName(sent, 'quote'), base64: base64Of(pdf) }
      }
      throw new ServiceError('conflict', 'Other windows are sending quotes too; send it again.')
    },
    sentPaper: (asked) => {
      const kept = mustBeKept(asked)
      return { fileName: quoteName(kept, 'quote'), base64: base64Of(kept.pdf) }
    },
    changeOrder: async ({ page, ...asked }) => {
      const kept = mustBeKept(asked)
      const change = await reckoner.changeOf(asked.jobId, asked.revision)
      if (change === null) throw new ServiceError('not-found', 'There is no revision before this one.')
      if (change.lines.length === 0)
        throw new ServiceError('not-found', 'Nothing that has a price changed since the revision before.')
      const { firm: sender, ...from } = JSON.parse(kept.madeFrom) as MadeFrom
      const { number, revision, date } = kept
      const source: PaperSource = {
        estimate: await estimated(from),
        book: from.book,
        firm: sender,
        date,
        revision: `${revision}`,
        quote: { ...NO_QUOTE, number, revision, change },
      }
      const pdf = await pdfOf(source, { only: ['change'], page })
      return { fileName: quoteName(kept, 'change order'), base64: base64Of(pdf) }
    },
    firm,
    saveFirm: (stated) => {
      store.settings.write('firm', JSON.stringify(stated))
      return stated
    },
  }
}

function base64Of(bytes: Uint8Array): string {
  return Buffer.from(bytes).toString('base64')
}

function quoteName({ number, revision }: { number: number; revision: number }, what: string): string {
  return `${what} ${number} revision ${revision}.pdf`
}
