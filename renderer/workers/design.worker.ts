import { design } from '../../core/design.ts'
import type { JobStatement } from '../../core/job/index.ts'
import { framingPlan } from '../../core/papers/index.ts'
import type { DesignAnswer } from './design-answer.ts'
import { Warming } from './warming.ts'

const warming = new Warming((run) => setTimeout(run, 0))

self.addEventListener(
  'message',
  (event: MessageEvent<{ readonly edit: number; readonly statement: JobStatement }>) => {
    const { edit, statement } = event.data
    const answer = answerTo(edit, statement)
    self.postMessage(answer)
    if (answer.ok) warming.made(answer.design.frame.members.length, () => answerTo(edit, statement))
  },
)

function answerTo(edit: number, statement: JobStatement): DesignAnswer {
  const outcome = design(statement)
  return outcome.ok
    ? { edit, ok: true, design: outcome.value, drawing: framingPlan(outcome.value) }
    : { edit, ok: false, faults: outcome.error }
}
