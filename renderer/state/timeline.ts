import type { JobStatement } from '../../core/job/index.ts'
import type { Timeline, TimelineChange } from '../../shared/contract/index.ts'
import { begin, type History, type Step } from './history.ts'

/** The steps the program has of the open job, in the order of its timeline from place `first` on. */
export interface SavedTimeline {
  readonly first: number
  /** the very objects of the history, so that what is saved is known without comparing texts */
  readonly states: readonly JobStatement[]
  readonly at: number
}

export const NO_TIMELINE: SavedTimeline = { first: 0, states: [], at: 0 }

/**
 * The history of a job as it was left, so that a restart takes away nothing from undo and redo, and what of it the
 * program has. What was changed within a gesture when the program ended is one more step.
 */
export function historyOf(
  statement: JobStatement,
  timeline: Timeline,
): { readonly history: History; readonly saved: SavedTimeline } {
  const { first, states, labels, at } = timeline
  const present = states[at]
  if (!present) return { history: begin(statement), saved: NO_TIMELINE }
  const steps = labels.flatMap((label, n): Step[] => {
    const [before, after] = [states[n], states[n + 1]]
    return before && after ? [{ label, before, after }] : []
  })
  const past = steps.slice(0, at)
  if (JSON.stringify(present) === JSON.stringify(statement))
    return {
      history: { present, past, future: steps.slice(at), gesture: null },
      saved: { first, states, at },
    }
  const unfinished = { label: 'the last change', before: present, after: statement }
  return {
    history: { present: statement, past: [...past, unfinished], future: [], gesture: null },
    saved: { first, states: states.slice(0, at + 1), at },
  }
}

/** What brings the saved timeline up to the history, and what is saved then; null where nothing changed. */
export function timelineChange(
  saved: SavedTimeline,
  history: History,
): { readonly change: TimelineChange; readonly saved: SavedTimeline } | null {
  const states = statesOf(history)
  const labels = [...history.past, ...history.future].map((step) => step.label)
  if (saved.states.length === 0 && states.length === 1) return null
  let same = 0
  while (same < states.length && states[same] === saved.states[same]) same += 1
  const at = history.past.length
  if (same === states.length && same === saved.states.length && at === saved.at) return null
  const add = states.slice(same).map((statement, n) => ({ label: labels[same + n - 1] ?? '', statement }))
  return {
    change: { keep: saved.first + same, add, at: saved.first + at },
    saved: { first: saved.first, states, at },
  }
}

function statesOf({ present, past, future, gesture }: History): readonly JobStatement[] {
  const earliest = past[0]?.before ?? future[0]?.before ?? gesture?.before ?? present
  return [earliest, ...[...past, ...future].map((step) => step.after)]
}
