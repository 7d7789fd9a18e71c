import type { Check } from '../checks/index.ts'
import { footingLoads } from '../checks/index.ts'
import type { LpEngine } from '../cutting/index.ts'
import { designJob } from '../design.ts'
import { type Costed, costDesign, type EstimateOptions } from '../estimate.ts'
import type { Design } from '../estimate-types.ts'
import type { Footing, Post } from '../frame/index.ts'
import { type Job, postList } from '../job/index.ts'
import { beamThickness, postFootprint } from '../layout/index.ts'
import type { PriceBook } from '../pricing/index.ts'
import { type Cents, cents, feet, inches, printLength, type Ticks, ticks } from '../units/index.ts'
import { cutChanges } from './cut-changes.ts'
import { digging, workCost } from './work-cost.ts'

/** A hole or pier that is not where the plan has it. */
export interface Found {
  /** number of the post on the plan */
  readonly post: number
  /** to the right of its place, and away from the house; left and towards the house are minus */
  readonly dx: Ticks
  readonly dy: Ticks
  /** its place is barred by rock or a pipe: nothing can be dug nearer to it */
  readonly barred: boolean
}

export interface FoundOption {
  readonly kind: 'keep' | 'move along the beam' | 'drill the anchor anew' | 'shift the base' | 'dig again'
  /** what is done, in a sentence */
  readonly what: string
  /** why it cannot be done; empty where it can */
  readonly cannot: string
  /** checks that are otherwise than planned, as they come out */
  readonly checks: readonly Check[]
  /** joints and lengths that are otherwise than planned, in words */
  readonly cuts: readonly string[]
  /** against the plan; null where it cannot be done or has no price */
  readonly cost: Cents | null
  /** what `ground.moved` states then; null where the frame stays as planned */
  readonly moved: string | null
}

/** A post's base keeps this much concrete beside it: common practice, no source. */
const EDGE = inches(1)

/**
 * What can be done about a hole that was found off its place by (dx, dy), or whose place is barred: each way with its
 * checks run again, what it does to posts, joints and cuts, and what it costs against the plan. Nothing for a post that
 * is not on the plan.
 */
export function foundOff(
  planned: Design,
  book: PriceBook,
  engine: LpEngine,
  found: Found,
): readonly FoundOption[] {
  const post = planned.frame.posts.find(({ number }) => number === found.post)
  const footing = planned.frame.footings.find(({ number }) => number === found.post)
  if (post === undefined || footing === undefined) return []
  const known: NonNullable<EstimateOptions['known']> = new Map()
  const costs = (design: Design) => costDesign(design, book, engine, { known })
  const here = { planned, post, footing, found, book, before: costs(planned), costs }
  return [keep(here), moveAlong(here), drill(here), shiftBase(here), digAgain(here)]
}

interface Here {
  readonly planned: Design
  readonly post: Post
  readonly footing: Footing
  readonly found: Found
  readonly book: PriceBook
  readonly before: Costed
  readonly costs: (design: Design) => Costed
}

const BARRED = 'Its place is barred.'

/** The post stands where the pier is; its beam must still lie on it. */
function keep(here: Here): FoundOption {
  const { planned, post, found } = here
  const spec = planned.job.frame.beams[post.beam]
  const across = postFootprint(planned.job, spec)?.across ?? 0
  const slack = (across - beamThickness(spec)) / 2
  const over = Math.abs(found.dy) - slack
  return moved(here, {
    kind: 'keep',
    what: 'The post stands on the pier where it is.',
    cannot:
      over > 0
        ? `The beam would stand out ${printLength(ticks(Math.ceil(over)))} past the side of the post.`
        : '',
    extra: 0,
  })
}

/** The pier serves as far along the beam as it is; what it is off from the beam's line is dug over. */
function moveAlong(here: Here): FoundOption {
  const { found, footing, book, planned } = here
  return moved(here, {
    kind: 'move along the beam',
    what: `The post moves along the beam; the hole is widened to the beam's line.`,
    cannot: found.dx === 0 ? 'It is not off along the beam.' : '',
    extra: workCost(planned.job, book, digging(planned.job, footing), widened(footing, Math.abs(found.dy))),
  })
}

function moved(
  here: Here,
  { kind, what, cannot, extra }: Pick<FoundOption, 'kind' | 'what' | 'cannot'> & { readonly extra: number },
): FoundOption {
  const { planned, post, found, before, costs } = here
  const none = { kind, what, checks: [], cuts: [], cost: null, moved: null }
  if (cannot !== '') return { ...none, cannot }
  const text = movedText(planned.job, found)
  const job: Job = { ...planned.job, ground: { ...planned.job.ground, moved: text } }
  const made = designJob(job, planned.given)
  if (!made.ok) return { ...none, cannot: `${capital(made.error[0]?.message ?? 'it cannot be framed')}.` }
  const after = costs(made.value)
  const change =
    before.pricing === null || after.pricing === null
      ? null
      : after.pricing.totals.cost - before.pricing.totals.cost
  return {
    kind,
    what,
    cannot: '',
    checks: changedChecks(planned.checks, made.value.checks),
    cuts: cutChanges({ design: planned, costed: before }, { design: made.value, costed: after }, post.beam),
    cost: change === null ? null : cents(Math.round(change + extra)),
    moved: text,
  }
}

