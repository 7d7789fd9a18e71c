import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { designJob } from '../../core/design.ts'
import { costDesign } from '../../core/estimate.ts'
import { type Job, readJob } from '../../core/job/index.ts'
import { SAMPLE_BOOK } from '../../core/pricing/index.ts'
import { catalogueOf } from '../../core/sizing/catalogue.ts'
import { withChoice, withSetbacks } from '../../core/sizing/choice.ts'
import { type CostModel, costModel } from '../../core/sizing/cost-model.ts'
import { Effort } from '../../core/sizing/effort.ts'
import { KnownFailures, standsInTheWay } from '../../core/sizing/known-failures.ts'
import { standByNumber } from '../../core/sizing/stand-by-number.ts'
import type { Choice } from '../../core/sizing/types.ts'
import { CATALOGUE } from '../fixtures/catalogue.ts'
import { engine } from '../fixtures/engine.ts'
import { drawnDeck, flushDeck } from './arbitrary-deck.ts'

const UNHURRIED = 3_600_000
const UNLIMITED = 1e12
const runs = Number(process.env.FC_RUNS ?? 12)

/** Decks of every outline of the catalogue, and rectangles drawn at random, with dropped beams and a flush one. */
const decks: fc.Arbitrary<Job> = fc
  .oneof(drawnDeck, flushDeck, fc.constantFrom(...CATALOGUE.map(({ job }) => job)))
  .map((statement) => {
    const read = readJob(statement)
    if (!read.ok) throw new Error(JSON.stringify(read.error))
    return read.value.job
  })

const numbers = fc.array(fc.nat(), { minLength: 6, maxLength: 6 })

/** One way of the whole catalogue. */
function wayOf(job: Job, seed: readonly number[]): Choice {
  const { setbacks, joists, front, rear, postSizes, footings } = catalogueOf(job, SAMPLE_BOOK, [])
  const pick = <One>(all: readonly One[], at: number): One => {
    const one = all[(seed[at] ?? 0) % all.length]
    if (one === undefined) throw new Error('nothing to pick from')
    return one
  }
  return {
    setbacks: pick(setbacks, 0),
    joist: pick(joists, 1),
    front: pick(front, 2),
    rear: pick(rear, 3),
    postSize: pick(postSizes, 4),
    footing: pick(footings, 5),
  }
}

/** Cost models of a deck, one for each place of its beams. */
function modelsOf(job: Job) {
  const catalogue = catalogueOf(job, SAMPLE_BOOK, [])
  const made = new Map<string, CostModel | null>()
  return ({ setbacks }: Choice): CostModel | null => {
    const key = `${setbacks.front} ${setbacks.rear}`
    const found = made.get(key)
    if (found !== undefined) return found
    const model = costModel(withSetbacks(job, setbacks), SAMPLE_BOOK, catalogue, new Effort(UNLIMITED))
    made.set(key, model)
    return model
  }
}

describe('bounds of sizing', () => {
  it('never lie above what the estimate finds', { timeout: UNHURRIED }, () => {
    fc.assert(
      fc.property(decks, numbers, (job, seed) => {
        const choice = wayOf(job, seed)
        const made = designJob(withChoice(job, choice), [])
        if (!made.ok) return
        const { pricing } = costDesign(made.value, SAMPLE_BOOK, engine, { quick: true })
        const model = modelsOf(job)(choice)
        const skeleton = model?.skeletons.of(choice) ?? null
        if (pricing === null || model === null || skeleton === null) return
        const { front, rear, joist, postSize, footing } = choice
        const sum = [
          model.base,
          model.joist(joist),
          model.beam('front', front),
          rear && model.beam('rear', rear),
          model.posts(skeleton.front, front, joist.size, postSize),
          rear && model.posts(skeleton.rear, rear, joist.size, postSize),
          (skeleton.front.count + (rear === null ? 0 : skeleton.rear.count)) * model.footing(footing),
        ].reduce<number>((total, part) => total + (part ?? 0), 0)
        // the same slack for roundings of lines as the search leaves
        expect(sum - 200).toBeLessThanOrEqual(pricing.totals.cost)
      }),
      { numRuns: runs },
    )
  })

  it('know where posts stand without framing the deck', { timeout: UNHURRIED }, () => {
    fc.assert(
      fc.property(decks, numbers, (job, seed) => {
        const choice = wayOf(job, seed)
        const made = designJob(withChoice(job, choice), [])
        const skeleton = modelsOf(job)(choice)?.skeletons.of(choice) ?? null
        if (!made.ok || skeleton === null) return
        const { posts } = made.value.frame
        for (const side of ['front', 'rear'] as const)
          expect(skeleton[side].count).toBe(posts.filter(({ beam }) => beam === side).length)
      }),
      { numRuns: runs },
    )
  })

  it('rule out no way that passes', { timeout: UNHURRIED }, () => {
    fc.assert(
      fc.property(decks, fc.array(numbers, { minLength: 12, maxLength: 12 }), (job, seeds) => {
        const failures = new KnownFailures()
        const modelOf = modelsOf(job)
        for (const seed of seeds) {
          const choice = wayOf(job, seed)
          const skeleton = modelOf(choice)?.skeletons.of(choice) ?? null
          if (skeleton === null) continue
          const way = { choice, skeleton: standByNumber(job) ? null : skeleton.id }
          const made = designJob(withChoice(job, choice), [])
          const failing = made.ok ? made.value.checks.filter((one) => standsInTheWay(one, new Set())) : []
          const ruledOut = failures.hasFrame(way) || failures.hasFooting(way) || failures.hasJoists(way)
          if (ruledOut && made.ok) expect(failing.length, JSON.stringify(choice)).toBeGreaterThan(0)
          for (const check of failing) failures.addCheck(check, way)
        }
      }),
      { numRuns: Math.max(10, Math.round(runs / 4)) },
    )
  })
})
