import type { Box, Member } from './types.ts'

/** Where a rim's end stands against the side of an end joist that runs on past it. */
export interface InnerCorner {
  readonly rim: Member
  readonly end: Member
  /** whether the rim lies along x */
  readonly alongX: boolean
  /** which way the rim goes on from there */
  readonly rimOn: -1 | 1
}

/** Every inner corner of a frame at which a rim ends square at an end joist. */
export function innerCorners(members: readonly Member[]): readonly InnerCorner[] {
  const ends = members.filter(({ role, plan }) => role === 'end joist' && plan === undefined)
  return members
    .filter(({ role, plan }) => role === 'rim' && plan === undefined)
    .flatMap((rim) => ends.flatMap((end) => cornerOf(rim, end) ?? []))
}

function cornerOf(rim: Member, end: Member): InnerCorner | null {
  const alongX = rim.box.x1 - rim.box.x0 > rim.box.y1 - rim.box.y0
  const [r0, r1, rFront, rBack] = sides(rim.box, alongX)
  const [e0, e1, eNear, eFar] = sides(end.box, alongX)
  const isLevel = Math.abs(rim.box.z1 - end.box.z1) < 1
  // at its own end a joist is met by a rim that covers it
  const runsPast = eNear < rFront - 1 && eFar > rBack + 1
  if (!isLevel || !runsPast || e1 - e0 > eFar - eNear) return null
  if (Math.abs(r0 - e1) < 1) return { rim, end, alongX, rimOn: 1 }
  return Math.abs(r1 - e0) < 1 ? { rim, end, alongX, rimOn: -1 } : null
}

/** From and to along one axis, from and to along the other. */
function sides({ x0, x1, y0, y1 }: Box, alongX: boolean): readonly [number, number, number, number] {
  return alongX ? [x0, x1, y0, y1] : [y0, y1, x0, x1]
}
