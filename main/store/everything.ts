import type { Database } from 'better-sqlite3'
import type { JobStatement } from '../../core/job/index.ts'
import type { StoredOffcut } from '../../shared/contract/index.ts'
import type { JobRepository } from './jobs.ts'
import type { OffcutRepository } from './offcuts.ts'

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
}

export interface Arrived {
  readonly jobs: number
  readonly offcuts: number
  /** already here, word for word */
  readonly alreadyHere: number
}

/**
 * Takes in jobs and offcuts, all of them or none. Nothing that is here is overwritten: a job of the same id that reads
 * otherwise comes in beside it under an id of its own.
 */
export function takeEverything(
  db: Database,
  { jobs, offcuts }: { readonly jobs: JobRepository; readonly offcuts: OffcutRepository },
  newId: () => string,
): (arrival: Arrival) => Arrived {
  const take = db.transaction((arrival: Arrival): Arrived => {
    let added = 0
    let alreadyHere = 0
    for (const job of arrival.jobs) {
      const here = jobs.read(job.id)
      if (here !== null && JSON.stringify(here.statement) === JSON.stringify(job.statement)) {
        alreadyHere += 1
        continue
      }
      const id = here === null ? job.id : newId()
      jobs.create({ ...job, id, label: 'Taken in from a file' })
      added += 1
    }
    const known = db.prepare('SELECT 1 FROM offcuts WHERE id = ?').pluck()
    const fresh = arrival.offcuts.filter((offcut) => known.get(offcut.id) === undefined)
    offcuts.add(fresh)
    return {
      jobs: added,
      offcuts: fresh.length,
      alreadyHere: alreadyHere + arrival.offcuts.length - fresh.length,
    }
  })
  return (arrival) => take.immediate(arrival)
}
