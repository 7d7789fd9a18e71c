import type { Check } from '../checks/index.ts'
import { footingLoads } from '../checks/index.ts'
import type { LpEngine } from '../cutting/index.ts'
import { designJob } from '../design.ts'
import { type Costed, costDesign, type EstimateOptions } from '../estimate.ts'
import type { Design } from '../estimate-types.ts'
import { besideBeam, type Footing, type Post } from '../frame/index.ts'
import { type Found, type FoundWay, type Job, postList, printPostList, printSettled } from '../job/index.ts'
import { beamThickness, postFootprint } from '../layout/index.ts'
import type { PriceBook } from '../pricing/index.ts'
import { type Cents, cents, inches, printLength, type Ticks, ticks } from '../units/index.ts'
import { cutChanges } from './cut-changes.ts'

/** What the job states then; nothing else of it changes. */
export interface FoundEdit {
  readonly 'ground.found': string
  readonly 'ground.moved': string
}

export interface FoundOption {
  readonly kind: FoundWay
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
  /** null where it cannot be done */
  readonly edit: FoundEdit | null
}

/** A post's base keeps this much concrete beside it: common practice, no source. */
const EDGE = inches(1)

/**
 * What can be done about a hole that was found off its place by (dx, dy), or whose place is barred: each way as the job
 * that it makes, checked, cut and priced again, against the plan. Nothing for a post that is not on the plan.
 */
export function foundOff(
  planned: Design,
  book: PriceBook,
  engine: LpEngine,
  found: Found,
  options: Pick<EstimateOptions, 'known' | 'rack'> = {},
): readonly FoundOption[] {
  const post = planned.frame.posts.find(({ number }) => number === found.post)
  const footing = planned.frame.footings.find(({ number }) => number === found.post)
  if (post === undefined || footing === undefined) return []
  const shared = { ...options, known: options.known ?? new Map() }
  const costs = (design: Design) => costDesign(design, book, engine, shared)
  const off = besideBeam(planned.frame, post.beamId, found)
  const here = { planned, post, footing, found, ...off, before: costs(planned), costs }
  return WAYS.map(({ kind, what, cannot, moves }) => {
    const refused = cannot(here)
    const none = { kind, what, checks: [], cuts: [], cost: null, edit: null }
    return refused === '' ? done(here, kind, what, moves) : { ...none, cannot: refused }
  })
}

interface Here {
  readonly planned: Design
  readonly post: Post
  readonly footing: Footing
  readonly found: Found
  /** from the post's place along its beam, and square to it */
  readonly along: Ticks
  readonly across: number
  readonly before: Costed
  readonly costs: (design: Design) => Costed
}

const BARRED = 'Its place is barred.'

const WAYS: readonly {
  readonly kind: FoundWay
  readonly what: string
  /** the post goes along the beam with its hole */
  readonly moves: boolean
  /** why it cannot be done; empty where it can */
  readonly cannot: (here: Here) => string
}[] = [
  { kind: 'keep', what: 'The post stands on the pier where it is.', moves: true, cannot: beamOffPost },
  {
    kind: 'move along the beam',
    what: 'The post moves along the beam; the hole is widened to the beam’s line.',
    moves: true,
    cannot: ({ along }) => (along === 0 ? 'It is not off along the beam.' : ''),
  },
  {
    kind: 'drill the anchor anew',
    what: 'The post stands in its place, off the centre of the pier, on an anchor drilled and set anew as its maker says.',
    moves: false,
    cannot: noRoomForAnchor,
  },
  {
    kind: 'shift the base',
    what: 'Before the pour: the hole is widened and the footing formed in its place.',
    moves: false,
    cannot: ({ found, footing }) => {
      if (found.barred) return BARRED
      return offBy(found) >= footing.holeDiameter ? 'So far off it is another hole.' : ''
    },
  },
  {
    kind: 'dig again',
    what: 'The hole is filled and tamped, and a new one dug in the right place.',
    moves: false,
    cannot: ({ found, footing }) => {
      if (found.barred) return BARRED
      return offBy(found) < footing.holeDiameter
        ? 'The new hole would break into the old one, and a footing stands on undisturbed ground: shift the base.'
        : ''
    },
  },
]

