import { type LumberSize, sectionOf } from '../data/index.ts'
import { designJob } from '../design.ts'
import type { Design } from '../estimate-types.ts'
import { type Frame, footingUnder, postCentres } from '../frame/index.ts'
import { type Job, postList } from '../job/index.ts'
import { groundAt, layOut } from '../layout/index.ts'
import { type PriceBook, priceJob } from '../pricing/index.ts'
import { feet, type Ticks, ticks } from '../units/index.ts'
import { footingKey } from './catalogue.ts'
import { choiceOf, withChoice } from './choice.ts'
import { costOf, type LeastCents, leastCost, sharesOf } from './least-cost.ts'
import type { BeamChoice, Catalogue, Choice, FootingChoice, JoistChoice } from './types.ts'

/** What each part of a deck costs at least; null where the part cannot be framed with any other. */
export interface CostModel {
  readonly base: LeastCents
  readonly joist: (joist: JoistChoice) => LeastCents | null
  /** plies alone */
  readonly beam: (side: 'front' | 'rear', beam: BeamChoice) => LeastCents | null
  /** all posts under a beam with their metal and work */
  readonly posts: (
    side: 'front' | 'rear',
    beam: BeamChoice,
    joist: LumberSize,
    post: LumberSize,
  ) => LeastCents | null
  readonly footing: (footing: FootingChoice) => LeastCents
  readonly apart: ApartCosts
}

/** Costs of what does not depend on where the beams lie. */
interface ApartCosts {
  readonly footing: (footing: FootingChoice) => LeastCents
  readonly post: (size: LumberSize) => { readonly fixed: number; readonly perTick: number } | null
}

/** Far above the ground, so that no deck taken off for its parts has a post of no length. */
const RAISED = feet(8)

/**
 * The least costs of every part, by taking off decks that differ in that part alone. Null where not even the smallest
 * deck of the catalogue can be framed.
 * @param known costs of the same job with its beams elsewhere
 */
export function costModel(
  job: Job,
  book: PriceBook,
  catalogue: Catalogue,
  known: ApartCosts | null = null,
): CostModel | null {
  const start = startOf(job, catalogue)
  const framed = (choice: Choice): Design | null => {
    const high = { ...job, size: { ...job.size, height: ticks(job.size.height + RAISED) } }
    const made = designJob(withChoice(high, choice), [])
    return made.ok ? made.value : null
  }
  const first = framed(start)
  if (first === null) return null
  const withoutPosts = (design: Design | null) =>
    design === null ? null : leastCost(design.job, book, barePosts(design.frame))
  const whole = withoutPosts(first) ?? 0
  const beyondStart = (choice: Choice) => {
    const cost = withoutPosts(framed(choice))
    return cost === null ? null : cost - whole
  }
  const apart = known ?? { footing: footings(first.frame), post: postCosts() }
  const { footing } = apart
  return {
    base: whole + stated(first, book) - first.frame.footings.length * footing(start.footing),
    joist: memo(
      ({ size, spacing }: JoistChoice) => `${size} ${spacing}`,
      (joist) => beyondStart({ ...start, joist }),
    ),
    beam: (() => {
      const cost = memo(
        ({ side, size, plies }: { side: 'front' | 'rear'; size: LumberSize; plies: number }) =>
          `${side} ${size} ${plies}`,
        ({ side, size, plies }) => beyondStart({ ...start, [side]: { size, plies, posts: 2 } }),
      )
      return (side, { size, plies }) => cost({ side, size, plies })
    })(),
    posts: (side, beam, joist, postSize) => {
      const each = apart.post(postSize)
      if (each === null) return null
      const lengths = postLengths(job, side, beam, joist)
      if (lengths.some((length) => length <= 0)) return null
      return lengths.reduce((sum, length) => sum + each.fixed + each.perTick * length, 0)
    },
    footing,
    apart,
  }

  function footings(frame: Frame) {
    return memo(footingKey, (one: FootingChoice) =>
      footingCost(withChoice(job, { ...start, footing: one }), book, frame),
    )
  }

  function postCosts() {
    return memo(
      (size: LumberSize) => size,
      (postSize: LumberSize) => {
        // a narrow post takes few plies
        for (const plies of [3, 2, 1]) {
          const rear = start.rear === null ? null : { ...start.rear, plies }
          const design = framed({ ...start, front: { ...start.front, plies }, rear, postSize })
          if (design !== null) return postCost(design, book)
        }
        return null
      },
    )
  }
}

