import type { JobStatement } from '../../core/job/index.ts'
import { remediesFor } from '../../core/sizing/index.ts'

self.addEventListener(
  'message',
  (event: MessageEvent<{ readonly statement: JobStatement; readonly checkId: string }>) => {
    self.postMessage(remediesFor(event.data.statement, event.data.checkId))
  },
)
