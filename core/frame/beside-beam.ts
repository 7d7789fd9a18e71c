import { type Ticks, ticks } from '../units/index.ts'
import type { Frame } from './types.ts'

/**
 * A step on the plan, to the right and away from the house, as one along a post's beam, from its left end on, and one
 * square to it, off on its outer side; both in ticks, the one along in whole ones. The same two where the beam lies along
 * the house.
 */
export function besideBeam(
  { beams }: Pick<Frame, 'beams'>,
  beamId: string,
  { dx, dy }: { readonly dx: number; readonly dy: number },
): { readonly along: Ticks; readonly across: number } {
  const beam = beams.find(({ id }) => id === beamId)
  if (beam === undefined) throw new Error(`no beam ${beamId}`)
  const [from, to] = beam.line
  const [x, y] = [to.x - from.x, to.y - from.y]
  const length = Math.hypot(x, y)
  return { along: ticks(Math.round((dx * x + dy * y) / length)), across: (dy * x - dx * y) / length }
}
