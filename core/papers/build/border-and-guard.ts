import type { Job } from '../../job/index.ts'

/**
 * What must be told where a border and a guard ask for the same room: posts inside the rim stand where the joists and
 * blocks under the border's inner edge lie; null where they do not meet.
 */
export function borderAndGuard({ decking, guard }: Job): string | null {
  if (decking.border === 0 || guard.where === 'none') return null
  return 'Guard posts stand where the joists and blocks under the border’s inner edge lie: cut those at each post, and carry their cut ends and the boards there by a block on each side of the post. The order counts them whole, and the blocks; the border’s boards are notched round the posts.'
}
