import type { JointReason } from '../../core/cutting/index.ts'
import { type Ticks, ticks } from '../../core/units/index.ts'
import { sentenceOf } from '../client/call-error.ts'
import type { SessionParts } from './session-parts.ts'

/** What is known of one point of a run, and of which edit of the job. */
export type JointAnswer = { readonly edit: number } & (
  | { readonly state: 'asked' }
  | { readonly state: 'told'; readonly reason: JointReason }
  | { readonly state: 'failed'; readonly message: string }
)

export interface JointActions {
  /** asks what joints save, or what points would cost, one after the other */
  explainJoints(runId: string, at: readonly number[]): Promise<void>
}

/** Name of a point of a run among the answers. */
export function pointKey(runId: string, at: number): string {
  return `${runId} ${at}`
}

export function jointActions({ client, get, set, watched }: SessionParts): JointActions {
  let last: Promise<void> = Promise.resolve()

  async function askOne(edit: number, runId: string, at: Ticks) {
    const { open, history } = get()
    const tell = (answer: JointAnswer) => set({ joints: { ...get().joints, [pointKey(runId, at)]: answer } })
    if (get().edit !== edit) return
    try {
      const [reason] = await watched('joints', (task) =>
        client.call('joints.explain', {
          statement: history.present,
          jobId: open?.id,
          runId,
          at: [at],
          task,
        }),
      )
      if (reason !== undefined) tell({ edit, state: 'told', reason })
    } catch (error) {
      tell({ edit, state: 'failed', message: sentenceOf(error) })
    }
  }

  return {
    explainJoints(runId, at) {
      const { edit, joints } = get()
      const asked = at.filter((point) => {
        const known = joints[pointKey(runId, point)]
        return known?.edit !== edit || known.state === 'failed'
      })
      const marks = asked.map((point) => [pointKey(runId, point), { edit, state: 'asked' }] as const)
      set({ joints: { ...joints, ...Object.fromEntries(marks) } })
      for (const point of asked) last = last.then(() => askOne(edit, runId, ticks(point)))
      return last
    },
  }
}
