import type { Member } from '../frame/index.ts'
import type { StairPlan } from '../stairs/index.ts'

/** What stands on or beside the frame and is taken off with it; null where the job asks for none. */
export interface Additions {
  readonly stairs: StairPlan | null
}

export const NO_ADDITIONS: Additions = { stairs: null }

/** Lumber of all additions. */
export function addedMembers({ stairs }: Additions): readonly Member[] {
  return stairs?.members ?? []
}
