import type { WorkProgress } from '../../core/cutting/index.ts'
import type { SessionParts } from './session-parts.ts'

/** Kinds of work that can take longer than a moment; of each kind one is watched. */
export type TaskKind =
  | 'estimate'
  | 'widths'
  | 'sizes'
  | 'size grid'
  | 'cut list'
  | 'the rest'
  | 'wish'
  | 'joints'

export interface RunningTask {
  /** its name in the program */
  readonly task: string
  readonly progress: WorkProgress | null
  /** its user has asked to stop it, and its answer is on the way */
  readonly stopping: boolean
}

export type RunningTasks = { readonly [kind in TaskKind]?: RunningTask }

export interface Tasks {
  /** runs work under a name of its own, so that it is watched and can be stopped */
  watched<T>(kind: TaskKind, work: (task: string) => Promise<T>): Promise<T>
  /** ends the running work of a kind at its best so far */
  stopTask(kind: TaskKind): void
  dispose(): void
}

export function tasks({ client, get, set }: Omit<SessionParts, 'say' | 'watched'>): Tasks {
  const change = (kind: TaskKind, task: string, patch: Partial<RunningTask> | null) => {
    const running = get().tasks[kind]
    if (running?.task !== task) return
    const { [kind]: _ended, ...others } = get().tasks
    set({ tasks: patch === null ? others : { ...others, [kind]: { ...running, ...patch } } })
  }
  const stopProgress = client.on('work.progress', ({ task, progress }) => {
    const [kind] = task.split(':')
    change(kind as TaskKind, task, { progress })
  })
  return {
    async watched(kind, work) {
      const task = `${kind}:${crypto.randomUUID()}`
      set({ tasks: { ...get().tasks, [kind]: { task, progress: null, stopping: false } } })
      try {
        return await work(task)
      } finally {
        change(kind, task, null)
      }
    },
    stopTask(kind) {
      const running = get().tasks[kind]
      if (running === undefined) return
      change(kind, running.task, { stopping: true })
      // where it has ended meanwhile there is nothing to stop, and its answer says so itself
      client
        .call('work.stop', { task: running.task })
        .catch(() => change(kind, running.task, { stopping: false }))
    },
    dispose: stopProgress,
  }
}
