import { type FieldPath, findField } from '../../core/job/index.ts'
import { placeOf } from './places.ts'
import type { SessionParts } from './session-parts.ts'
import type { Place, SessionState, Why } from './session-types.ts'

export interface LookActions {
  go(place: Place): void
  select(id: string | null): void
  hover(id: string | null): void
  /** lights up what a check speaks of */
  lightUp(ids: readonly string[]): void
  /** rings a point of a run in the drawing */
  lightPoint(point: SessionState['litPoint']): void
  explain(why: Why | null): void
  /** goes to the work place of a field and brings it into view */
  seek(path: FieldPath | null): void
}

/** Where the user looks; nothing of the job changes. */
export function lookActions({ get, set }: SessionParts): LookActions {
  return {
    go: (place) => set({ place, why: null, litPoint: null, lit: [] }),
    select: (selected) => set({ selected, why: null }),
    hover(hovered) {
      if (get().hovered !== hovered) set({ hovered })
    },
    lightUp: (lit) => set({ lit }),
    lightPoint: (litPoint) => set({ litPoint }),
    explain: (why) => set({ why }),
    seek(sought) {
      const field = sought === null ? undefined : findField(sought)
      set({ sought, ...(field ? { place: placeOf(field.section), why: null } : {}) })
    },
  }
}
