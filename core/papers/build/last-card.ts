import type { Design } from '../../estimate-types.ts'

/** The card that is seen with the final one, by what the job has. */
export function lastCardTitle({ stairs, guard }: Pick<Design, 'stairs' | 'guard'>): string {
  if (stairs.length === 0) return 'Guard'
  return guard === null || guard.stretches.length === 0 ? 'Stairs' : 'Stairs and guard'
}
