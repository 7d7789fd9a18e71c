import type { LumberSize } from '../data/index.ts'
import { isRectangle, type Job } from '../job/index.ts'
import type { PlacedChoice } from './known-failures.ts'
import type { BeamChoice, Choice } from './types.ts'

/** Knee braces are cut from it, as long as their posts let them be. */
const OF_BRACES: LumberSize = '2x6'

/**
 * What the cutting job of a size depends on, where it is made of whole parts of a choice; null for posts, which share
 * theirs with nothing else, and for braces, whose lengths hang on the whole choice.
 */
export function partOf(job: Job, { choice, skeleton }: PlacedChoice, size: string): string | null {
  const { joist, front, rear, setbacks } = choice
  if (size === OF_BRACES && job.frame.bracing === 'knee braces') return null
  const beam = (one: BeamChoice | null) => (one?.size === size ? `${one.plies} ${one.posts}` : '')
  const parts = [
    job.decking.size === size ? `decking over joists at ${joist.spacing}` : '',
    joist.size === size ? `joists at ${joist.spacing}` : '',
    front.size === size ? `front ${beam(front)}` : '',
    rear?.size === size ? `rear ${beam(rear)}` : '',
  ].filter((part) => part !== '')
  if (parts.length === 0) return null
  const placed =
    skeleton === null
      ? ''
      : `, posts ${skeleton}, plies ${front.plies} ${rear?.plies ?? 0}, joists ${joist.spacing}`
  const apart = isDeckingAlone(job, choice, size) ? '' : `${setbacks.front}/${setbacks.rear}`
  return `${size}: ${parts.join(', ')}${placed}; ${apart}`
}

/** Sizes of which parts are to be known together. */
export function sizesOf({ decking }: Job, { joist, front, rear }: Choice): ReadonlySet<LumberSize> {
  return new Set([decking.size, joist.size, front.size, ...(rear === null ? [] : [rear.size])])
}

/** Courses of a rectangle lie alike wherever its beams do. */
function isDeckingAlone(job: Job, { joist, front, rear }: Choice, size: string): boolean {
  return isRectangle(job) && ![joist.size, front.size, rear?.size].some((one) => one === size)
}
