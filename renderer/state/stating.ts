import type { Estimate } from '../../core/estimate-types.ts'
import {
  clearField,
  type FieldPath,
  type JobStatement,
  type JsonValue,
  readJob,
  setField,
} from '../../core/job/index.ts'
import type { Designer } from './designer-port.ts'
import type { Estimating } from './estimating.ts'
import type { History } from './history.ts'
import * as steps from './history.ts'
import { isPricedAlike } from './priced-part.ts'
import type { Saving } from './saving.ts'
import type { SessionParts } from './session-parts.ts'
import type { TapeFilling } from './tape-filling.ts'

export interface Stating {
  /** states a field as one step */
  state(path: FieldPath, value: JsonValue | undefined, label: string): void
  /** puts another whole statement in place of this one, as one step */
  restate(statement: JobStatement, label: string): void
  /** states a field within a gesture: shown at once, one step when it ends */
  stateLive(path: FieldPath, value: JsonValue, label: string): void
  /** states several fields within a gesture, or clears them */
  stateAllLive(fields: { readonly [path: FieldPath]: JsonValue | undefined }, label: string): void
  endGesture(): void
  giveUpGesture(): void
  undo(): void
  redo(): void
  draft(path: FieldPath, text: string, fault: string | null): void
  dropDraft(path: FieldPath): void
}

/** What follows a change of the statement. */
export interface Followers {
  readonly designer: Designer
  readonly estimates: Estimating
  readonly saves: Saving
  readonly tape: TapeFilling
}

/** Everything that changes the open job's statement, each an undoable step. */
export function stating(
  { get, set, say }: SessionParts,
  { designer, estimates, saves, tape }: Followers,
): Stating {
  function turnTo(history: History) {
    const before = get().history
    if (history.present === before.present) {
      set({ history })
      return
    }
    if (!before.gesture) estimates.measureFrom(get().estimate)
    const edit = get().edit + 1
    const saving = get().saving.state === 'conflict' ? get().saving : ({ state: 'unsaved' } as const)
    // what a job took, or a name, changes no figure of its estimate
    const stands = get().estimateEdit === get().edit && isPricedAlike(before.present, history.present)
    const kept = stands ? underJob(get().estimate, history.present) : null
    set({ history, edit, saving, ...(kept === null ? {} : { estimateEdit: edit, estimate: kept }) })
    designer.design(edit, history.present)
    if (kept === null) estimates.request()
    saves.touch()
  }

  return {
    state(path, value, label) {
      const settled = steps.commit(get().history)
      const { present } = settled
      turnTo(
        steps.apply(
          settled,
          label,
          value === undefined ? clearField(present, path) : setField(present, path, value),
        ),
      )
    },
    restate(statement, label) {
      set({ drafts: {} })
      turnTo(steps.apply(get().history, label, statement))
    },
    stateLive(path, value, label) {
      turnTo(steps.live(get().history, label, setField(get().history.present, path, value)))
    },
    stateAllLive(fields, label) {
      const present = Object.entries(fields).reduce(
        (statement, [path, value]) =>
          value === undefined ? clearField(statement, path) : setField(statement, path, value),
        get().history.present,
      )
      turnTo(steps.live(get().history, label, present))
    },
    endGesture() {
      if (!get().history.gesture) return
      turnTo(steps.commit(get().history))
      const { design } = get()
      if (design) tape.aim(design.job.size.width)
    },
    giveUpGesture: () => turnTo(steps.giveUp(get().history)),
    undo() {
      const step = steps.commit(get().history).past.at(-1)
      set({ drafts: {} })
      turnTo(steps.undo(get().history))
      if (step) say(`Undone: ${step.label}`)
    },
    redo() {
      const [step] = get().history.future
      set({ drafts: {} })
      turnTo(steps.redo(get().history))
      if (step) say(`Redone: ${step.label}`)
    },
    draft: (path, text, fault) => set({ drafts: { ...get().drafts, [path]: { text, fault } } }),
    dropDraft(path) {
      const { [path]: dropped, ...drafts } = get().drafts
      if (dropped) set({ drafts })
    },
  }
}

/** An estimate with the names, notes and purchases that a statement has now; null where there is none to keep. */
function underJob(estimate: Estimate | null, statement: JobStatement): Estimate | null {
  const read = readJob(statement)
  return estimate === null || !read.ok ? null : { ...estimate, ...read.value }
}
