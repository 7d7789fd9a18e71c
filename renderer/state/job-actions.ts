import type { JobStatement } from '../../core/job/index.ts'
import type { StoredJob } from '../../shared/contract/index.ts'
import { sentenceOf } from '../client/call-error.ts'
import { CLOSED } from './closed-session.ts'
import type { SessionParts } from './session-parts.ts'
import type { Followers } from './stating.ts'
import { historyOf } from './timeline.ts'

export interface JobActions {
  openLast(): Promise<void>
  openJob(id: string): Promise<void>
  createJob(statement: JobStatement): Promise<void>
  listJobs(): Promise<void>
  saveNow(): void
  /** saves at once; done when there is nothing unsaved, or when saving has failed and is told on the page */
  allSaved(): Promise<void>
  /** after a conflict: drop what was done here, or save it over the other */
  takeTheirs(): Promise<void>
  keepMine(): Promise<void>
}

/** Opens jobs, and follows what other windows do to the open one. */
export function jobActions(
  { client, store, get, set, say }: SessionParts,
  { designer, estimates, saves, tape }: Followers,
): { readonly actions: JobActions; dispose(): void } {
  function show(job: StoredJob) {
    estimates.forgetNews()
    tape.forget()
    estimates.measureFrom(null)
    const { history, saved } = historyOf(job.statement, job.timeline)
    saves.isSaved(history.present, saved)
    const edit = get().edit + 1
    set({
      ...CLOSED,
      jobs: get().jobs,
      prices: get().prices,
      offcuts: get().offcuts,
      cutList: get().cutList,
      memory: get().memory,
      help: get().help,
      place: get().place,
      priceView: get().priceView,
      look: { ...get().look, windows: {} },
      ...(get().open?.id === job.id ? { atSaw: get().atSaw, sawDays: get().sawDays } : {}),
      edit,
      open: { id: job.id, revision: job.revision, recovered: job.recovered },
      history,
      saving: { state: 'saved', at: job.savedAt },
    })
    designer.design(edit, history.present)
    estimates.request(0)
  }

  async function openBy(read: () => Promise<StoredJob>) {
    saves.flush()
    try {
      show(await read())
    } catch (error) {
      if (get().open) say(sentenceOf(error))
      else set({ openFailure: sentenceOf(error) })
    }
  }

  const openJob = (id: string) => openBy(() => client.call('jobs.open', { id }))
  const stopChanges = client.on('jobs.changed', ({ id, revision }) => {
    const { open, saving } = get()
    if (open?.id !== id || revision <= open.revision) return
    if (saving.state === 'saved') void openJob(id)
  })

  return {
    dispose: stopChanges,
    actions: {
      openLast: () => openBy(() => client.call('jobs.last', {})),
      openJob,
      createJob: (statement) => openBy(() => client.call('jobs.create', { statement })),
      async listJobs() {
        try {
          set({ jobs: await client.call('jobs.list', {}) })
        } catch (error) {
          say(sentenceOf(error))
        }
      },
      saveNow: () => saves.saveNow(),
      allSaved() {
        saves.saveNow()
        return new Promise((done) => {
          const look = () => {
            if (get().saving.state === 'unsaved') return
            stop()
            done()
          }
          const stop = store.subscribe(look)
          look()
        })
      },
      async takeTheirs() {
        const { open } = get()
        if (open) await openJob(open.id)
      },
      keepMine: () => saves.keepMine(),
    },
  }
}
