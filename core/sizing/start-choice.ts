import type { Job } from '../job/index.ts'
import { widthOf } from './catalogue.ts'
import { setbacksIn } from './choice.ts'
import { widestOf } from './strongest-like.ts'
import type { BeamChoice, Catalogue, Choice } from './types.ts'

/** The sizes with which most decks can be framed: two posts of the widest size on the narrowest footing. */
export function startOf(job: Job, catalogue: Catalogue): Choice {
  const beam = ({ size }: BeamChoice, options: readonly (BeamChoice | null)[]): BeamChoice => ({
    size,
    plies: Math.max(...options.map((one) => one?.plies ?? 0)),
    posts: 2,
  })
  const { joists, front, rear, postSizes, footings } = catalogue
  const [joist] = joists
  const frontFirst = front[0]
  const rearFirst = rear[0]
  const footing = footings.reduce((a, b) => (widthOf(b) < widthOf(a) ? b : a))
  if (joist === undefined || frontFirst === undefined) throw new Error('an empty catalogue has no start')
  return {
    setbacks: setbacksIn(job),
    joist,
    front: beam(frontFirst, front),
    rear: rearFirst === null || rearFirst === undefined ? null : beam(rearFirst, rear),
    postSize: widestOf(postSizes),
    footing,
  }
}
