import { type LumberSize, sectionOf } from '../data/index.ts'
import type { Job } from '../job/index.ts'
import { postTakesBeams, widthOf } from './catalogue.ts'
import { setbacksIn } from './choice.ts'
import { isFlush } from './is-flush.ts'
import { widestOf } from './strongest-like.ts'
import type { BeamChoice, Catalogue, Choice } from './types.ts'

/**
 * The sizes with which most decks can be framed: two posts of the widest size on the narrowest footing, and the
 * shallowest joists between the deepest beams where those are flush.
 */
export function startOf(job: Job, catalogue: Catalogue): Choice {
  const { joists, front, rear, postSizes, footings } = catalogue
  const postSize = widestOf(postSizes)
  // as many plies as the widest post takes
  const takes = (one: BeamChoice) => postTakesBeams(job, { front: one, rear: null, postSize })
  const beam = (
    side: 'front' | 'rear',
    first: BeamChoice,
    options: readonly (BeamChoice | null)[],
  ): BeamChoice => ({
    size: isFlush(job, side) ? deepest(options, first) : first.size,
    plies: Math.max(...options.flatMap((one) => (one === null || !takes(one) ? [] : one.plies)), 1),
    posts: 2,
  })
  const flush = isFlush(job, 'front') || isFlush(job, 'rear')
  const joist = flush ? joists.reduce((a, b) => (depthOf(b) < depthOf(a) ? b : a)) : joists[0]
  const frontFirst = front[0]
  const rearFirst = rear[0]
  const footing = footings.reduce((a, b) => (widthOf(b) < widthOf(a) ? b : a))
  if (joist === undefined || frontFirst === undefined) throw new Error('an empty catalogue has no start')
  return {
    setbacks: setbacksIn(job),
    joist,
    front: beam('front', frontFirst, front),
    rear: rearFirst === null || rearFirst === undefined ? null : beam('rear', rearFirst, rear),
    postSize,
    footing,
  }
}

function deepest(options: readonly (BeamChoice | null)[], first: BeamChoice): LumberSize {
  return options.reduce<BeamChoice>((a, b) => (b !== null && depthOf(b) > depthOf(a) ? b : a), first).size
}

function depthOf({ size }: { readonly size: LumberSize }): number {
  return sectionOf(size).depth
}
