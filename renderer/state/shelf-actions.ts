import { DEMO_JOB, type JobStatement } from '../../core/job/index.ts'
import type { JobSummary, JobVersionSummary } from '../../shared/contract/index.ts'
import { sentenceOf } from '../client/call-error.ts'
import type { JobActions } from './job-actions.ts'
import { startingFrom } from './job-template.ts'
import { UNANSWERED } from './new-job.ts'
import { plural } from './print.ts'
import type { SessionParts } from './session-parts.ts'
import type { Stating } from './stating.ts'

/** Jobs beside the open one, earlier states of it, and everything as one file. Each answer is null where it failed. */
export interface ShelfActions {
  /** a new job as the answers state it: one step over a job of defaults, so that undo takes all of them back */
  startJob(answered: JobStatement): Promise<void>
  /** what a new job starts from, as the settings have it */
  startOfJobs(): Promise<JobStatement>
  duplicateJob(id: string): Promise<void>
  /** the sample job as it was at first, as one step that can be undone */
  resetSample(): void
  removeJob(job: JobSummary): Promise<void>
  bringBackJob(job: JobSummary): Promise<void>
  removedJobs(): Promise<readonly JobSummary[] | null>
  earlierStates(): Promise<readonly JobVersionSummary[] | null>
  /** makes an earlier state the present one, as one step that can be undone */
  goBackTo(version: JobVersionSummary): Promise<void>
  everything(): Promise<{ readonly fileName: string; readonly text: string } | null>
  /** @returns a sentence on what stood in the way, or null */
  takeEverything(text: string): Promise<string | null>
}

export function shelfActions(
  { client, get, set, say }: SessionParts,
  { jobs, restate }: { readonly jobs: JobActions; readonly restate: Stating['restate'] },
): ShelfActions {
  async function asked<T>(ask: () => Promise<T>): Promise<T | null> {
    try {
      return await ask()
    } catch (error) {
      say(sentenceOf(error))
      return null
    }
  }

  /** a stored job's newest statement, without opening it; null where it cannot be had */
  async function statementOf(id: string): Promise<JobStatement | null> {
    const [newest] = (await asked(() => client.call('jobs.versions', { id }))) ?? []
    if (!newest) return null
    const read = await asked(() => client.call('jobs.version', { id, revision: newest.revision }))
    return read?.statement ?? null
  }

  return {
    async startJob(answered) {
      const before = get().open
      await jobs.createJob(UNANSWERED)
      if (get().open === before) return
      set({ place: 'site' })
      restate(answered, 'the answers to the questions')
      say('The deck is made; what was not answered is shown dashed')
    },
    async startOfJobs() {
      const { template } = get().memory ?? {}
      const other = template ? await statementOf(template) : null
      return other === null ? UNANSWERED : startingFrom(other)
    },
    async duplicateJob(id) {
      const statement = await statementOf(id)
      if (statement) await jobs.createJob(copyOf(statement))
    },
    resetSample() {
      restate(DEMO_JOB, 'the sample as it was')
      say('The sample job is as it was at first; one undo brings yours back')
    },
    async removeJob(job) {
      const done = await asked(() => client.call('jobs.remove', { id: job.id }))
      if (!done) return
      say(`${job.name} is off the list; it can be brought back`)
      if (get().open?.id === job.id) await jobs.openLast()
      await jobs.listJobs()
    },
    async bringBackJob(job) {
      const done = await asked(() => client.call('jobs.bringBack', { id: job.id }))
      if (!done) return
      say(`${job.name} is back on the list`)
      await jobs.listJobs()
    },
    removedJobs: () => asked(() => client.call('jobs.removed', {})),
    async earlierStates() {
      const { open } = get()
      return open ? asked(() => client.call('jobs.versions', { id: open.id })) : []
    },
    async goBackTo({ revision, savedAt }) {
      const { open } = get()
      if (!open) return
      const read = await asked(() => client.call('jobs.version', { id: open.id, revision }))
      if (read) restate(read.statement, `back to ${savedAt.slice(0, 16).replace('T', ' ')}`)
    },
    everything: () => asked(() => client.call('everything.export', {})),
    async takeEverything(text) {
      try {
        const taken = await client.call('everything.import', { text })
        const prices =
          taken.prices === 'taken'
            ? ', its price book'
            : taken.prices === 'own kept'
              ? '; your own prices stay'
              : ''
        const left =
          taken.quotesLeftOut === 0
            ? ''
            : ` ${plural(taken.quotesLeftOut, 'quote')} stayed out: ${taken.quotesLeftOut === 1 ? 'its number is' : 'their numbers are'} taken here.`
        say(
          `Taken in: ${plural(taken.jobs, 'job')}, ${plural(taken.quotes, 'quote')}, ${plural(taken.offcuts, 'offcut')}${prices}. ${taken.alreadyHere} were here already.${left}`,
        )
        await jobs.listJobs()
        return null
      } catch (error) {
        return sentenceOf(error)
      }
    },
  }
}

function copyOf(statement: JobStatement): JobStatement {
  const { name } = statement
  return { ...statement, name: `${typeof name === 'string' && name !== '' ? name : 'Deck'}, copy` }
}
