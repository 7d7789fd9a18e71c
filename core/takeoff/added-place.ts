import type { Member } from '../frame/index.ts'

/** Where a piece of stairs or of a guard goes, for the crew; null for a piece of the deck itself. */
export function addedPlace({ id, mark, role }: Member): string | null {
  switch (role) {
    case 'stringer':
    case 'stair header':
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
      return `${role} ${mark}${id.startsWith('stair-') ? ', beside the stairs' : ''}`
    case 'landing beam':
    case 'landing joist':
    case 'landing decking':
    case 'landing post':
      return `${role} ${mark}`
    default:
      return null
  }
}

/** Ids of the pieces of stairs hold the flight and, from the lowest, the step. */
function stairPlace(id: string, role: Member['role']): string {
  const numbers = id.split('-').filter((part) => /^\d+$/.test(part))
  const flight = `flight ${numbers[0]}`
  if (role === 'tread') return `tread ${numbers[1]} from below, ${flight}`
  if (role === 'riser') return `riser ${numbers[1]} from below, ${flight}`
  return role === 'stringer'
    ? `stringer ${numbers[1]}, ${flight}`
    : `behind the heads of the stringers, ${flight}`
}
