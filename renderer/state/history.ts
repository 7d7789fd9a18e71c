import type { JobStatement } from '../../core/job/index.ts'

/** One undoable step, named as the user would: "width 24'". */
export interface Step {
  readonly label: string
  readonly before: JobStatement
  readonly after: JobStatement
}

/**
 * A statement with its steps. A gesture (a drag, a text being typed) changes the present many times
 * and becomes one step when it ends, or none when it is given up.
 */
export interface History {
  readonly present: JobStatement
  readonly past: readonly Step[]
  readonly future: readonly Step[]
  readonly gesture: { readonly label: string; readonly before: JobStatement } | null
}

export function begin(statement: JobStatement): History {
  return { present: statement, past: [], future: [], gesture: null }
}

/** Changes the present within a gesture, which is started where none runs. */
export function live(history: History, label: string, present: JobStatement): History {
  return { ...history, present, gesture: { label, before: history.gesture?.before ?? history.present } }
}

/** Ends the gesture as one step; none where nothing changed. */
export function commit(history: History): History {
  const { gesture, present, past } = history
  if (!gesture) return history
  if (same(gesture.before, present)) return { ...history, gesture: null }
  const step = { label: gesture.label, before: gesture.before, after: present }
  return { present, past: [...past, step], future: [], gesture: null }
}

/** Ends the gesture as if it had never been. */
export function giveUp(history: History): History {
  return history.gesture ? { ...history, present: history.gesture.before, gesture: null } : history
}

/** One change that is a step by itself. */
export function apply(history: History, label: string, present: JobStatement): History {
  return commit(live(commit(history), label, present))
}

export function undo(history: History): History {
  const settled = commit(history)
  const step = settled.past.at(-1)
  if (!step) return settled
  return {
    present: step.before,
    past: settled.past.slice(0, -1),
    future: [step, ...settled.future],
    gesture: null,
  }
}

export function redo(history: History): History {
  const settled = commit(history)
  const [step, ...rest] = settled.future
  if (!step) return settled
  return { present: step.after, past: [...settled.past, step], future: rest, gesture: null }
}

function same(a: JobStatement, b: JobStatement): boolean {
  return a === b || JSON.stringify(a) === JSON.stringify(b)
}
