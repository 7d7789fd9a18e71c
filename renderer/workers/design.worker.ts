import { design } from '../../core/design.ts'
import type { JobStatement } from '../../core/job/index.ts'
import { framingPlan } from '../../core/papers/index.ts'
import type { DesignAnswer } from './design-answer.ts'

self.addEventListener(
  'message',
  (event: MessageEvent<{ readonly edit: number; readonly statement: JobStatement }>) => {
    const { edit, statement } = event.data
    const outcome = design(statement)
    const answer: DesignAnswer = outcome.ok
      ? { edit, ok: true, design: outcome.value, drawing: framingPlan(outcome.value) }
      : { edit, ok: false, faults: outcome.error }
    self.postMessage(answer)
  },
)
