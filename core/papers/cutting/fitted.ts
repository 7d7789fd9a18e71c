import type { Member } from '../../frame/index.ts'

/** Whether a corner of the deck or of an opening reaches into a decking board, which is then marked where it lies. */
export function isFitted({ role, plan, ends, lay }: Member): boolean {
  return (
    role === 'decking' &&
    plan !== undefined &&
    ends === undefined &&
    lay !== undefined &&
    lay.part !== 'border'
  )
}
