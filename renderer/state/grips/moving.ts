import type { Ticks } from '../../../core/units/index.ts'
import { faultSentence } from '../field-value.ts'
import type { SessionParts } from '../session-parts.ts'
import type { Stating } from '../stating.ts'
import type { Grip } from './types.ts'

/** What is being moved: the grip as it lay when it was taken, and where it is now. */
export interface Held {
  readonly grip: Grip
  readonly values: readonly Ticks[]
}

export interface MoveActions {
  /** takes hold of a grip; one that is held already is let go first */
  takeHold(grip: Grip): void
  /** moves what is held: the deck follows at once */
  moveHeld(values: readonly Ticks[]): void
  /** ends the move as one step; a place that cannot be built gives way to the last one that can, and says why */
  letGo(): void
  /** ends the move as if it had never been */
  giveUpMove(): void
}

/** Moving an edge, a beam or a post: alive while it moves, one step when it ends. */
export function moveActions(
  { store, get, set, say }: SessionParts,
  stating: Pick<Stating, 'stateAllLive' | 'endGesture' | 'giveUpGesture'>,
): MoveActions & { forget(): void } {
  let tried = new Map<number, readonly Ticks[]>()
  let stopWaiting: (() => void) | null = null

  function finish(held: Held) {
    const { faults, designEdit } = get()
    const [fault] = faults
    const good = tried.get(designEdit)
    tried = new Map()
    if (fault === undefined) {
      stating.endGesture()
      return
    }
    say(`It stays at the last place that can be built. ${faultSentence(fault)}`)
    if (good === undefined) {
      stating.giveUpGesture()
      return
    }
    const { fields, label } = held.grip.change(good)
    stating.stateAllLive(fields, label)
    stating.endGesture()
  }

  function settle() {
    stopWaiting?.()
    stopWaiting = null
  }

  function letGo() {
    const { held } = get()
    if (held === null) return
    set({ held: null })
    if (get().answeredEdit === get().edit) {
      finish(held)
      return
    }
    // the deck at the last place is still being made: whether it can be built is known then
    settle()
    stopWaiting = store.subscribe((state) => {
      if (state.answeredEdit !== state.edit) return
      settle()
      finish(held)
    })
  }

  return {
    letGo,
    takeHold(grip) {
      letGo()
      settle()
      tried = new Map()
      stating.endGesture()
      set({ held: { grip, values: grip.axes.map(({ value }) => value) } })
    },
    moveHeld(values) {
      const { held } = get()
      if (held === null || values.every((value, i) => value === held.values[i])) return
      set({ held: { ...held, values } })
      if (values.every((value, i) => value === held.grip.axes[i]?.value)) {
        // back where it lay: nothing is stated that was a default
        stating.giveUpGesture()
        return
      }
      const { fields, label } = held.grip.change(values)
      stating.stateAllLive(fields, label)
      tried.set(get().edit, values)
    },
    giveUpMove() {
      if (get().held === null) return
      tried = new Map()
      set({ held: null })
      stating.giveUpGesture()
    },
    forget: settle,
  }
}
