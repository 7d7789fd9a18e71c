import { type LumberSize, sectionOf } from '../data/index.ts'
import { type Frame, frameDeck } from '../frame/index.ts'
import { isRectangle, type Job } from '../job/index.ts'
import { layAdditions } from '../lay-additions.ts'
import { type Layout, layOut } from '../layout/index.ts'
import { isModelled, type PriceBook, scopeTopics } from '../pricing/index.ts'
import { feet, ticks } from '../units/index.ts'
import { type ApartCosts, apartCosts, barePosts } from './apart-costs.ts'
import { withChoice } from './choice.ts'
import { type LeastCents, leastCost, sharesOf } from './least-cost.ts'
import { memo } from './memo.ts'
import { type SidePosts, Skeletons } from './skeleton.ts'
import { startOf } from './start-choice.ts'
import type { BeamChoice, Catalogue, Choice, JoistChoice } from './types.ts'

type Side = 'front' | 'rear'

/** What each part of a deck with its beams in one place costs at least; null where the part cannot be framed with any other. */
export interface CostModel {
  readonly base: LeastCents
  readonly joist: (joist: JoistChoice) => LeastCents | null
  /** plies alone */
  readonly beam: (side: Side, beam: BeamChoice) => LeastCents | null
  /** posts that stand so under a beam, with their metal and work */
  readonly posts: (
    posts: SidePosts,
    beam: BeamChoice,
    joist: LumberSize,
    post: LumberSize,
  ) => LeastCents | null
  readonly footing: ApartCosts['footing']
  readonly skeletons: Skeletons
  /** for the same job with its beams elsewhere */
  readonly shared: Shared
}

/** Costs that do not hang on where the beams lie. */
interface Shared {
  readonly apart: ApartCosts
  /** of a rectangle: its joists and beams are the same wherever the beams lie */
  readonly parts: Pick<CostModel, 'base' | 'joist' | 'beam'> | null
}

/** Far above the ground, so that no deck taken off for its parts has a post of no length. */
const RAISED = feet(8)

/**
 * The least costs of every part, by taking off decks that differ in that part alone. Null where not even the smallest
 * deck of the catalogue can be framed.
 */
export function costModel(
  job: Job,
  book: PriceBook,
  catalogue: Catalogue,
  known: Shared | null = null,
): CostModel | null {
  const start = startOf(job, catalogue)
  const apart = known?.apart ?? apartOf(job, book, start)
  const parts = known?.parts ?? (apart === null ? null : partsOf(job, book, start, apart))
  if (apart === null || parts === null) return null
  return {
    ...parts,
    posts: ({ count, reach, shortest }, beam, joist, postSize) => {
      const each = apart.post(postSize)
      if (each === null) return null
      const above = sectionOf(joist).depth + sectionOf(beam.size).depth
      if (shortest - above <= 0) return null
      return count * each.fixed + each.perTick * (reach - count * above)
    },
    footing: apart.footing,
    skeletons: new Skeletons(job, catalogue),
    shared: {
      apart,
      parts: isRectangle(job) && job.shape.openings.trim() === '' ? parts : null,
    },
  }
}

interface Raised {
  readonly job: Job
  readonly frame: Frame
}

/** The deck framed high above the ground, where the height adds nothing to the hours. */
function raised(job: Job, choice: Choice): Raised | null {
  const high: Job = {
    ...job,
    size: { ...job.size, height: ticks(job.size.height + RAISED) },
    work: { ...job.work, heightAndSize: false },
  }
  const sized = withChoice(high, choice)
  const layout = layOut(sized)
  const frame = layout.ok ? frameDeck(sized, layout.value) : null
  return frame?.ok === true ? { job: sized, frame: frame.value } : null
}

function apartOf(job: Job, book: PriceBook, start: Choice): ApartCosts | null {
  const first = raised(job, start)
  return first === null ? null : apartCosts(job, book, start, first.frame, (choice) => raised(job, choice))
}

function partsOf(job: Job, book: PriceBook, start: Choice, apart: ApartCosts): Shared['parts'] {
  const bare = (choice: Choice): LeastCents | null => {
    const made = raised(job, choice)
    return made === null ? null : leastCost(made.job, book, barePosts(made.frame))
  }
  const first = raised(job, start)
  if (first === null) return null
  const whole = leastCost(first.job, book, barePosts(first.frame))
  const beyondStart = (choice: Choice) => {
    const cost = bare(choice)
    return cost === null ? null : cost - whole
  }
  const thin = isRectangle(job) ? null : thinnest(start, (choice) => bare(choice) !== null)
  const thinWhole = thin === null ? null : bare(thin)
  const beam = memo(
    ({ side, size, plies }: { side: Side; size: LumberSize; plies: number }) => `${side} ${size} ${plies}`,
    ({ side, size, plies }) => beyondStart({ ...start, [side]: { size, plies, posts: 2 } }),
  )
  return {
    base: whole + stated(job) - first.frame.footings.length * apart.footing(start.footing),
    joist: memo(
      ({ size, spacing }: JoistChoice) => `${size} ${spacing}`,
      (joist) => {
        const cost = beyondStart({ ...start, joist })
        if (cost === null) return null
        return cost - lapped({ ...start, joist }, cost) + onTop({ ...start, joist })
      },
    ),
    beam: (side, { size, plies }) => beam({ side, size, plies }),
  }

  /** Joists lapped over thin plies are shorter: by how much less they might cost than over the start's. */
  function lapped(choice: Choice, cost: LeastCents): LeastCents {
    if (thin === null || thinWhole === null) return 0
    const thinner = bare({ ...thin, joist: choice.joist })
    return thinner === null ? 0 : Math.max(0, cost - (thinner - thinWhole))
  }

  /** Stairs and guards, which may be fixed to joists. */
  function onTop(choice: Choice): LeastCents {
    if (job.stairs.kind === 'none' && job.guard.where === 'none') return 0
    const sized = withChoice(job, choice)
    const plain: Job = { ...sized, work: { ...sized.work, heightAndSize: false } }
    const layout = layOut(plain)
    const frame = layout.ok ? frameDeck(plain, layout.value) : null
    if (!layout.ok || frame?.ok !== true) return 0
    return additionsCost(plain, book, layout.value, frame.value)
  }
}

function additionsCost(job: Job, book: PriceBook, layout: Layout, frame: Frame): LeastCents {
  const additions = layAdditions(job, layout, frame)
  if (!additions.ok) return 0
  return Math.max(0, leastCost(job, book, frame, additions.value) - leastCost(job, book, frame))
}

/** The start with the fewest plies that can be framed; null where only its own can. */
function thinnest(start: Choice, framed: (choice: Choice) => boolean): Choice | null {
  for (let plies = 1; plies < start.front.plies; plies += 1) {
    const rear = start.rear === null ? null : { ...start.rear, plies: Math.min(plies, start.rear.plies) }
    const choice = { ...start, front: { ...start.front, plies }, rear }
    if (framed(choice)) return choice
  }
  return null
}

/** Sums that the job states: they stand in the cost whatever the sizes. */
function stated(job: Job): LeastCents {
  const sums = scopeTopics.map((topic): number => {
    const { included, allowance } = job.scope[topic]
    return included && !isModelled(job, topic) ? allowance : 0
  })
  const { beyond } = sharesOf(job)
  return sums.reduce((sum, one) => sum + one, 0) * beyond
}