/** The job that a way makes, from the frame to the price. */
function done(here: Here, kind: FoundWay, what: string, moves: boolean): FoundOption {
  const { planned, post, found, along, before, costs } = here
  const edit = editOf(planned.job, found, kind, moves ? along : null)
  const ground = { ...planned.job.ground, found: edit['ground.found'], moved: edit['ground.moved'] }
  const made = designJob({ ...planned.job, ground }, planned.given)
  if (!made.ok) {
    const cannot = `${capital(made.error[0]?.message ?? 'it cannot be framed')}.`
    return { kind, what, cannot, checks: [], cuts: [], cost: null, edit: null }
  }
  const after = costs(made.value)
  const priced = before.pricing !== null && after.pricing !== null
  return {
    kind,
    what,
    cannot: '',
    checks: changedChecks(planned.checks, made.value.checks),
    cuts: cutChanges({ design: planned, costed: before }, { design: made.value, costed: after }, post.id),
    cost: priced ? cents(after.pricing.totals.cost - before.pricing.totals.cost) : null,
    edit,
  }
}

/** The post stands where the pier is; its beam must still lie on it. */
function beamOffPost({ planned, post, across }: Here): string {
  const spec = planned.job.frame.beams[post.beam]
  const deep = postFootprint(planned.job, spec)?.across ?? 0
  const over = Math.abs(across) - (deep - beamThickness(spec)) / 2
  return over > 0
    ? `The beam would stand out ${printLength(ticks(Math.ceil(over)))} past the side of the post.`
    : ''
}

/** The pier stays, the post stands in its place off the pier's centre; its base must have concrete under it. */
function noRoomForAnchor({ planned, post, footing, found, along, across }: Here): string {
  const { job } = planned
  const size = postFootprint(job, job.frame.beams[post.beam])
  const reach = Math.hypot(
    Math.abs(along) + (size?.along ?? 0) / 2,
    Math.abs(across) + (size?.across ?? 0) / 2,
  )
  const short = reach + EDGE - footing.tube / 2
  if (short > 0)
    return `The post’s base would need ${printLength(ticks(Math.ceil(short)))} more concrete at its corner.`
  return eccentric(planned, footing, offBy(found))
}

/**
 * Soil pressure under a round footing loaded off its centre by e: q (1 + 8 e ÷ D) at the edge, as long as e is within an
 * eighth of D. Statics of a rigid round footing: derived, no source.
 */
function eccentric({ job, layout, frame, stairs }: Design, footing: Footing, off: number): string {
  const load = footingLoads(job, layout, frame, stairs).find(({ footingId }) => footingId === footing.id)
  const width = Math.max(footing.base, footing.tube)
  if (load === undefined) return 'Its load is not known.'
  if (off > width / 8) return 'The load would stand outside the middle of the footing, which would tip.'
  // the greater of what the table's reckoning and the worst reaction bring
  const pressure = load.pressure * Math.max(1, (load.worst ?? 0) / load.load)
  const edge = pressure * (1 + (8 * off) / width)
  return edge > load.bearing
    ? `Its edge would press ${Math.ceil(edge)} psf on soil that is reckoned to carry ${load.bearing}.`
    : ''
}

function offBy({ dx, dy }: Found): number {
  return Math.hypot(dx, dy)
}

/** What was found is added to the list; a post that moves along its beam is written with those that moved before. */
function editOf({ ground }: Job, found: Found, way: FoundWay, along: Ticks | null): FoundEdit {
  const entry = printSettled({ ...found, way })
  return {
    'ground.found': ground.found.trim() === '' ? entry : `${ground.found.trim()}; ${entry}`,
    'ground.moved': along === null ? ground.moved : movedText(ground.moved, found.post, along),
  }
}

/** The posts moved so far, with this one. */
function movedText(text: string, post: number, along: Ticks): string {
  const moved = postList(text)
  const before = moved.find((one) => one.post === post)?.length ?? 0
  const length: Ticks = ticks(before + along)
  return printPostList([...moved.filter((one) => one.post !== post), { post, length }])
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
