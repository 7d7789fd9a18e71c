import type { Check } from '../checks/index.ts'
import { type Fault, SIZED_FIELDS } from '../job/index.ts'
import { type Ticks, ticks } from '../units/index.ts'
import { setbacksKey, widthOf } from './catalogue.ts'
import { BEAMS, PartNumbers } from './part-numbers.ts'
import { type Key, SeenKeys } from './seen-keys.ts'
import type { Choice } from './types.ts'
import { WeakParts } from './weak-parts.ts'

/** A check that some size could mend. A check of anything else is told, and keeps no way from being chosen. */
export function isSizable(check: Check): boolean {
  return check.fields.some((field) => SIZED_FIELDS.has(field))
}

/** A check that keeps a way from being chosen. @param held names of checks for which their calculation alone will do */
export function standsInTheWay(check: Check, held: ReadonlySet<string>): boolean {
  const { id, status } = check
  const holds = status === 'passes' || status === 'near' || (status === 'calculated only' && held.has(id))
  return isSizable(check) && !holds
}

/** A choice, with what tells where its posts stand: null where that hangs on their number alone. */
export interface PlacedChoice {
  readonly choice: Choice
  readonly skeleton: number | null
}

/**
 * What was seen to fail, by the parts of a choice that the failing check reads: any other choice with the same parts
 * fails as well, and need not be framed; on a rectangle, any with weaker parts too (see weak-parts). A check that is
 * not known here is remembered for the whole choice alone.
 */
export class KnownFailures {
  readonly #seen = new SeenKeys<Family>()
  /** by where posts stand: a footing no wider than this fails */
  readonly #tooNarrow = new Map<number, Ticks>()
  readonly #weak = new WeakParts()
  readonly #numbers = new PartNumbers()
  readonly #hopeless = new Set<string>()
  #version = 0

  /** Another once more is known. */
  get version(): number {
    return this.#version
  }

  /** Whether no sizes pass with the beams there. */
  isHopeless(setbacks: Choice['setbacks']): boolean {
    return this.#hopeless.has(setbacksKey(setbacks))
  }

  addHopeless(setbacks: Choice['setbacks']): void {
    this.#version += 1
    this.#hopeless.add(setbacksKey(setbacks))
  }

  /** Whether the joists fail on whatever posts. */
  hasJoists(placed: PlacedChoice): boolean {
    return (
      this.isHopeless(placed.choice.setbacks) ||
      this.#weak.hasJoists(placed.choice) ||
      this.#has(placed, OF_JOISTS)
    )
  }

  /** Whether a frame fails on whatever footing. */
  hasFrame(placed: PlacedChoice): boolean {
    return (
      this.hasJoists(placed) ||
      this.hasBeam('front', placed) ||
      this.hasBeam('rear', placed) ||
      this.hasPair(() => placed)
    )
  }

  /** Whether a beam or its posts fail, with whatever beam of as many plies on the other side where posts stand by their number. */
  hasBeam(side: Side, placed: PlacedChoice): boolean {
    return (
      this.#has(placed, OF_BEAM[side]) ||
      (placed.skeleton === null && this.#weak.hasBeam(side, placed.choice))
    )
  }

  /** Whether the two beams fail together. */
  hasPair(placed: () => PlacedChoice): boolean {
    return this.#seen.holds('height') && this.#has(placed(), OF_PAIRS)
  }

  /** Whether the footing under a frame fails. */
  hasFooting(placed: PlacedChoice): boolean {
    return this.#failsByWidth(placed) || this.#has(placed, OF_FOOTINGS)
  }

  #has(placed: PlacedChoice, among: readonly Family[]): boolean {
    return among.some(
      (family) => this.#seen.holds(family) && this.#seen.has(family, this.#keyOf(family, placed)),
    )
  }

  addCheck(check: Check, placed: PlacedChoice): void {
    this.#version += 1
    const family = familyOf(check.id)
    this.#seen.add(family, this.#keyOf(family, placed))
    if (check.status !== 'fails') return
    if (placed.skeleton === null) this.#weak.add(check.id, placed.choice)
    if (family !== 'footing-size') return
    const posts = this.#postsKey(placed)
    const width = widthOf(placed.choice.footing)
    this.#tooNarrow.set(posts, ticks(Math.max(width, this.#tooNarrow.get(posts) ?? 0)))
  }

  addFault(fault: Fault, placed: PlacedChoice): void {
    this.#version += 1
    const height = fault.path === 'size.height' || fault.path === 'shape.levels'
    const family = height ? 'height' : 'whole'
    this.#seen.add(family, this.#keyOf(family, placed))
  }

