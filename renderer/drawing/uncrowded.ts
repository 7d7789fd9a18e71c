import type { Primitive } from '../../core/papers/index.ts'

/** Room that one mark needs along its row, px. */
const ROOM = 30

/** Leaves out marks of a row that would run into the mark before them. */
export function uncrowded(primitives: readonly Primitive[], scale: number): readonly Primitive[] {
  const lastOnRow = new Map<number, number>()
  return primitives.filter((p) => {
    if (p.kind !== 'text' || p.layer !== 'marks') return true
    const last = lastOnRow.get(p.y)
    if (last !== undefined && Math.abs(p.x - last) * scale < ROOM) return false
    lastOnRow.set(p.y, p.x)
    return true
  })
}
