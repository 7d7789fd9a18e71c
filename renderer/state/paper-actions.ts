import type { Firm } from '../../core/papers/index.ts'
import type { PaperRequest, Stated } from '../../shared/contract/index.ts'
import { sentenceOf } from '../client/call-error.ts'
import type { PapersState } from './papers-state.ts'
import type { SessionParts } from './session-parts.ts'

type Choice = Partial<Pick<PapersState, 'only' | 'paper' | 'scale' | 'date' | 'revision'>>

export interface PaperActions {
  choosePapers(choice: Choice): void
  /** asks for the pages as they would be printed; nothing where those shown are of this very request */
  previewPapers(): Promise<void>
  /** makes the PDF and gives it with its name, or null where that failed (and was said) */
  makePapers(): Promise<{ readonly fileName: string; readonly base64: string } | null>
  readFirm(): Promise<void>
  saveFirm(firm: Firm): Promise<void>
}

export function paperActions({ client, get, set, say }: SessionParts): PaperActions {
  const change = (patch: Partial<PapersState>): void => set({ papers: { ...get().papers, ...patch } })
  const request = (): Stated & PaperRequest => {
    const { papers, history, open } = get()
    const { only, paper, scale, date, revision } = papers
    return {
      statement: history.present,
      ...(open ? { jobId: open.id } : {}),
      only,
      page: { paper, scale },
      date,
      revision,
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
    async makePapers() {
      change({ busy: 'file' })
      try {
        return await client.call('papers.make', request())
      } catch (error) {
        say(sentenceOf(error))
        return null
      } finally {
        change({ busy: null })
      }
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
