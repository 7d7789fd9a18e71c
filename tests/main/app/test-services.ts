import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { createServices } from '../../../main/app/services.ts'
import type { EventName, Events, MethodName, Methods } from '../../../shared/contract/index.ts'

/** The program behind its contract on a folder of its own, with a clock and ids that a test can foresee. */
export interface TestServices {
  readonly call: <M extends MethodName>(method: M, input: Methods[M][0]) => Promise<Methods[M][1]>
  /** as a door calls it, with anything */
  readonly callAnything: (method: string, input: unknown) => Promise<unknown>
  readonly events: { readonly event: EventName; readonly data: Events[EventName] }[]
  readonly folder: string
  close(): Promise<void>
}

export const FAKE_WORKER = join(import.meta.dirname, '../workers/fake-worker.ts')
export const REAL_WORKER = join(import.meta.dirname, '../../../main/workers/estimate-worker.ts')

const PAPER_WORKER = join(import.meta.dirname, '../../../main/app/paper-worker.ts')

export function temporaryFolder(): string {
  return mkdtempSync(join(tmpdir(), 'kerfwright-services-'))
}

export async function openServices(
  options: { folder?: string; worker?: string; keep?: boolean } = {},
): Promise<TestServices> {
  const folder = options.folder ?? temporaryFolder()
  const events: TestServices['events'] = []
  let minute = 0
  let made = 0
  const services = await createServices(
    {
      storeFolder: folder,
      workerPath: options.worker ?? FAKE_WORKER,
      paperWorkerPath: PAPER_WORKER,
      door: 'browser',
      version: '1.2.3',
      emit: (event, data) => void events.push({ event, data }),
    },
    {
      now: () => {
        minute += 1
        return new Date(Date.UTC(2026, 10, 25, 12, minute))
      },
      newId: () => {
        made += 1
        return `id-${folder.slice(-4)}-${made}-${Math.random()}`
      },
    },
  )
  return {
    call: (method, input) => services.call(method, input) as never,
    callAnything: (method, input) => services.call(method, input),
    events,
    folder,
    close: async () => {
      await services.close()
      if (options.keep !== true) rmSync(folder, { recursive: true, force: true })
    },
  }
}
