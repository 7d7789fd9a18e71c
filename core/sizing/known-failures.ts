import type { Check } from '../checks/index.ts'
import { type Fault, SIZED_FIELDS } from '../job/index.ts'
import { type Ticks, ticks } from '../units/index.ts'
import { beamKey, footingKey, setbacksKey, widthOf } from './catalogue.ts'
import type { Choice } from './types.ts'
import { WeakParts } from './weak-parts.ts'

/** A check that some size could mend. A check of anything else is told, and keeps no way from being chosen. */
export function isSizable(check: Check): boolean {
  return check.fields.some((field) => SIZED_FIELDS.has(field))
}

/** A check that keeps a way from being chosen. */
export function standsInTheWay(check: Check): boolean {
  return isSizable(check) && check.status !== 'passes' && check.status !== 'near'
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
  readonly #seen = new Set<string>()
  /** by where posts stand: a footing no wider than this fails */
  readonly #tooNarrow = new Map<string, Ticks>()
  readonly #families = new Set<Family>()
  readonly #weak = new WeakParts()

  /** Whether the joists fail on whatever posts. */
  hasJoists(placed: PlacedChoice): boolean {
    return this.#weak.hasJoists(placed.choice) || this.#has(placed, OF_JOISTS)
  }

  /** Whether a frame fails on whatever footing. */
  hasFrame(placed: PlacedChoice): boolean {
    return (
      this.#weak.hasJoists(placed.choice) ||
      (placed.skeleton === null && this.#weak.hasBeams(placed.choice)) ||
      this.#has(placed, OF_FRAMES)
    )
  }

  /** Whether the footing under a frame fails. */
  hasFooting(placed: PlacedChoice): boolean {
    return this.#failsByWidth(placed) || this.#has(placed, OF_FOOTINGS)
  }

  #has(placed: PlacedChoice, among: readonly Family[]): boolean {
    return among.some((family) => this.#families.has(family) && this.#seen.has(keyOf(family, placed)))
  }

  addCheck(check: Check, placed: PlacedChoice): void {
    const family = familyOf(check.id)
    this.#add(family, placed)
    if (check.status !== 'fails') return
    if (placed.skeleton === null) this.#weak.add(check.id, placed.choice)
    if (family !== 'footing-size') return
    const posts = postsKey(placed)
    const width = widthOf(placed.choice.footing)
    this.#tooNarrow.set(posts, ticks(Math.max(width, this.#tooNarrow.get(posts) ?? 0)))
  }

  addFault(fault: Fault, placed: PlacedChoice): void {
    const height = fault.path === 'size.height' || fault.path === 'shape.levels'
    this.#add(height ? 'height' : 'whole', placed)
  }

  #add(family: Family, placed: PlacedChoice): void {
    this.#families.add(family)
    this.#seen.add(keyOf(family, placed))
  }

  #failsByWidth(placed: PlacedChoice): boolean {
    return widthOf(placed.choice.footing) <= (this.#tooNarrow.get(postsKey(placed)) ?? -1)
  }
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
  | 'height'
  | 'whole'

const OF_FOOTINGS: readonly Family[] = ['footing-size', 'footing-thickness', 'whole']
const OF_JOISTS: readonly Family[] = ['decking', 'joists', 'joists and beams']
const OF_FRAMES: readonly Family[] = [
  ...OF_JOISTS,
  'front beam',
  'rear beam',
  'front bearing',
  'rear bearing',
  'front posts',
  'rear posts',
  'height',
]

/** Checks of one beam or its posts, by the key of the beam; a middle beam goes by the front one's fields. */
const OF_BEAMS =
  /^(beam-span|beam-overhang|beam-uplift|beam-bearing|post-height)-(front|rear|middle)(-[a-z]+)?$/

function familyOf(id: string): Family {
  if (id === 'decking-span') return 'decking'
  if (id === 'dead-load') return 'joists'
  if (/^(joist|ledger|hanger)-/.test(id)) return 'joists and beams'
  if (id.startsWith('footing-size-')) return 'footing-size'
  if (id.startsWith('footing-thickness-')) return 'footing-thickness'
  const [, what, key] = OF_BEAMS.exec(id) ?? []
  if (what === undefined) return 'whole'
  const side = key === 'rear' ? 'rear' : 'front'
  if (what === 'beam-bearing') return `${side} bearing`
  return what === 'post-height' ? `${side} posts` : `${side} beam`
}

/**
 * The parts that checks of a family read. Plies count wherever joists are measured between the faces of beams. On other
 * outlines than a rectangle the places of posts count, and which joist is a beam's longest hangs on their spacing.
 */
function keyOf(family: Family, { choice, skeleton }: PlacedChoice): string {
  const { joist, front, rear, postSize, footing } = choice
  const plies = `${front.plies} ${rear?.plies ?? 0}`
  const own = family.startsWith('rear') ? rear : front
  const placed = skeleton === null ? '' : ` posts ${skeleton} joists ${joist.spacing}`
  const beam = `${setbacksKey(choice.setbacks)} ${beamKey(own)}, ${plies}${placed}`
  const parts = () => {
    switch (family) {
      case 'decking':
        return `${joist.spacing}`
      case 'joists':
        return `${joist.size} ${joist.spacing}`
      case 'joists and beams':
        return `${setbacksKey(choice.setbacks)} ${joist.size} ${joist.spacing} ${plies}`
      case 'front beam':
      case 'rear beam':
        return beam
      case 'front bearing':
      case 'rear bearing':
        return `${beam} ${postSize}`
      case 'front posts':
      case 'rear posts':
        return `${beam} ${postSize} ${joist.size} ${skeleton === null ? '' : `${beamKey(front)} ${beamKey(rear)}`}`
      case 'footing-size':
      case 'footing-thickness':
        return `${postsKey({ choice, skeleton })} ${footingKey(footing)}`
      case 'height':
        return `${setbacksKey(choice.setbacks)} ${joist.size} ${beamKey(front)} ${beamKey(rear)}${placed}`
      case 'whole':
        return choiceKey(choice)
    }
  }
  return `${family}: ${parts()}`
}

function choiceKey(choice: Choice): string {
  const { joist, front, rear, postSize, footing } = choice
  return `${setbacksKey(choice.setbacks)}; ${joist.size} ${joist.spacing}; ${beamKey(front)}; ${beamKey(rear)}; ${postSize}; ${footingKey(footing)}`
}

/** What the loads on posts hang on. */
function postsKey({ choice, skeleton }: PlacedChoice): string {
  const { front, rear, joist } = choice
  const at = setbacksKey(choice.setbacks)
  return skeleton === null
    ? `${at} ${front.posts} ${rear?.posts ?? 0}`
    : `${at} posts ${skeleton} joists ${joist.spacing}`
}
