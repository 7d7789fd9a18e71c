import type { Fault, Job } from '../job/index.ts'
import { printLength, ticks } from '../units/index.ts'
import { footingDepth } from './footings.ts'
import type { Post } from './types.ts'

/** Posts that come out at no length: the deck is too low for what stands under it. */
export function postLengthFaults(
  job: Job,
  posts: readonly (Omit<Post, 'length'> & { readonly exactLength: number })[],
): readonly Fault[] {
  const shortest = posts.reduce((least, post) => Math.min(least, post.exactLength), Number.POSITIVE_INFINITY)
  if (shortest > 0) return []
  const post = posts.find((one) => one.exactLength === shortest)
  const missing = ticks(Math.floor(-shortest) + 1)
  return [
    {
      path: 'size.height',
      message: `with the decking at ${printLength(job.size.height)}, post ${post?.number ?? 1} would have no length, for the beam would lie in or under its base`,
      fix: `raise the deck by at least ${printLength(missing)}, or take shallower joists, a shallower beam or less concrete above the ground`,
    },
  ]
}

/** Footings that cannot be cast as stated. */
export function footingFaults(job: Job): readonly Fault[] {
  const { tube, base, baseThickness, projection } = job.ground
  const faults: Fault[] = []
  if (base > 0 && base < tube) {
    faults.push({
      path: 'ground.base',
      message: `a base ${printLength(base)} across is narrower than its tube of ${printLength(tube)}`,
      fix: 'make it as wide as the tube at least, or 0 for none',
    })
  }
  if (base > 0 && baseThickness <= 0) {
    faults.push({
      path: 'ground.baseThickness',
      message: 'a base needs a thickness',
      fix: 'state it, 6 in at least (IRC 2021 Table R507.3.1), or set the base to 0',
    })
  }
  if (base > 0 && baseThickness >= footingDepth(job)) {
    faults.push({
      path: 'ground.baseThickness',
      message: `a base ${printLength(baseThickness)} thick does not lie under the ground in a hole ${printLength(footingDepth(job))} deep`,
      fix: 'make it thinner than the hole is deep',
    })
  }
  if (base === 0 && footingDepth(job) + projection <= 0) {
    faults.push({
      path: 'ground.projection',
      message: 'the tube comes out at no length',
      fix: 'state how far the concrete stands out of the ground, 0 or more',
    })
  }
  return faults
}
