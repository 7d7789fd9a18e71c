import { DEMO_JOB, jobName } from '../../core/job/index.ts'
import type { Methods, StoredJob } from '../../shared/contract/index.ts'
import { type JobRecord, RevisionConflict, type Store } from '../store/index.ts'
import { type Emit, ServiceError } from './service-types.ts'

type Handler<M extends keyof Methods> = (input: Methods[M][0]) => Methods[M][1]

/** Jobs kept in the store: opened, made, saved under the revision they were read at. */
export interface JobService {
  readonly list: Handler<'jobs.list'>
  readonly last: Handler<'jobs.last'>
  readonly open: Handler<'jobs.open'>
  /** the stored job, without making it the one last worked on */
  readonly read: (id: string) => JobRecord
  readonly create: Handler<'jobs.create'>
  readonly save: Handler<'jobs.save'>
  readonly versions: Handler<'jobs.versions'>
  readonly version: Handler<'jobs.version'>
  readonly remove: Handler<'jobs.remove'>
  readonly bringBack: Handler<'jobs.bringBack'>
  readonly removed: Handler<'jobs.removed'>
}

export function jobService(store: Store, now: () => Date, newId: () => string, emit: Emit): JobService {
  let tellsOfCrash = store.crashed

  function opened(job: JobRecord): StoredJob {
    store.settings.write('last job', job.id)
    const recovered = tellsOfCrash
    tellsOfCrash = false
    return { ...job, timeline: store.jobs.timeline(job.id), recovered }
  }

  function create(statement: JobRecord['statement'], label: string): JobRecord {
    return store.jobs.create({
      id: newId(),
      name: jobName(statement),
      savedAt: now().toISOString(),
      label,
      statement,
    })
  }

  const mustBeThere = (id: string): JobRecord => {
    const job = store.jobs.read(id)
    if (job === null) throw noSuchJob()
    return job
  }

  return {
    list: () => store.jobs.list(),
    last: () => {
      const listed = store.jobs.list()
      const last = store.settings.read('last job')
      const id = listed.some((job) => job.id === last) ? last : listed[0]?.id
      const job = id === undefined || id === null ? null : store.jobs.read(id)
      return opened(job ?? create(DEMO_JOB, 'Demo job'))
    },
    open: ({ id }) => opened(mustBeThere(id)),
    read: mustBeThere,
    create: ({ statement }) => opened(create(statement, 'Created')),
    versions: ({ id }) => {
      mustBeThere(id)
      return store.jobs.versions(id).map(({ revision, label, savedAt }) => ({ revision, label, savedAt }))
    },
    version: ({ id, revision }) => {
      const found = store.jobs.version(id, revision)
      if (found === null)
        throw new ServiceError('not-found', 'This state of the job is no longer kept; choose a later one.')
      return { statement: found.statement }
    },
    remove: ({ id }) => {
      if (!store.jobs.setRemoved(id, now().toISOString())) throw noSuchJob()
      return {}
    },
    bringBack: ({ id }) => {
      if (!store.jobs.setRemoved(id, null)) throw noSuchJob()
      return {}
    },
    removed: () => store.jobs.removed(),
    save: ({ id, revision, statement, label, timeline }) => {
      const savedAt = now().toISOString()
      try {
        const name = jobName(statement)
        const saved = store.jobs.save({ id, revision, name, savedAt, label, statement, timeline })
        if (saved === null) throw noSuchJob()
        if (saved.revision !== revision) emit('jobs.changed', { id, revision: saved.revision })
        return { revision: saved.revision, savedAt }
      } catch (error) {
        if (error instanceof RevisionConflict) throw new ServiceError('conflict', error.message)
        throw error
      }
    },
  }
}

function noSuchJob(): ServiceError {
  return new ServiceError(
    'not-found',
    'There is no such job in the store; it may have been deleted elsewhere.',
  )
}
