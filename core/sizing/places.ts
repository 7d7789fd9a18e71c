import type { Job } from '../job/index.ts'
import type { PriceBook } from '../pricing/index.ts'
import { footingKey, setbacksKey, tubeTakesPost } from './catalogue.ts'
import { withSetbacks } from './choice.ts'
import { type CostModel, costModel } from './cost-model.ts'
import type { Effort } from './effort.ts'
import type { PlacedChoice } from './known-failures.ts'
import { PartsOnce } from './parts-once.ts'
import type { Skeleton } from './skeleton.ts'
import { standByNumber } from './stand-by-number.ts'
import type { Catalogue, Choice, FootingChoice, Setbacks } from './types.ts'

/** Every place in which the beams of a catalogue may lie, what decks cost there, and the footings that their posts fit on. */
export class Places {
  /** posts stand by their number alone */
  readonly plain: boolean
  readonly parts: PartsOnce
  readonly #models: ReadonlyMap<string, CostModel>
  readonly #footings: ReadonlyMap<string, readonly FootingChoice[]>

  constructor(job: Job, book: PriceBook, catalogue: Catalogue, effort: Effort) {
    this.plain = standByNumber(job)
    this.parts = new PartsOnce(job)
    this.#models = modelsOf(job, book, catalogue, effort, this.parts)
    const [model] = this.#models.values()
    const { frame, ground } = job
    const takes = (footing: FootingChoice, post: Choice['postSize']) =>
      tubeTakesPost(footing.tube, post) || (post === frame.postSize && footing.tube === ground.tube)
    const cost = (footing: FootingChoice) => model?.footing(footing) ?? 0
    this.#footings = new Map(
      catalogue.postSizes.map((post) => [
        post,
        catalogue.footings
          .filter((footing) => takes(footing, post))
          .sort((a, b) => cost(a) - cost(b) || (footingKey(a) < footingKey(b) ? -1 : 1)),
      ]),
    )
  }

  /** Null where no deck can be framed with its beams there. */
  modelAt(setbacks: Setbacks): CostModel | null {
    return this.#models.get(setbacksKey(setbacks)) ?? null
  }

  /** Footings that take a post, the cheapest first. */
  footingsUnder(postSize: Choice['postSize']): readonly FootingChoice[] {
    return this.#footings.get(postSize) ?? []
  }

  /** Null where the deck cannot be laid out so. */
  placed(choice: Choice): PlacedChoice | null {
    if (this.plain) return { choice, skeleton: null }
    const skeleton = this.modelAt(choice.setbacks)?.skeletons.of(choice) ?? null
    return skeleton === null ? null : this.placedOn(choice, skeleton)
  }

  /** The same where the skeleton is known. */
  placedOn(choice: Choice, { id }: Skeleton): PlacedChoice {
    return { choice, skeleton: this.plain ? null : id }
  }
}

/** Cost models by where the beams lie; those that cannot be framed are left out. */
function modelsOf(
  job: Job,
  book: PriceBook,
  catalogue: Catalogue,
  effort: Effort,
  parts: PartsOnce,
): ReadonlyMap<string, CostModel> {
  const models = new Map<string, CostModel>()
  let shared: CostModel['shared'] | null = null
  for (const setbacks of catalogue.setbacks) {
    const at = withSetbacks(job, setbacks)
    const model: CostModel | null = costModel(at, book, catalogue, effort, parts, shared)
    if (model === null) continue
    shared = model.shared
    models.set(setbacksKey(setbacks), model)
  }
  return models
}
