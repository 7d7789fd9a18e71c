import type { CompareRow, PriceDifference, SizeGrid } from '../../core/compare/index.ts'
import type { ProposedRate } from '../../core/costing/index.ts'
import type { CutListAnswer, CutListRequest, Meaning } from '../../core/cut-list/index.ts'
import type { DayState, JointReason, WorkProgress } from '../../core/cutting/index.ts'
import type { EstimateResult } from '../../core/estimate-types.ts'
import type { ProductClass } from '../../core/frame/index.ts'
import type { GroundResult } from '../../core/ground/index.ts'
import type { Fault, FieldPath, Found, JobStatement } from '../../core/job/index.ts'
import type { Firm, Page, PageOptions, PricedOption, QuoteChange, SheetId } from '../../core/papers/index.ts'
import type { RestAnswer, RestRequest } from '../../core/plan-the-rest.ts'
import type { PriceListFault, PriceListRequest, PriceListTaken } from '../../core/price-list/index.ts'
import type { BookEdit, EditFault, PriceBook, StalePrices } from '../../core/pricing/index.ts'
import type { SizingResult } from '../../core/sizing/index.ts'
import type { Cents, Ticks } from '../../core/units/index.ts'
import type { WishPrice } from '../../core/wish-price.ts'

export interface AppInfo {
  readonly version: string
  readonly door: 'desktop' | 'browser'
  readonly bookName: string
  readonly bookDate: string
}

export interface JobSummary {
  readonly id: string
  readonly name: string
  /** ISO time of the last save */
  readonly savedAt: string
  readonly revision: number
}

/**
 * The statements that undo and redo walk through, oldest first; `labels[n]` names the step from state n to state n + 1.
 * `first` numbers the oldest one still kept, `at` is the place of the present in `states`.
 */
export interface Timeline {
  readonly first: number
  readonly states: readonly JobStatement[]
  readonly labels: readonly string[]
  readonly at: number
}

/** One earlier state of a job, by the step that led to it. */
export interface JobVersionSummary {
  readonly revision: number
  readonly label: string
  /** ISO time */
  readonly savedAt: string
}

/** What came out of a file of everything. */
export interface TakenIn {
  readonly jobs: number
  readonly offcuts: number
  /** quotes that were sent, each with its paper */
  readonly quotes: number
  /** products of which boards are marked as sawn */
  readonly days: number
  /** quotes whose number another quote has here: a number that went out is never changed */
  readonly quotesLeftOut: number
  /** what was here already, word for word, and marks at the saw that are kept as they are here */
  readonly alreadyHere: number
  readonly prices: 'taken' | 'own kept' | 'none in the file'
}

/** What a save does to the stored timeline: places are counted from the very first step of the job. */
export interface TimelineChange {
  /** states before this place stay as they are; all from it on are forgotten */
  readonly keep: number
  /** states put after them, each with the label of the step that led there */
  readonly add: readonly { readonly label: string; readonly statement: JobStatement }[]
  /** place of the present */
  readonly at: number
}

export interface StoredJob extends JobSummary {
  readonly statement: JobStatement
  readonly timeline: Timeline
  /** true once, where the program was not closed properly the last time */
  readonly recovered: boolean
}

/** The prices of every estimate: the user's own, or the sample. */
export interface PricesInUse {
  readonly book: PriceBook
  /** ISO time; null for the sample */
  readonly importedAt: string | null
  /** days since the book's own date */
  readonly age: number
  /** old enough that the yard should be asked again */
  readonly isOld: boolean
  /** the same of each price by its own date */
  readonly stale: StalePrices
  /** the last change of the prices, which can be taken back; null: none */
  readonly lastChange: string | null
  /** the change that was taken back last, which can be made again; null: none */
  readonly nextChange: string | null
}

/** A quote that was sent, by its number and revision. */
export interface SentQuote {
  readonly number: number
  readonly revision: number
  /** ISO date that stands on it */
  readonly date: string
  /** ISO time */
  readonly sentAt: string
  /** what the customer pays, tax on the price included */
  readonly price: Cents
}

/** The price as it stands against the quote that was sent last, line by line. */
export interface SinceQuote extends PriceDifference {
  readonly from: SentQuote
  /** what the customer would pay now, tax on the price included */
  readonly price: Cents
  /** by how much this program prices what was sent otherwise than it was priced then; the rest is in lines and sums */
  readonly countedOtherwise: Cents
}

