import type { JobStatement } from '../../core/job/index.ts'
import type { Remedy } from '../../core/sizing/index.ts'

/** What would mend a check; tried in a worker of its own, which ends with its answer. */
export function askRemedies(statement: JobStatement, checkId: string): Promise<readonly Remedy[]> {
  const worker = new Worker(new URL('../workers/remedies.worker.ts', import.meta.url), { type: 'module' })
  return new Promise<readonly Remedy[]>((resolve, reject) => {
    worker.addEventListener('message', (event: MessageEvent<readonly Remedy[]>) => resolve(event.data))
    worker.addEventListener('error', (event) => reject(new Error(event.message)))
    worker.postMessage({ statement, checkId })
  }).finally(() => worker.terminate())
}
