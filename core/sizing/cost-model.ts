import { type LumberSize, sectionOf } from '../data/index.ts'
import type { FramedJob } from '../design.ts'
import { isRectangle, type Job, stairsOf } from '../job/index.ts'
import { layAdditions } from '../lay-additions.ts'
import { isModelled, type PriceBook, scopeTopics } from '../pricing/index.ts'
import { type ApartCosts, apartCosts, barePosts } from './apart-costs.ts'
import { BoundFrames } from './bound-frames.ts'
import type { Effort } from './effort.ts'
import { isFlush } from './is-flush.ts'
import { type LeastCents, leastCost, sharesOf } from './least-cost.ts'
import { memo } from './memo.ts'
import { PartsOnce } from './parts-once.ts'
import { type SidePosts, Skeletons } from './skeleton.ts'
import { standByNumber } from './stand-by-number.ts'
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
  readonly parts: Parts | null
}

type Parts = Pick<CostModel, 'base' | 'joist' | 'beam'>

interface Costs {
  readonly apart: ApartCosts
  readonly parts: Parts
}

/**
 * The least costs of every part, by taking off decks that differ in that part alone. Null where not even the smallest
 * deck of the catalogue can be framed.
 */
export function costModel(
  job: Job,
  book: PriceBook,
  catalogue: Catalogue,
  effort: Effort,
  once = new PartsOnce(job),
  known: Shared | null = null,
): CostModel | null {
  const start = startOf(job, catalogue)
  const costs = costsOf(new BoundFrames(job, effort, once), book, start, known)
  if (costs === null) return null
  const { apart, parts } = costs
  return {
    ...parts,
    posts: ({ count, underJoists, reach, shortest }, beam, joist, postSize) => {
      const each = apart.post(postSize)
      if (each === null) return null
      const [joists, plies] = [sectionOf(joist).depth, sectionOf(beam.size).depth]
      if (shortest.dropped - joists - plies <= 0 || shortest.flush - plies <= 0) return null
      return count * each.fixed + each.perTick * (reach - underJoists * joists - count * plies)
    },
    footing: apart.footing,
    skeletons: new Skeletons(job, catalogue, effort),
    shared: {
      apart,
      parts: standByNumber(job) && job.shape.openings.trim() === '' ? parts : null,
    },
  }
}

/** What is known already, and what is not; null where the start cannot be framed. */
function costsOf(frames: BoundFrames, book: PriceBook, start: Choice, known: Shared | null): Costs | null {
  if (known !== null && known.parts !== null) return { apart: known.apart, parts: known.parts }
  const first = frames.raised(start)
  if (first === null) return null
  const apart =
    known?.apart ?? apartCosts(frames.job, book, start, first.frame, (choice) => frames.raised(choice))
  return { apart, parts: partsOf(frames, book, start, first, apart) }
}

function partsOf(
  frames: BoundFrames,
  book: PriceBook,
  start: Choice,
  first: FramedJob,
  apart: ApartCosts,
): Parts {
  const { job } = frames
  const bare = (choice: Choice): LeastCents | null => {
    const made = frames.raised(choice)
    return made === null ? null : leastCost(made.job, book, barePosts(made.frame))
  }
  const whole = leastCost(first.job, book, barePosts(first.frame))
  const beyondStart = (choice: Choice) => {
    const cost = bare(choice)
    return cost === null ? null : cost - whole
  }
  const thin = isRectangle(job) ? null : thinnest(start, (choice) => bare(choice) !== null)
  const thinWhole = thin === null ? null : bare(thin)
  const beam = memo(
    ({ side, size, plies }: { side: Side; size: LumberSize; plies: number }) => `${side} ${size} ${plies}`,
    ({ side, size, plies }) => {
      const choice = { ...start, [side]: { size, plies, posts: 2 } }
      const cost = beyondStart(choice)
      return cost === null || !isFlush(job, side) ? cost : cost - longerJoists(choice)
    },
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

  /**
   * Joists hung from a thinner flush beam are longer: by how much at most that makes the start's joists dearer. Others
   * may cost less for the same length, so none of it counts.
   */
  function longerJoists(choice: Choice): LeastCents {
    const made = frames.raised(choice)
    return made === null ? 0 : Math.max(0, joistsOf(made) - joistsOf(first))
  }

  function joistsOf({ frame }: FramedJob): LeastCents {
    const members = frame.members.filter(({ role }) => role.includes('joist'))
    return leastCost(job, book, {
      ...barePosts(frame),
      members,
      beams: [],
      runs: [],
      connectors: [],
      footings: first.frame.footings,
    })
  }

  /** Joists lapped over thin plies are shorter: by how much less they might cost than over the start's. */
  function lapped(choice: Choice, cost: LeastCents): LeastCents {
    if (thin === null || thinWhole === null) return 0
    const thinner = bare({ ...thin, joist: choice.joist })
    return thinner === null ? 0 : Math.max(0, cost - (thinner - thinWhole))
  }

  /** Stairs and guards, which may be fixed to joists; none of it once bounds have had their share of the work. */
  function onTop(choice: Choice): LeastCents {
    if (stairsOf(job).length === 0 && job.guard.where === 'none') return 0
    if (frames.effort.boundsAreDone) return 0
    const made = frames.framed(choice)
    return made === null ? 0 : additionsCost(made, book)
  }
}

function additionsCost({ job, layout, frame: bare }: FramedJob, book: PriceBook): LeastCents {
  const laid = layAdditions(job, layout, bare)
  if (!laid.ok) return 0
  const { frame, ...additions } = laid.value
  return Math.max(0, leastCost(job, book, frame, additions) - leastCost(job, book, bare))
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
