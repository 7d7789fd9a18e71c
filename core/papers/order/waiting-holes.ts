import type { Estimate } from '../../estimate-types.ts'
import { allHoles } from '../../ground/index.ts'
import { numberList } from '../number-list.ts'
import { type Hold, holdsOf, speaksOf } from './holds.ts'

/** Holes under something that is on hold: where they go, how deep and how wide may come out otherwise. */
export interface WaitingHoles {
  readonly hold: Hold
  /** as they are numbered on the ground */
  readonly numbers: readonly number[]
}

type Source = Pick<Estimate, 'checks' | 'frame' | 'job' | 'stairs'>

/** By hold, those whose post or footing it speaks of; a hold on goods alone leaves the ground as it is. */
export function waitingHoles(source: Source): readonly WaitingHoles[] {
  const holes = allHoles(source)
  return holdsOf(source).flatMap((hold) => {
    const numbers = holes
      .filter(({ id, post }) => speaksOf(hold, id) || (post !== null && speaksOf(hold, post.id)))
      .map(({ number }) => number)
    return numbers.length === 0 ? [] : [{ hold, numbers }]
  })
}

/** The holds on a hole by their names; none for one that may be dug. */
export function holdsOnHole(waiting: readonly WaitingHoles[], number: number): string {
  return waiting
    .filter(({ numbers }) => numbers.includes(number))
    .map(({ hold }) => hold.name)
    .join(', ')
}

/** One sentence for each hold: which holes are neither dug nor poured, and until when. */
export function waitingWords(waiting: readonly WaitingHoles[]): readonly string[] {
  return waiting.map(({ hold: { name, what, until }, numbers }) => {
    const [holes, are] = numbers.length === 1 ? ['Hole', 'is'] : ['Holes', 'are']
    return `${holes} ${numberList(numbers)} ${numbers.length === 1 ? 'waits' : 'wait'} (${name}, ${what}): neither dug nor poured before ${until}; where, how wide and how deep ${numbers.length === 1 ? 'it' : 'they'} ${are} may come out otherwise.`
  })
}
