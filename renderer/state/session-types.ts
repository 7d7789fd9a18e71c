import type { CompareRow } from '../../core/compare/index.ts'
import type { Design, Estimate } from '../../core/estimate-types.ts'
import type { Fault, FieldPath } from '../../core/job/index.ts'
import type { Drawing } from '../../core/papers/index.ts'
import type { Ticks } from '../../core/units/index.ts'
import type { JobSummary, PricesInUse, StoredOffcut, WindowMemory } from '../../shared/contract/index.ts'
import type { BookLook } from './book-look.ts'
import type { CutListState } from './cut-list-state.ts'
import type { DrawingLook } from './drawing/look.ts'
import type { Held } from './grips/moving.ts'
import type { GroundState } from './ground-actions.ts'
import type { HelpState } from './help-actions.ts'
import type { History } from './history.ts'
import type { RefusedJobFile } from './job-file-actions.ts'
import type { JointAnswer } from './joint-actions.ts'
import type { News } from './news.ts'
import type { PapersState } from './papers-state.ts'
import type { SawDays } from './saw-day.ts'
import type { SinceQuoteState } from './since-quote-actions.ts'
import type { SizeGridState } from './size-grid-actions.ts'
import type { RunningTasks } from './tasks.ts'
import type { WishAnswer } from './wish-actions.ts'

/** The work places, in the order a job goes. */
export const PLACES = [
  'site',
  'frame',
  'ground',
  'boards',
  'price',
  'papers',
  'cut list',
  'price book',
] as const
export type Place = (typeof PLACES)[number]

/** The figures of the sill. */
export type Figure = 'cost' | 'price' | 'per square foot' | 'order' | 'joints' | 'waste' | 'checks' | 'hours'

/** What the bench explains in place of the fields: a figure, or a line, member, check or field by its id. */
export type Why = Figure | { readonly id: string }

export type Saving =
  | { readonly state: 'saved'; readonly at: string }
  | { readonly state: 'unsaved' }
  | { readonly state: 'failed'; readonly message: string }
  | { readonly state: 'conflict'; readonly message: string }

/** Text in a field that is not (yet) its value. */
export interface Draft {
  readonly text: string
  /** what is wrong with it and what would be right; null while it reads well */
  readonly fault: string | null
}

export interface TapeState {
  /** everything of the statement but the width: rows of another key do not belong to this tape */
  readonly key: string
  readonly from: Ticks
  readonly to: Ticks
  readonly rows: readonly CompareRow[]
  /** rows of the deck before the last edit: shown soft until its own are there */
  readonly earlier: readonly CompareRow[]
  readonly running: boolean
  /** its user has stopped it: the widths that are there are shown, no more are asked for */
  readonly stopped: boolean
  readonly failed: string | null
}

export interface OpenJob {
  readonly id: string
  readonly revision: number
  readonly recovered: boolean
}

export interface SessionState {
  /** null until the first job is there */
  readonly open: OpenJob | null
  /** why no job could be opened at all */
  readonly openFailure: string | null
  readonly jobs: readonly JobSummary[] | null
  /** the job file that was given last, where it could not be taken */
  readonly refusedFile: RefusedJobFile | null
  readonly history: History
  /** counts changes of the present statement */
  readonly edit: number
  readonly saving: Saving

  /** the newest good design, and the edit it belongs to */
  readonly design: Design | null
  readonly drawing: Drawing | null
  readonly designEdit: number
  /** edit of the newest answer, a design or faults */
  readonly answeredEdit: number
  /** faults of the present statement; the design shown is then an older one */
  readonly faults: readonly Fault[]
  readonly designFailure: string | null

  readonly estimate: Estimate | null
  readonly estimateEdit: number
  readonly estimateFailure: string | null
  /** differences the last step made, while they are news */
  readonly news: News | null

  /** the prices of every estimate; null until they were read */
  readonly prices: PricesInUse | null
  /** what is wrong with the price book's file that was given last */
  readonly priceFileFaults: readonly Fault[]
  readonly bookLook: BookLook
  /** the price against the quote sent last; null until it was asked for */
  readonly sinceQuote: SinceQuoteState | null

  readonly tape: TapeState
  /** sizes compared on both sides; null until they are asked for */
  readonly sizeGrid: SizeGridState | null
  /** work that goes on, by its kind */
  readonly tasks: RunningTasks
  /** what wishes on the cutting cost or would cost, by their keys */
  readonly wishPrices: { readonly [key: string]: WishAnswer }
  /** why joints are made or not, by run and place */
  readonly joints: { readonly [point: string]: JointAnswer }
  readonly drafts: { readonly [path: FieldPath]: Draft }

  readonly cutList: CutListState

  /** offcuts kept from job to job; null until they were read */
  readonly offcuts: readonly StoredOffcut[] | null
  /** boards are shown one by one, to be marked as they are sawn */
  readonly atSaw: boolean
  readonly sawDays: SawDays

  readonly papers: PapersState

  readonly ground: GroundState

  /** what the window remembers from start to start; null until it was read */
  readonly memory: WindowMemory | null
  readonly help: HelpState

  readonly place: Place
  /** what the work place Price shows */
  readonly priceView: 'estimate' | 'costing'
  readonly look: DrawingLook
  /** what is being moved in the drawing */
  readonly held: Held | null
  readonly selected: string | null
  readonly hovered: string | null
  /** what a check that is looked at speaks of */
  readonly lit: readonly string[]
  /** a point of a run that is looked at in a list */
  readonly litPoint: { readonly runId: string; readonly at: number } | null
  readonly why: Why | null
  /** field to be brought into view and focused */
  readonly sought: string | null
  /** a sentence for the status line and for screen readers */
  readonly notice: string | null
  readonly making: boolean
}