/** All that is said about the quotes of a job. */
export interface QuoteDesk {
  /** the oldest first */
  readonly sent: readonly SentQuote[]
  readonly options: readonly PricedOption[]
  /** since the last one sent; null where none was */
  readonly change: QuoteChange | null
  readonly warnings: readonly string[]
}

/** How the day goes with the boards of one product. */
export interface KeptDay {
  readonly planId: string
  /** the boards it speaks of, as the window names them */
  readonly boards: string
  readonly day: DayState
  /** states that can be taken back, the oldest first */
  readonly earlier: readonly DayState[]
}

/** One offcut on the rack. */
export interface StoredOffcut {
  readonly id: string
  readonly product: ProductClass
  readonly length: Ticks
  /** name of the job it was left of, or what its user said */
  readonly fromJob: string
  /** ISO time */
  readonly addedAt: string
}

/** A statement, and the stored job that it is of: which offcuts on the rack it may be cut from hangs on it. */
export interface Stated {
  readonly statement: JobStatement
  readonly jobId?: string | undefined
}

/** The list of pieces at the work place Cut list, as it is typed. */
export interface CutListInputs {
  readonly text: string
  readonly stockText: string
  /** what each column holds where the user said so; null: as found */
  readonly columns: readonly Meaning[] | null
  readonly stockColumns: readonly Meaning[] | null
  readonly kerf: string
  readonly endTrim: string
}

/** What the window remembers from start to start, on this machine; nothing of it belongs to a job. */
export interface WindowMemory {
  readonly theme: 'auto' | 'light' | 'dark'
  /** how the drawing was looked at, as the window writes it */
  readonly drawing: string
  /** the notes on what a work place is for are shown */
  readonly notes: boolean
  /** commands chosen by name, the latest first, by their ids */
  readonly recent: readonly string[]
  /** the job whose site, prices and ways of building a new job starts from; null: the program's defaults */
  readonly template: string | null
}

/** Work that its caller may watch by `work.progress` and end by `work.stop`; the caller names it, each time otherwise. */
export interface Watched {
  readonly task?: string | undefined
}

/** Which sheets, on what paper, and what is stated on each; a date is whatever its user says, '' for none. */
export interface PaperRequest {
  readonly only: readonly SheetId[]
  readonly page: PageOptions
  readonly date: string
  readonly revision: string
}

/**
 * Every method of the program's one contract: name → [input, output].
 * The window calls these over either door (desktop bridge or loopback host).
 */
