import { type LumberSize, sectionOf } from '../data/index.ts'
import type { Job } from '../job/index.ts'
import { postTakesBeams } from './catalogue.ts'
import type { CostModel } from './cost-model.ts'
import { isFlush } from './is-flush.ts'
import { type LeastCents, ROUNDINGS } from './least-cost.ts'
import type { Places } from './places.ts'
import type { BeamChoice, Catalogue, Choice } from './types.ts'

/** All frames of one joist and one post size with the beams in one place: beams by rising cost. */
export interface Series {
  readonly model: CostModel
  readonly setbacks: Choice['setbacks']
  readonly joist: Choice['joist']
  readonly postSize: Choice['postSize']
  /** of all but beams, posts and footings */
  readonly cost: LeastCents
  readonly front: readonly CostedBeam[]
  readonly rear: readonly CostedBeam[]
}

interface CostedBeam {
  readonly beam: BeamChoice | null
  readonly plies: LeastCents
  /** with its posts, each on the cheapest footing */
  readonly cost: LeastCents
  readonly fewest: number
}

/** Every series of a catalogue that can be framed and stands on a footing. */
export function* seriesOf(job: Job, catalogue: Catalogue, places: Places): Iterable<Series> {
  for (const setbacks of catalogue.setbacks) {
    const model = places.modelAt(setbacks)
    if (model === null) continue
    for (const joist of catalogue.joists) {
      const joistCost = model.joist(joist)
      if (joistCost === null) continue
      for (const postSize of catalogue.postSizes) {
        const [footing] = places.footingsUnder(postSize)
        if (footing === undefined) continue
        const footingCost = model.footing(footing)
        const under = { model, joist, postSize, footingCost, places: catalogue.setbacks.length }
        const costed = (side: Side, beams: readonly (BeamChoice | null)[]) =>
          beams.flatMap((beam) => costedBeam(job, side, beam, under) ?? []).sort((a, b) => a.cost - b.cost)
        yield {
          model,
          setbacks,
          joist,
          postSize,
          cost: model.base + joistCost - ROUNDINGS,
          front: costed('front', catalogue.front),
          rear: costed('rear', catalogue.rear),
        }
      }
    }
  }
}

type Side = 'front' | 'rear'

interface Under extends Pick<Series, 'model' | 'joist' | 'postSize'> {
  /** of the cheapest footing */
  readonly footingCost: LeastCents
  /** of beams, in all */
  readonly places: number
}

/** Null where the beam cannot lie on such posts, or such joists cannot hang from it. */
function costedBeam(
  job: Job,
  side: Side,
  beam: BeamChoice | null,
  { model, joist, postSize, footingCost, places }: Under,
): CostedBeam | null {
  if (beam === null) return { beam, plies: 0, cost: 0, fewest: 0 }
  if (!postTakesBeams(job, { front: beam, rear: beam, postSize })) return null
  if (isFlush(job, side) && depthOf(beam) < depthOf(joist)) return null
  const plies = model.beam(side, beam)
  if (plies === null) return null
  const ways = model.skeletons.sidesOf(side, beam.plies, beam.posts, places).flatMap((posts) => {
    const cost = model.posts(posts, beam, joist.size, postSize)
    return cost === null ? [] : [{ cost: cost + posts.count * footingCost, count: posts.count }]
  })
  if (ways.length === 0) return null
  const cost = plies + Math.min(...ways.map((way) => way.cost))
  return { beam, plies, cost, fewest: Math.min(...ways.map(({ count }) => count)) }
}

function depthOf({ size }: { readonly size: LumberSize }): number {
  return sectionOf(size).depth
}