/** The pier stays, the post stands in its place off the pier's centre; its base must have concrete under it. */
function drill({ planned, post, footing, found, book }: Here): FoundOption {
  const { job } = planned
  const size = postFootprint(job, job.frame.beams[post.beam])
  const reach = Math.hypot(
    Math.abs(found.dx) + (size?.along ?? 0) / 2,
    Math.abs(found.dy) + (size?.across ?? 0) / 2,
  )
  const short = reach + EDGE - footing.tube / 2
  const option = {
    kind: 'drill the anchor anew',
    what: 'The post stands in its place, off the centre of the pier, on an anchor drilled and set anew as its maker says.',
    checks: [],
    cuts: [],
    moved: null,
  } as const
  if (short > 0) {
    const by = printLength(ticks(Math.ceil(short)))
    return { ...option, cannot: `The post's base would need ${by} more concrete at its corner.`, cost: null }
  }
  const tooMuch = eccentric(planned, footing, Math.hypot(found.dx, found.dy))
  if (tooMuch !== '') return { ...option, cannot: tooMuch, cost: null }
  const bolt = (book.goods.find(({ sku }) => sku === 'anchor-bolt-1/2')?.price ?? 0) / 100
  const hours = [
    { rateId: 'wetset-bolt', quantity: 1 },
    { rateId: 'post-base-wet', quantity: 1 },
  ]
  return { ...option, cannot: '', cost: cents(Math.round(workCost(job, book, hours, 1, bolt))) }
}

/**
 * Soil pressure under a round footing loaded off its centre by e: q (1 + 8 e ÷ D) at the edge, as long as e is within an
 * eighth of D. Statics of a rigid round footing: derived, no source.
 */
function eccentric({ job, layout, frame }: Design, footing: Footing, off: number): string {
  const load = footingLoads(job, layout, frame).find(({ footingId }) => footingId === footing.id)
  const width = Math.max(footing.base, footing.tube)
  if (load === undefined) return 'Its load is not known.'
  if (off > width / 8) return 'The load would stand outside the middle of the footing, which would tip.'
  // the greater of what the table's reckoning and the worst reaction bring
  const pressure = load.pressure * Math.max(1, (load.worst ?? 0) / load.load)
  const edge = pressure * (1 + (8 * off) / width)
  return edge > load.bearing
    ? `Its edge would press ${edge.toFixed(0)} psf on soil that is reckoned to carry ${load.bearing}.`
    : ''
}

/** Before the pour: the hole is widened until the footing can stand in its place. */
function shiftBase({ planned, footing, found, book }: Here): FoundOption {
  const off = Math.hypot(found.dx, found.dy)
  const apart = off >= footing.holeDiameter
  return {
    kind: 'shift the base',
    what: 'Before the pour: the hole is widened and the footing formed in its place.',
    cannot: found.barred ? BARRED : apart ? 'So far off it is another hole.' : '',
    checks: [],
    cuts: [],
    cost:
      found.barred || apart
        ? null
        : cents(
            Math.round(workCost(planned.job, book, digging(planned.job, footing), widened(footing, off))),
          ),
    moved: null,
  }
}

/** A new hole in the right place; it must be in ground that the old one left alone. */
function digAgain({ planned, footing, found, book }: Here): FoundOption {
  const off = Math.hypot(found.dx, found.dy)
  const near = off < footing.holeDiameter
  const volume = (Math.PI / 4) * footing.holeDiameter ** 2 * footing.depth
  return {
    kind: 'dig again',
    what: 'The hole is filled and tamped, and a new one dug in the right place.',
    cannot: found.barred
      ? BARRED
      : near
        ? 'The new hole would break into the old one, and a footing stands on undisturbed ground: shift the base.'
        : '',
    checks: [],
    cuts: [],
    cost:
      found.barred || near
        ? null
        : cents(Math.round(workCost(planned.job, book, digging(planned.job, footing), cubicFeet(volume)))),
    moved: null,
  }
}

/** Cubic feet dug to widen a hole by a distance on one side. */
function widened(footing: Footing, by: number): number {
  return cubicFeet(footing.holeDiameter * by * footing.depth)
}

function cubicFeet(cubicTicks: number): number {
  return cubicTicks / feet(1) ** 3
}

/** The posts moved so far, with this one. */
function movedText({ ground }: Job, { post, dx }: Found): string {
  const others = postList(ground.moved).filter((one) => one.post !== post)
  const before = postList(ground.moved).find((one) => one.post === post)?.length ?? 0
  return [...others, { post, length: ticks(before + dx) }]
    .filter(({ length }) => length !== 0)
    .sort((a, b) => a.post - b.post)
    .map(({ post: number, length }) => `${number}: ${printLength(length)}`)
    .join('; ')
}

function changedChecks(before: readonly Check[], after: readonly Check[]): readonly Check[] {
  const was = new Map(before.map((check) => [check.id, check]))
  return after.filter((check) => {
    const old = was.get(check.id)
    return old?.status !== check.status || old.governing?.ratio !== check.governing?.ratio
  })
}

function capital(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`
}
