import { dirname, join } from 'node:path'

export interface Places {
  /** file of the estimate worker */
  readonly workerPath: string
  /** file of the worker that writes PDFs */
  readonly paperWorkerPath: string
  /** folder of the built window */
  readonly windowFolder: string
}

/** Where a door finds its companions: beside it in a build (`out/main`), in the sources where Node runs those straight. */
export function placesFrom(entryFile: string): Places {
  const folder = dirname(entryFile)
  if (entryFile.endsWith('.ts'))
    return {
      workerPath: join(folder, '../workers/estimate-worker.ts'),
      paperWorkerPath: join(folder, '../app/paper-worker.ts'),
      windowFolder: join(folder, '../../out/renderer'),
    }
  return {
    workerPath: join(folder, 'worker.js'),
    paperWorkerPath: join(folder, 'papers.js'),
    windowFolder: join(folder, '../renderer'),
  }
}
