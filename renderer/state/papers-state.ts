import { type Firm, type Page, type PaperName, type SheetId, USUAL_SHEETS } from '../../core/papers/index.ts'
import type { QuoteDesk } from '../../shared/contract/index.ts'

export interface PapersState {
  readonly only: readonly SheetId[]
  readonly paper: PaperName
  /** 1 : n; null: the largest usual scale that fits */
  readonly scale: number | null
  /** lengths in millimetres */
  readonly metric: boolean
  /** as stated, ISO; '' for none */
  readonly date: string
  /** '' for none: the papers then carry figures of the job's own state */
  readonly revision: string
  readonly firm: Firm | null
  readonly pages: readonly Page[]
  /** the request that the pages answer */
  readonly pagesOf: string
  /** options, sent quotes and warnings; null until they were read */
  readonly desk: QuoteDesk | null
  /** why they could not be read; null where they were */
  readonly deskFailure: string | null
  readonly busy: 'preview' | 'file' | null
  readonly failure: string | null
}

export const NO_PAPERS: PapersState = {
  only: USUAL_SHEETS,
  paper: 'letter',
  scale: null,
  metric: false,
  date: '',
  revision: '',
  firm: null,
  pages: [],
  pagesOf: '',
  desk: null,
  deskFailure: null,
  busy: null,
  failure: null,
}
