import type { Database } from 'better-sqlite3'
import type { JobStatement } from '../../core/job/index.ts'
import type { StoredOffcut } from '../../shared/contract/index.ts'
import type { JobRepository } from './jobs.ts'
import type { OffcutRepository } from './offcuts.ts'
import { insertQuote, type KeptQuote } from './quotes.ts'
import type { SawDayRepository } from './saw-days.ts'

/** One job as it travels: its statement and its name, without the steps that led there. */
export interface TravellingJob {
  readonly id: string
  readonly name: string
  readonly savedAt: string
  readonly statement: JobStatement
}

/** What a store takes from a file of everything. */
export interface Arrival {
  readonly jobs: readonly TravellingJob[]
  readonly offcuts: readonly StoredOffcut[]
  /** sent quotes and marks at the saw, each with the id of a job that travels with it */
  readonly quotes: readonly KeptQuote[]
  readonly days: readonly { readonly jobId: string; readonly planId: string; readonly text: string }[]
}

export interface Arrived {
  readonly jobs: number
  readonly offcuts: number
  readonly quotes: number
  readonly days: number
  /** quotes whose number and revision another quote has here: a number that went out is never changed */
  readonly quotesLeftOut: number
  /** already here, word for word */
  readonly alreadyHere: number
}

/**
 * Takes in jobs and offcuts, quotes and marks at the saw, all of them or none. Nothing that is here is overwritten: a job
 * of the same id that reads otherwise comes in beside it under an id of its own, with its marks at the saw, for they
 * speak of its boards; quotes stay with the job that they went out for.
 */
export function takeEverything(
  db: Database,
  {
    jobs,
    offcuts,
    sawDays,
  }: { readonly jobs: JobRepository; readonly offcuts: OffcutRepository; readonly sawDays: SawDayRepository },
  newId: () => string,
): (arrival: Arrival) => Arrived {
  const take = db.transaction((arrival: Arrival): Arrived => {
    let added = 0
    let alreadyHere = 0
    const idsHere = new Map<string, string>()
    for (const job of arrival.jobs) {
      const here = jobs.read(job.id)
      if (here !== null && JSON.stringify(here.statement) === JSON.stringify(job.statement)) {
        alreadyHere += 1
        continue
      }
      const id = here === null ? job.id : newId()
      idsHere.set(job.id, id)
      jobs.create({ ...job, id, label: 'Taken in from a file' })
      added += 1
    }
    const known = db.prepare('SELECT 1 FROM offcuts WHERE id = ?').pluck()
    const fresh = arrival.offcuts.filter((offcut) => known.get(offcut.id) === undefined)
    offcuts.add(fresh)
    const quotes = arrival.quotes.map((quote) => addQuote(db, quote))
    const days = arrival.days.map((day) =>
      addDay(sawDays, { ...day, jobId: idsHere.get(day.jobId) ?? day.jobId }),
    )
    const count = (results: readonly Result[], wanted: Result): number =>
      results.filter((result) => result === wanted).length
    return {
      jobs: added,
      offcuts: fresh.length,
      quotes: count(quotes, 'added'),
      days: count(days, 'added'),
      quotesLeftOut: count(quotes, 'left out'),
      alreadyHere:
        alreadyHere +
        arrival.offcuts.length -
        fresh.length +
        count(quotes, 'already here') +
        count(days, 'already here'),
    }
  })
  return (arrival) => take.immediate(arrival)
}

type Result = 'added' | 'already here' | 'left out'

function addQuote(db: Database, quote: KeptQuote): Result {
  const here = db
    .prepare('SELECT job_id, sent_at FROM quotes WHERE number = ? AND revision = ?')
    .get(quote.number, quote.revision) as { job_id: string; sent_at: string } | undefined
  if (here !== undefined)
    return here.job_id === quote.jobId && here.sent_at === quote.sentAt ? 'already here' : 'left out'
  const otherJob = db
    .prepare('SELECT 1 FROM quotes WHERE number = ? AND job_id <> ?')
    .pluck()
    .get(quote.number, quote.jobId)
  if (otherJob !== undefined) return 'left out'
  insertQuote(db, quote)
  return 'added'
}

/** Marks that are here stay: they are of the boards that lie here. */
function addDay(
  sawDays: SawDayRepository,
  { jobId, planId, text }: { readonly jobId: string; readonly planId: string; readonly text: string },
): Result {
  if (sawDays.list(jobId).some((day) => day.planId === planId)) return 'already here'
  sawDays.write(jobId, planId, text)
  return 'added'
}