  #failsByWidth(placed: PlacedChoice): boolean {
    if (this.#tooNarrow.size === 0) return false
    return widthOf(placed.choice.footing) <= (this.#tooNarrow.get(this.#postsKey(placed)) ?? -1)
  }

  /**
   * The parts that checks of a family read. Plies count wherever joists are measured between the faces of beams. On other
   * outlines than a rectangle the places of posts count, and which joist is a beam's longest hangs on their spacing.
   */
  #keyOf(family: Family, { choice, skeleton }: PlacedChoice): Key {
    const { setbacks, joist, front, rear, postSize, footing } = choice
    const n = this.#numbers
    const own = n.beam(family.startsWith('rear') ? rear : front)
    const plies = 8 * front.plies + (rear?.plies ?? 0)
    const at = placeKey(n.setbacks(setbacks), skeleton)
    const spacing = skeleton === null ? 0 : n.spacing(joist.spacing)
    const spaced = (own * 64 + plies) * 64 + spacing
    switch (family) {
      case 'decking':
        return [0, joist.spacing]
      case 'joists':
        return [0, n.joist(joist)]
      case 'joists and beams':
        return [placeKey(n.setbacks(setbacks), null), n.joist(joist) * 64 + plies]
      case 'front beam':
      case 'rear beam':
        return [at, spaced]
      case 'front bearing':
      case 'rear bearing':
        return [at, spaced * 16 + n.size(postSize)]
      case 'front posts':
      case 'rear posts': {
        const beams = skeleton === null ? own : n.beam(front) * BEAMS + n.beam(rear)
        return [at, ((beams * 64 + plies) * 1024 + n.joist(joist)) * 16 + n.size(postSize)]
      }
      case 'footing-size':
      case 'footing-thickness':
        return [this.#postsKey({ choice, skeleton }), n.footing(footing)]
      case 'footings of stairs':
        return [0, n.footing(footing)]
      case 'height':
        return [at, ((n.beam(front) * BEAMS + n.beam(rear)) * 64 + spacing) * 64 + n.size(joist.size)]
      case 'whole':
        return [
          this.#postsKey({ choice, skeleton: null }) * 16 + n.size(postSize),
          ((n.beam(front) * BEAMS + n.beam(rear)) * 1024 + n.joist(joist)) * 65_536 + n.footing(footing),
        ]
    }
  }

  /** What the loads on posts hang on. */
  #postsKey({ choice: { setbacks, front, rear, joist }, skeleton }: PlacedChoice): number {
    const at = placeKey(this.#numbers.setbacks(setbacks), skeleton)
    return skeleton === null
      ? (at * 128 + front.posts) * 128 + (rear?.posts ?? 0)
      : at * 64 + this.#numbers.spacing(joist.spacing)
  }
}

/** Where beams lie and posts stand, as one number: fewer than a million skeletons. */
function placeKey(setbacks: number, skeleton: number | null): number {
  return setbacks * 2 ** 20 + (skeleton === null ? 0 : skeleton + 1)
}

type Side = 'front' | 'rear'
type Family =
  | 'decking'
  | 'joists'
  | 'joists and beams'
  | `${Side} beam`
  | `${Side} bearing`
  | `${Side} posts`
  | 'footing-size'
  | 'footing-thickness'
  | 'footings of stairs'
  | 'height'
  | 'whole'

const OF_FOOTINGS: readonly Family[] = ['footing-size', 'footing-thickness', 'footings of stairs', 'whole']
const OF_JOISTS: readonly Family[] = ['decking', 'joists', 'joists and beams']
const OF_BEAM: Readonly<Record<Side, readonly Family[]>> = {
  front: ['front beam', 'front bearing', 'front posts'],
  rear: ['rear beam', 'rear bearing', 'rear posts'],
}
const OF_PAIRS: readonly Family[] = ['height']

/** Checks of one beam or its posts, by the key of the beam; a middle beam goes by the front one's fields. */
const OF_BEAMS =
  /^(beam-span|beam-overhang|beam-uplift|beam-bearing|post-height)-(front|rear|middle)(-[a-z]+)?$/

function familyOf(id: string): Family {
  if (id === 'decking-span') return 'decking'
  if (id === 'dead-load') return 'joists'
  if (/^(joist|ledger|hanger)-/.test(id)) return 'joists and beams'
  if (id.startsWith('footing-size-')) return 'footing-size'
  if (id.startsWith('footing-thickness-')) return 'footing-thickness'
  if (id.startsWith('stair-footing-')) return 'footings of stairs'
  const [, what, key] = OF_BEAMS.exec(id) ?? []
  if (what === undefined) return 'whole'
  const side = key === 'rear' ? 'rear' : 'front'
  if (what === 'beam-bearing') return `${side} bearing`
  return what === 'post-height' ? `${side} posts` : `${side} beam`
}