export interface Methods {
  'app.info': [Record<string, never>, AppInfo]
  'jobs.list': [Record<string, never>, readonly JobSummary[]]
  /** the job last worked on; the demo on first start */
  'jobs.last': [Record<string, never>, StoredJob]
  'jobs.open': [{ readonly id: string }, StoredJob]
  'jobs.create': [{ readonly statement: JobStatement }, StoredJob]
  /** refused with `conflict` where the stored revision is not the one the change was made on */
  'jobs.save': [
    {
      readonly id: string
      readonly revision: number
      readonly statement: JobStatement
      readonly label: string
      readonly timeline?: TimelineChange | undefined
    },
    { readonly revision: number; readonly savedAt: string },
  ]
  /** earlier states of a job, newest first, the present one among them */
  'jobs.versions': [{ readonly id: string }, readonly JobVersionSummary[]]
  'jobs.version': [{ readonly id: string; readonly revision: number }, { readonly statement: JobStatement }]
  /** takes a job off the list; it is kept and can be brought back */
  'jobs.remove': [{ readonly id: string }, Record<string, never>]
  'jobs.bringBack': [{ readonly id: string }, Record<string, never>]
  'jobs.removed': [Record<string, never>, readonly JobSummary[]]
  /** every job, the rack and the user's own prices as one file */
  'everything.export': [Record<string, never>, { readonly fileName: string; readonly text: string }]
  /** such a file: all of it or nothing; what is here is never overwritten */
  'everything.import': [{ readonly text: string }, TakenIn]
  'prices.current': [Record<string, never>, PricesInUse]
  /** a price book's file; with any fault nothing of it is taken, and all faults are told with their places */
  'prices.import': [
    { readonly text: string },
    (
      | { readonly ok: true; readonly prices: PricesInUse }
      | { readonly ok: false; readonly faults: readonly Fault[] }
    ),
  ]
  /** what a list of prices would change in the prices in use, or all that is wrong with it; nothing is changed */
  'prices.readList': [
    PriceListRequest,
    (
      | ({ readonly ok: true } & Omit<PriceListTaken, 'book'>)
      | { readonly ok: false; readonly faults: readonly PriceListFault[] }
    ),
  ]
  /** takes all prices of a list or none */
  'prices.takeList': [
    PriceListRequest,
    (
      | { readonly ok: true; readonly prices: PricesInUse; readonly changed: number }
      | { readonly ok: false; readonly faults: readonly PriceListFault[] }
    ),
  ]
  /** the prices as they were before they were last changed */
  'prices.takeBack': [Record<string, never>, PricesInUse]
  /** the change that was taken back last, made again */
  'prices.makeAgain': [Record<string, never>, PricesInUse]
  /** cells and rows of the prices in use written over: all of the edits, as one change, or none */
  'prices.edit': [
    { readonly edits: readonly BookEdit[] },
    (
      | { readonly ok: true; readonly prices: PricesInUse; readonly label: string }
      | { readonly ok: false; readonly faults: readonly EditFault[] }
    ),
  ]
  'prices.useSample': [Record<string, never>, PricesInUse]
  /** what the hours of finished jobs make of the production rates; nothing is changed */
  'rates.proposed': [Record<string, never>, readonly ProposedRate[]]
  /** takes one proposed rate into the price book, as it was shown; `conflict` where the hours changed since */
  'rates.take': [{ readonly rate: string; readonly crewHours: number }, PricesInUse]
  /** the prices in use as a file to edit */
  'prices.export': [Record<string, never>, { readonly fileName: string; readonly text: string }]
  /** `edit` numbers the window's edits; a late answer to an old edit is dropped */
  'estimate.run': [
    Stated & Watched & { readonly edit: number },
    { readonly edit: number; readonly result: EstimateResult },
  ]
  /** the same from first plans, without the proof that no order is cheaper: something to look at while that is sought */
  'estimate.first': [
    Stated & { readonly edit: number },
    { readonly edit: number; readonly result: EstimateResult },
  ]
  /** a rectangle in each size of a grid; rows arrive as `sizes.row` events, nearest to the job's own size first */
  'sizes.run': [
    Stated & Watched & SizeGrid & { readonly edit: number },
    { readonly edit: number; readonly complete: boolean; readonly rows: number },
  ]
  /** rows arrive as `compare.row` events, nearest to the job's width first; a new run stops the one before */
  'compare.run': [
    Stated &
      Watched & {
        readonly edit: number
        readonly from: Ticks
        readonly to: Ticks
        readonly step: Ticks
        /** also the widths between the steps that fit a stock length exactly */
        readonly exactFits?: boolean | undefined
      },
    { readonly edit: number; readonly complete: boolean; readonly rows: number },
  ]
  /** the cheapest sizes that pass; fields of `held` stay as they are; a new run stops the one before */
  'sizing.run': [
    Watched & {
      readonly edit: number
      readonly statement: JobStatement
      readonly held: readonly FieldPath[]
    },
    { readonly edit: number; readonly result: SizingResult },
  ]
  /** everything in the ground of a job, and what can be done about a hole found off; a new run stops the one before */
  'ground.run': [Stated & { readonly found?: Found | undefined }, GroundResult]
  /** plans a list of pieces with the program's price book; a new run stops the one before */
  'cutlist.run': [CutListRequest & Watched, CutListAnswer]
  /** the plan of a list as a workbook: the one shown, where it is of this very list */
  'cutlist.workbook': [CutListRequest, { readonly fileName: string; readonly base64: string }]
  /** the list as it was left; null where none was */
  'cutlist.kept': [Record<string, never>, CutListInputs | null]
  'cutlist.keep': [CutListInputs, Record<string, never>]
  /** plans the rest of one product of a job that is begun */
  'day.replan': [RestRequest & Stated & Watched, RestAnswer]
  /** which boards of a stored job are sawn and what went otherwise, with the marks before, which can be taken back */
  'day.kept': [{ readonly jobId: string }, readonly KeptDay[]]
  /** keeps one product's day with its job; null: nothing is said of it any more */
  'day.keep': [
    {
      readonly jobId: string
      readonly planId: string
      readonly kept: Omit<KeptDay, 'planId'> | null
    },
    Record<string, never>,
  ]
  /** what a wish costs: the job with it (`wished`) against the job without it */
  'wish.price': [Stated & Watched & { readonly wished: JobStatement }, WishPrice]
  /** what joints of one run save, and what points of it would cost; each is planned anew */
  'joints.explain': [
    Stated & Watched & { readonly runId: string; readonly at: readonly Ticks[] },
    readonly JointReason[],
  ]
  /** ends a task: what it found by then comes as its answer and says that it was stopped */
  'work.stop': [{ readonly task: string }, { readonly stopped: boolean }]
  'offcuts.list': [Record<string, never>, readonly StoredOffcut[]]
  'offcuts.add': [
    {
      readonly product: ProductClass
      readonly length: Ticks
      readonly count: number
      readonly fromJob: string
    },
    readonly StoredOffcut[],
  ]
  'offcuts.remove': [{ readonly ids: readonly string[] }, { readonly removed: number }]
  /** a stored job was cut: what it used leaves the rack, the offcuts it keeps come onto it; once for each job */
  'offcuts.takeFromPlan': [{ readonly jobId: string }, { readonly used: number; readonly added: number }]
  'workbook.make': [Stated, { readonly fileName: string; readonly base64: string }]
  /** the pages as they would be printed */
  'papers.preview': [Stated & PaperRequest, { readonly pages: readonly Page[] }]
  /** the same pages as one PDF */
  'papers.make': [Stated & PaperRequest, { readonly fileName: string; readonly base64: string }]
  /** the order of each supplier as text, to be pasted into a message, or as a table for a spreadsheet */
  'papers.order': [
    Stated & Pick<PaperRequest, 'date' | 'revision'> & { readonly as: 'txt' | 'csv' },
    { readonly files: readonly { readonly fileName: string; readonly base64: string }[] },
  ]
  /** quotes sent for a job, what is offered in it, what changed since the last one, and what to look at before the next */
  'quotes.read': [Stated & Pick<PaperRequest, 'date'>, QuoteDesk]
  /** the lines of the price that differ from those of the quote sent last; null where none was sent */
  'quotes.lines': [Stated, SinceQuote | null]
  /** makes the quote under the next number or revision and keeps it as it is; the PDF is what was kept */
  'quotes.send': [
    Stated & { readonly jobId: string } & Pick<PaperRequest, 'date' | 'page'>,
    { readonly sent: SentQuote; readonly fileName: string; readonly base64: string },
  ]
  /** a quote as it was sent, byte for byte */
  'quotes.paper': [
    { readonly jobId: string; readonly revision: number },
    { readonly fileName: string; readonly base64: string },
  ]
  /** the difference of a sent revision and the one before it, to be signed */
  'quotes.changeOrder': [
    { readonly jobId: string; readonly revision: number; readonly page: PageOptions },
    { readonly fileName: string; readonly base64: string },
  ]
  /** who makes the papers */
  'firm.read': [Record<string, never>, Firm]
  'firm.save': [Firm, Firm]
  /** null before the window has kept anything */
  'window.kept': [Record<string, never>, WindowMemory | null]
  'window.keep': [WindowMemory, Record<string, never>]
}

export interface Events {
  'work.progress': { readonly task: string; readonly progress: WorkProgress }
  'compare.row': { readonly edit: number; readonly row: CompareRow }
  'sizes.row': { readonly edit: number; readonly row: CompareRow }
  /** the rack is another: estimates of jobs that use it may change */
  'offcuts.changed': { readonly count: number }
  /** estimates made before are out of date */
  'prices.changed': { readonly name: string; readonly date: string }
  'jobs.changed': { readonly id: string; readonly revision: number }
}

export type MethodName = keyof Methods
export type EventName = keyof Events

/** What the window holds, whichever door it came through. */
export interface Client {
  call<M extends MethodName>(method: M, input: Methods[M][0]): Promise<Methods[M][1]>
  on<E extends EventName>(event: E, listener: (data: Events[E]) => void): () => void
}
