import type { Member } from '../frame/index.ts'
import { inches, printInches, ticks } from '../units/index.ts'
import type { JoistContext } from './context.ts'

/** Two flanges side by side want so much between two joists: common practice, no source; the listing governs. */
const ROOM = inches(2.5)

/** Joists that hang in hangers so close to another one that the flanges between them have no room; empty where none do. */
export function closeHangers({ frame, joistIds }: JoistContext): string {
  const hung = new Set(frame.connectors.flatMap((one) => (one.kind === 'joist hanger' ? one.at : [])))
  const joists = frame.members.filter(({ id, plan }) => hung.has(id) && plan === undefined)
  const own = joists.filter(({ id }) => joistIds.includes(id))
  const pairs = own.flatMap((joist) =>
    joists.flatMap((other) => {
      const between = clearBetween(joist, other)
      // told once, in the group of the first of the two
      const isFirst = joists.indexOf(joist) < joists.indexOf(other)
      return isFirst && between > 0 && between < ROOM
        ? [`${joist.mark} and ${other.mark}, ${printInches(ticks(Math.round(between)))} apart`]
        : []
    }),
  )
  return pairs.length === 0
    ? ''
    : `${pairs.join('; ')}: two hangers’ flanges have no room there; use hangers with flanges turned in, or ask the designer (common practice, no source). `
}

/** Clear width between two joists that lie side by side; 0 where they do not. */
function clearBetween({ box: a }: Member, { box: b }: Member): number {
  const along = a.x1 - a.x0 > a.y1 - a.y0
  const beside = along ? a.x0 < b.x1 && b.x0 < a.x1 : a.y0 < b.y1 && b.y0 < a.y1
  if (!beside || a.z0 !== b.z0) return 0
  return along ? Math.max(b.y0 - a.y1, a.y0 - b.y1) : Math.max(b.x0 - a.x1, a.x0 - b.x1)
}
