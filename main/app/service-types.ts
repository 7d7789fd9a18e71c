import type { EventName, Events } from '../../shared/contract/index.ts'
import type { Pool } from '../workers/index.ts'

/** Tells every open window of something that happened. */
export type Emit = <E extends EventName>(event: E, data: Events[E]) => void

export interface ServiceOptions {
  /** folder of the store; made where it is missing */
  readonly storeFolder: string
  /** file of the estimate worker: `out/main/worker.js` in a build, `main/workers/estimate-worker.ts` in tests */
  readonly workerPath: string
  /** file of the worker that writes PDFs: `out/main/papers.js` in a build, `main/app/paper-worker.ts` in tests */
  readonly paperWorkerPath: string
  /** what calculates, where several stores share it; its maker closes it. By default one of its own */
  readonly pool?: Pool
  readonly door: 'desktop' | 'browser'
  readonly version: string
  readonly emit: Emit
  /** hears what went wrong without stopping the program, one sentence each */
  readonly trouble?: (sentence: string) => void
}

/** The program behind its contract; every door holds one of these and nothing else. */
export interface Services {
  /** Validates the input, runs the method; rejects with a `ServiceError` for anything the caller can mend. */
  call(method: string, input: unknown): Promise<unknown>
  /** Writes what is unsaved, stops the workers, closes the store. Safe to call twice. */
  close(): Promise<void>
}

export type ServiceErrorCode =
  | 'unknown-method'
  | 'bad-input'
  | 'not-found'
  | 'conflict'
  | 'store-unusable'
  | 'stopped'
  | 'internal'

/** A failure with a sentence for people and a code for programs; both cross every door, a stack never does. */
export class ServiceError extends Error {
  readonly code: ServiceErrorCode

  constructor(code: ServiceErrorCode, message: string) {
    super(message)
    this.name = 'ServiceError'
    this.code = code
  }
}
