export type { JobRecord, JobRepository, JobVersion } from './jobs.ts'
export { openStore, type Store, type StoreOptions } from './open-store.ts'
export { RevisionConflict, type StoreRefusal } from './refusal.ts'
export type { Settings } from './settings.ts'
