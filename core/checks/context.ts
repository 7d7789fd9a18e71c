import type { Frame } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import type { Layout } from '../layout/index.ts'
import { type LoadPath, loadPath } from './load-path.ts'
import { type Measures, measure } from './measures.ts'

/** What every check may look at: the deck, its measures, and its loads followed down to the posts. */
export interface CheckContext extends Measures {
  readonly path: LoadPath
}

export function contextOf(job: Job, layout: Layout, frame: Frame): CheckContext {
  const measures = measure(job, layout, frame)
  return { ...measures, path: loadPath(measures) }
}
