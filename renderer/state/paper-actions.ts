import type { Firm } from '../../core/papers/index.ts'
import type { PaperRequest, Stated } from '../../shared/contract/index.ts'
import { sentenceOf } from '../client/call-error.ts'
import type { PapersState } from './papers-state.ts'
import type { SessionParts } from './session-parts.ts'

type Choice = Partial<Pick<PapersState, 'only' | 'paper' | 'scale' | 'metric' | 'date' | 'revision'>>

interface MadeFile {
  readonly fileName: string
  readonly base64: string
}

export interface PaperActions {
  choosePapers(choice: Choice): void
  /** asks for the pages as they would be printed; nothing where those shown are of this very request */
  previewPapers(): Promise<void>
  /** makes the PDF and gives it with its name, or null where that failed (and was said) */
  makePapers(): Promise<MadeFile | null>
  /** the order of each supplier as text or as a table; none where that failed (and was said) */
  makeOrder(as: 'txt' | 'csv'): Promise<readonly MadeFile[]>
  /** asks what is offered in the job, what was sent of it and what to look at */
  readQuotes(): Promise<void>
  /** keeps the quote under its next number or revision, and gives the paper */
  sendQuote(): Promise<MadeFile | null>
  /** a quote as it was sent */
  sentQuote(revision: number): Promise<MadeFile | null>
  /** the difference to the revision before, to be signed */
  changeOrder(revision: number): Promise<MadeFile | null>
  readFirm(): Promise<void>
  saveFirm(firm: Firm): Promise<void>
}

export function paperActions({ client, get, set, say }: SessionParts): PaperActions {
  const change = (patch: Partial<PapersState>): void => set({ papers: { ...get().papers, ...patch } })
  const request = (): Stated & PaperRequest => {
    const { papers, history, open } = get()
    const { only, paper, scale, metric, date, revision } = papers
    return {
      statement: history.present,
      ...(open ? { jobId: open.id } : {}),
      only,
      page: { paper, scale, metric },
      date,
      revision,
    }
  }
  const file = async <T>(make: () => Promise<T>): Promise<T | null> => {
    change({ busy: 'file' })
    try {
      return await make()
    } catch (error) {
      say(sentenceOf(error))
      return null
    } finally {
      change({ busy: null })
    }
  }
  /** newest request about quotes */
  let asking = 0
  const readQuotes = async (): Promise<void> => {
    const { statement, jobId, date } = request()
    asking += 1
    const own = asking
    try {
      const desk = await client.call('quotes.read', { statement, ...(jobId ? { jobId } : {}), date })
      if (own === asking) change({ desk, deskFailure: null })
    } catch (error) {
      if (own === asking) change({ deskFailure: sentenceOf(error) })
    }
  }
  /** newest request for pages; an answer to an older one is dropped */
  let newest = ''

  return {
    choosePapers: change,
    async previewPapers() {
      const asked = request()
      if (asked.only.length === 0) {
        change({ pages: [], pagesOf: '', failure: null })
        return
      }
      const key = JSON.stringify([asked, get().papers.firm, get().prices?.book.date])
      if (key === get().papers.pagesOf || key === newest) return
      newest = key
      change({ busy: 'preview', failure: null })
      try {
        const { pages } = await client.call('papers.preview', asked)
        if (newest === key) change({ pages, pagesOf: key, busy: null })
      } catch (error) {
        if (newest === key) change({ busy: null, failure: sentenceOf(error) })
      } finally {
        if (newest === key) newest = ''
      }
    },
    makePapers: () => file(() => client.call('papers.make', request())),
    makeOrder: async (as) => {
      const { only: _only, page: _page, ...asked } = request()
      return (await file(() => client.call('papers.order', { ...asked, as })))?.files ?? []
    },
    readQuotes,
    async sendQuote() {
      const { statement, jobId, date, page } = request()
      if (jobId === undefined) return null
      const made = await file(() => client.call('quotes.send', { statement, jobId, date, page }))
      if (made !== null) await readQuotes()
      return made
    },
    async sentQuote(revision) {
      const { jobId } = request()
      if (jobId === undefined) return null
      return file(() => client.call('quotes.paper', { jobId, revision }))
    },
    async changeOrder(revision) {
      const { jobId, page } = request()
      if (jobId === undefined) return null
      return file(() => client.call('quotes.changeOrder', { jobId, revision, page }))
    },
    async readFirm() {
      try {
        change({ firm: await client.call('firm.read', {}) })
      } catch (error) {
        say(sentenceOf(error))
      }
    },
    async saveFirm(firm) {
      try {
        change({ firm: await client.call('firm.save', firm) })
      } catch (error) {
        say(sentenceOf(error))
      }
    },
  }
}
