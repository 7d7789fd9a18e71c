import type { Database } from 'better-sqlite3'
import type { Cents } from '../../core/units/index.ts'
import type { SentQuote } from '../../shared/contract/index.ts'

/** A quote as it went out: the paper, and as JSON what it was made from. */
export interface KeptQuote extends SentQuote {
  readonly jobId: string
  readonly madeFrom: string
  readonly pdf: Uint8Array
}

/** Which quote comes next: a job keeps its number, a new job takes the next free one. */
type NextQuote = Pick<SentQuote, 'number' | 'revision'>

export interface QuoteRepository {
  /** quotes sent for a job, the oldest first */
  list(jobId: string): readonly SentQuote[]
  next(jobId: string): NextQuote
  read(jobId: string, revision: number): KeptQuote | null
  /** false where another copy of the program has sent one meanwhile and the number is no longer the next */
  add(quote: KeptQuote): boolean
}

interface Row {
  job_id: string
  number: number
  revision: number
  dated: string
  sent_at: string
  price: number
  made_from: string
  pdf: Uint8Array
}

export function quoteRepository(db: Database): QuoteRepository {
  const all = (jobId: string): Row[] =>
    db
      .prepare(
        'SELECT number, revision, dated, sent_at, price FROM quotes WHERE job_id = ? ORDER BY number, revision',
      )
      .all(jobId) as Row[]
  const next = (jobId: string): NextQuote => {
    const last = all(jobId).at(-1)
    if (last !== undefined) return { number: last.number, revision: last.revision + 1 }
    const most = db.prepare('SELECT max(number) FROM quotes').pluck().get() as number | null
    return { number: (most ?? 0) + 1, revision: 1 }
  }
  const add = db.transaction((quote: KeptQuote): boolean => {
    const free = next(quote.jobId)
    if (free.number !== quote.number || free.revision !== quote.revision) return false
    insertQuote(db, quote)
    return true
  })
  return {
    list: (jobId) => all(jobId).map(summaryOf),
    next,
    read: (jobId, revision) => {
      const row = db.prepare('SELECT * FROM quotes WHERE job_id = ? AND revision = ?').get(jobId, revision) as
        | Row
        | undefined
      return row === undefined
        ? null
        : { ...summaryOf(row), jobId: row.job_id, madeFrom: row.made_from, pdf: new Uint8Array(row.pdf) }
    },
    add: (quote) => add.immediate(quote),
  }
}

/** Writes a quote under the number that it has; a bug where that number is taken. */
export function insertQuote(db: Database, quote: KeptQuote): void {
  db.prepare(
    'INSERT INTO quotes (job_id, number, revision, dated, sent_at, price, made_from, pdf) VALUES (?, ?, ?, ?, ?, ?, ?, ?)',
  ).run(
    quote.jobId,
    quote.number,
    quote.revision,
    quote.date,
    quote.sentAt,
    quote.price,
    quote.madeFrom,
    Buffer.from(quote.pdf),
  )
}

function summaryOf({ number, revision, dated, sent_at, price }: Row): SentQuote {
  return { number, revision, date: dated, sentAt: sent_at, price: price as Cents }
}
