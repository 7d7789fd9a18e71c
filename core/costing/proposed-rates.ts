import type { Job, KeptLine } from '../job/index.ts'
import type { LabourRate, PriceBook } from '../pricing/index.ts'
import { spreadHours } from './spread-hours.ts'
import type { ProposedRate, TaskOfJob } from './types.ts'

/** A finished job, as far as rates learn from it. */
export type FinishedJob = Pick<Job, 'name'> & {
  readonly costing: Pick<Job['costing'], 'finished' | 'estimate' | 'worked'>
}

const FACTOR = 10_000n
const RATE = 100_000n

/**
 * For each production rate of the book that finished jobs have hours for: what it would have to be for their hours to
 * come out, each job normalised by the factor of its own conditions. Worker hours = quantity × rate × workers × factor,
 * so the rate is Σ hours ÷ (workers × Σ quantity × factor). Nothing is changed by it.
 */
export function proposedRates(jobs: readonly FinishedJob[], book: PriceBook): readonly ProposedRate[] {
  const tasks = new Map<string, TaskOfJob[]>()
  for (const { name, costing } of jobs) {
    if (costing.finished === '') continue
    for (const [rate, task] of tasksOf(name, costing)) tasks.set(rate, [...(tasks.get(rate) ?? []), task])
  }
  return book.rates.flatMap((rate) => {
    const own = tasks.get(rate.id)
    return own === undefined ? [] : [proposal(rate, own)]
  })
}

/** A book with one rate as proposed; how sure it is says what it comes from. Null where the book has no such rate. */
export function withRate(book: PriceBook, id: string, crewHours: number, jobs: number): PriceBook | null {
  if (!book.rates.some((rate) => rate.id === id)) return null
  return {
    ...book,
    rates: book.rates.map((rate) =>
      rate.id === id
        ? {
            ...rate,
            crewHours,
            confidence: `from ${jobs === 1 ? '1 finished job' : `${jobs} finished jobs`}`,
          }
        : rate,
    ),
  }
}

/** Tasks with hours of a job, by rate; tasks of one rate are one. */
function tasksOf(job: string, { estimate, worked }: FinishedJob['costing']): ReadonlyMap<string, TaskOfJob> {
  const hours = spreadHours(estimate, worked).of
  const found = new Map<string, TaskOfJob>()
  for (const line of estimate) {
    const took = hours.get(line.line) ?? 0
    if (!teaches(line) || took === 0) continue
    found.set(line.rate, {
      job,
      what: line.what,
      count: line.count,
      factor: line.factor,
      estimated: line.hours,
      worked: took,
    })
  }
  return found
}

function teaches({ rate, count }: KeptLine): boolean {
  return rate !== '' && count > 0
}

function proposal(rate: LabourRate, jobs: readonly TaskOfJob[]): ProposedRate {
  const single = jobs.map((job) => crewHoursOf([job], rate.workers))
  return {
    rate: rate.id,
    label: jobs.at(-1)?.what ?? rate.label,
    unit: rate.unit,
    workers: rate.workers,
    jobs,
    estimated: jobs.reduce((sum, { estimated }) => sum + estimated, 0),
    worked: jobs.reduce((sum, { worked }) => sum + worked, 0),
    now: rate.crewHours,
    proposed: crewHoursOf(jobs, rate.workers),
    least: Math.min(...single),
    greatest: Math.max(...single),
  }
}

/** Crew hours per unit in 1/100,000, to the nearest. */
function crewHoursOf(jobs: readonly TaskOfJob[], workers: number): number {
  const worked = jobs.reduce((sum, job) => sum + BigInt(job.worked), 0n)
  const quantity = jobs.reduce((sum, job) => sum + BigInt(job.count) * BigInt(job.factor), 0n)
  const below = quantity * BigInt(workers)
  return Number((2n * worked * FACTOR * RATE + below) / (2n * below))
}
