import type { Member } from '../frame/index.ts'
import { printLength, ticks } from '../units/index.ts'

/** Where a piece of stairs or of a guard goes, for the crew; null for a piece of the deck itself. */
export function addedPlace(member: Member): string | null {
  const { id, mark, role } = member
  switch (role) {
    case 'stringer':
    case 'stair header':
    case 'stair upright':
    case 'stair strip':
    case 'tread':
    case 'riser':
      return stairPlace(id, role)
    case 'step frame':
      return `box between levels, ${mark}`
    case 'step tread':
      return `board of the box between levels, ${mark}`
    case 'guard post':
    case 'guard rail':
    case 'guard cap':
    case 'guard blocking':
      return id.startsWith('stair-') ? `${role} beside the stairs` : guardPlace(member)
    case 'landing beam':
    case 'landing joist':
    case 'landing decking':
    case 'landing post':
      return `${role}, ${middle(member)}`
    case 'landing brace':
      return `between the landing’s posts, ${middle(member)}`
    default:
      return null
  }
}

/** Posts and blocks stand in the plan; rails and caps are told by the stretch and the bay that their ids hold. */
function guardPlace(member: Member): string {
  const { id, role } = member
  const [stretch, part] = id.split('-').filter((one) => /^\d+$/.test(one))
  if (id.startsWith('guard-filler-')) return `upright on the face of GP${stretch} towards the stairs`
  if (role === 'guard rail') return `guard rail, stretch ${stretch}, bay ${part}`
  return role === 'guard cap' ? `guard cap, stretch ${stretch}, piece ${part}` : `${role}, ${middle(member)}`
}

/** Where the middle of a piece lies over the plan, from the deck's left end and from its rear edge: to the tick, for a tape. */
function middle({ box }: Member): string {
  const print = (a: number, b: number) => printLength(ticks(Math.round((a + b) / 2)))
  return `its middle ${print(box.x0, box.x1)} along, ${print(box.y0, box.y1)} from the rear edge`
}

/** Ids of the pieces of stairs hold the flight and, from the lowest, the step. */
function stairPlace(id: string, role: Member['role']): string {
  const numbers = id.split('-').filter((part) => /^\d+$/.test(part))
  const flight = `flight ${numbers[0]}`
  if (role === 'tread') return `tread ${numbers[1]} from below, ${flight}`
  if (role === 'riser') return `riser ${numbers[1]} from below, ${flight}`
  if (role === 'stair strip') return `on the landing’s beam, under the feet of ${flight}`
  if (role === 'stair upright')
    return `behind the deck’s edge and the header at stringer ${numbers[1]}, ${flight}`
  return role === 'stringer'
    ? `stringer ${numbers[1]}, ${flight}`
    : `behind the heads of the stringers, ${flight}`
}
