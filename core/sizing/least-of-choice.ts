import type { LeastCents } from './least-cost.ts'
import type { Places } from './places.ts'
import type { Choice } from './types.ts'

/** What a choice costs at least, part by part; null where it cannot be framed. */
export function leastOfChoice(places: Places, choice: Choice): LeastCents | null {
  const { setbacks, joist, front, rear, postSize, footing } = choice
  const model = places.modelAt(setbacks)
  const skeleton = model?.skeletons.of(choice) ?? null
  if (model === null || skeleton === null) return null
  const parts = [
    model.joist(joist),
    model.beam('front', front),
    model.posts(skeleton.front, front, joist.size, postSize),
    ...(rear === null
      ? []
      : [model.beam('rear', rear), model.posts(skeleton.rear, rear, joist.size, postSize)]),
  ]
  const count = skeleton.front.count + (rear === null ? 0 : skeleton.rear.count)
  return parts.reduce<LeastCents | null>(
    (sum, part) => (sum === null || part === null ? null : sum + part),
    model.base + count * model.footing(footing),
  )
}
