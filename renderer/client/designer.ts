import type { JobStatement } from '../../core/job/index.ts'
import type { Designer } from '../state/designer-port.ts'
import type { DesignAnswer } from '../workers/design-answer.ts'

/**
 * Runs the cheap stages in the window's own worker; the only file that starts it.
 * One statement is in work at a time and only the newest waits, so that fast typing never queues.
 * @param onAnswer gets each answer; answers come in the order of their edits
 */
export function startDesigner(
  onAnswer: (answer: DesignAnswer) => void,
  onFailure: (message: string) => void,
): Designer {
  const worker = new Worker(new URL('../workers/design.worker.ts', import.meta.url), { type: 'module' })
  let busy = false
  let waiting: { readonly edit: number; readonly statement: JobStatement } | null = null

  function send(next: { readonly edit: number; readonly statement: JobStatement }) {
    busy = true
    worker.postMessage(next)
  }

  function finish() {
    busy = false
    const next = waiting
    waiting = null
    if (next) send(next)
  }

  worker.addEventListener('message', (event: MessageEvent<DesignAnswer>) => {
    onAnswer(event.data)
    finish()
  })
  worker.addEventListener('error', (event) => {
    onFailure(event.message || 'The drawing could not be made.')
    finish()
  })

  return {
    design(edit, statement) {
      if (busy) waiting = { edit, statement }
      else send({ edit, statement })
    },
    dispose: () => worker.terminate(),
  }
}
