import { feet, inches, TICKS_PER_INCH, type Ticks, ticks } from '../units/index.ts'
import { beamExtentField } from './beam-extent.ts'
import type { FieldValue } from './field-value.ts'
import type { FieldPath } from './types.ts'

type Side = 'front' | 'rear'

/** Posts under a beam of usual length, and the inset of its end posts: common practice, no source. */
const USUAL = { posts: 4, inset: inches(12) }
/** Posts farther apart ask for beams that few yards sell: common practice, no source. */
const APART = feet(8)
/** An end post nearer the end of its beam would not stand wholly under it: half of a 6x6, up to a whole inch. */
const LEAST_INSET = inches(3)

/**
 * Posts and insets that the statement leaves open: four posts, fewer under a short beam so that it overhangs its end
 * posts by no more than a quarter of the span beside them (IRC 2021 R507.5) and their footings stay apart, more under a
 * long one; a beam too short for the usual inset has a smaller one. So no default fails where another would not.
 */
export function defaultPosts(
  values: ReadonlyMap<FieldPath, FieldValue>,
  given: ReadonlySet<FieldPath>,
): ReadonlyMap<FieldPath, number> {
  const extent = beamExtentField({ joists: values.get('shape.joists') === 'along' ? 'along' : 'away' })
  const found = new Map<FieldPath, number>()
  for (const side of ['front', 'rear'] as const) {
    const [postsAt, insetAt] = [pathOf(side, 'posts'), pathOf(side, 'inset')]
    const inset = given.has(insetAt) ? number(insetAt) : USUAL.inset
    const posts = given.has(postsAt) ? number(postsAt) : postsFor(inset)
    if (!given.has(postsAt)) found.set(postsAt, posts)
    if (!given.has(insetAt)) found.set(insetAt, insetFor(posts))
  }
  return found

  function postsFor(inset: number): number {
    const between = number(extent) - 2 * inset
    const footing = Math.max(number('ground.tube'), number('ground.base'))
    const least = Math.max(4 * inset, footing)
    const wanted = Math.max(USUAL.posts, Math.ceil(between / APART) + 1)
    return Math.max(2, Math.min(wanted, Math.floor(between / least) + 1))
  }

  /** In whole inches: a quarter of the span beside it or less. */
  function insetFor(posts: number): Ticks {
    const most = number(extent) / (4 * (posts - 1) + 2) / TICKS_PER_INCH
    const whole = inches(Math.floor(most))
    return ticks(Math.max(LEAST_INSET, Math.min(USUAL.inset, whole)))
  }

  function number(path: FieldPath): number {
    const value = values.get(path)
    if (typeof value !== 'number') throw new TypeError(`${path} is not a number`)
    return value
  }
}

function pathOf(side: Side, what: 'posts' | 'inset'): FieldPath {
  return `frame.beams.${side}.${what}`
}