/** The sizes with which most decks can be framed: two posts of the widest size on the narrowest footing. */
function startOf(job: Job, catalogue: Catalogue): Choice {
  const beam = ({ size }: BeamChoice, options: readonly (BeamChoice | null)[]): BeamChoice => ({
    size,
    plies: Math.max(...options.map((one) => one?.plies ?? 0)),
    posts: 2,
  })
  const { joists, front, rear, postSizes, footings } = catalogue
  const [joist] = joists
  const frontFirst = front[0]
  const rearFirst = rear[0]
  const footing = footings.reduce((a, b) => (Math.max(b.base, b.tube) < Math.max(a.base, a.tube) ? b : a))
  const postSize = postSizes.reduce((a, b) => (sectionOf(b).thickness > sectionOf(a).thickness ? b : a))
  if (joist === undefined || frontFirst === undefined) throw new Error('an empty catalogue has no start')
  return {
    setbacks: choiceOf(job).setbacks,
    joist,
    front: beam(frontFirst, front),
    rear: rearFirst === null || rearFirst === undefined ? null : beam(rearFirst, rear),
    postSize,
    footing,
  }
}

/** Sums that the job states: they stand in the cost whatever the sizes. */
function stated(design: Design, book: PriceBook): LeastCents {
  const priced = priceJob(design, [], book)
  return priced.ok ? costOf(sharesOf(design.job), 0, 0, priced.value.totals.other) : 0
}

/** The frame without its posts and their metal. */
function barePosts(frame: Frame): Frame {
  return {
    ...frame,
    posts: [],
    members: frame.members.filter((member) => member.role !== 'post'),
    connectors: frame.connectors.filter(({ kind }) => kind !== 'post base' && kind !== 'post cap'),
  }
}

/** One post: what it costs whatever its length, and what each tick of it costs. */
function postCost({ job, frame }: Design, book: PriceBook): { fixed: number; perTick: number } | null {
  const [post] = frame.posts
  const stick = frame.members.find((member) => member.id === post?.id)
  if (post === undefined || stick === undefined) return null
  const alone = (length: Ticks): Frame => ({
    ...barePosts(frame),
    members: copies({ ...stick, length }),
    beams: [],
    runs: [],
    posts: copies({ ...post, length }),
    connectors: frame.connectors
      .filter(({ kind }) => kind === 'post base' || kind === 'post cap')
      .map((metal) => ({ ...metal, count: COPIES, at: [post.id] })),
  })
  const none: Frame = { ...alone(ticks(0)), members: [], posts: [], connectors: [] }
  const at = (length: Ticks) => (leastCost(job, book, alone(length)) - leastCost(job, book, none)) / COPIES
  const [short, long] = [feet(1), feet(101)]
  const perTick = (at(long) - at(short)) / (long - short)
  return { fixed: at(short) - perTick * short, perTick }
}

function footingCost(job: Job, book: PriceBook, frame: Frame): LeastCents {
  const [post] = frame.posts
  if (post === undefined) throw new Error('a deck stands on posts')
  const one = footingUnder(job, post)
  const on = (footings: Frame['footings']): Frame => ({
    ...barePosts(frame),
    members: [],
    beams: [],
    runs: [],
    connectors: [],
    footings,
  })
  return (leastCost(job, book, on([one, ...copies(one)])) - leastCost(job, book, on([one]))) / COPIES
}

/** So many of a thing that what is rounded up to a thousandth does not matter for one. */
const COPIES = 100

function copies<Thing>(thing: Thing): readonly Thing[] {
  return Array.from({ length: COPIES }, () => thing)
}

/** Lengths of the posts under a beam, as the frame makes them but for rounding up to a tick. */
function postLengths(
  job: Job,
  side: 'front' | 'rear',
  beam: BeamChoice,
  joist: LumberSize,
): readonly number[] {
  const laid = layOut(job)
  const y =
    (laid.ok
      ? laid.value.zones.flatMap((zone) => zone.supports).find((line) => line.beam === side)?.y
      : null) ??
    (side === 'front' ? job.size.depth - job.frame.beams.front.setback : job.frame.beams.rear.setback)
  const top =
    job.size.height -
    sectionOf(job.decking.size).thickness -
    sectionOf(joist).depth -
    sectionOf(beam.size).depth -
    job.ground.projection -
    job.ground.standoff
  const moved = new Map(postList(job.ground.moved).map(({ post, length }) => [post, length]))
  const freestanding = job.site.attachment === 'freestanding'
  const first = side === 'front' && freestanding ? job.frame.beams.rear.posts + 1 : 1
  return postCentres(job.size.width, { ...job.frame.beams[side], ...beam }).map(
    (x, i) => top - groundAt(job, x + (moved.get(first + i) ?? 0), y),
  )
}

function memo<Input, Output>(keyOf: (input: Input) => string, make: (input: Input) => Output) {
  const made = new Map<string, { readonly value: Output }>()
  return (input: Input): Output => {
    const key = keyOf(input)
    const found = made.get(key) ?? { value: make(input) }
    made.set(key, found)
    return found.value
  }
}
