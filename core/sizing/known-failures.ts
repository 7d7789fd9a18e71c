import type { Check } from '../checks/index.ts'
import { type Fault, SIZED_FIELDS } from '../job/index.ts'
import { type Ticks, ticks } from '../units/index.ts'
import { footingKey } from './catalogue.ts'
import type { BeamChoice, Choice } from './types.ts'

/** A check that some size could mend. A check of anything else is told, and keeps no way from being chosen. */
export function isSizable(check: Check): boolean {
  return check.fields.some((field) => SIZED_FIELDS.has(field))
}

/** A check that keeps a way from being chosen. */
export function standsInTheWay(check: Check): boolean {
  return isSizable(check) && check.status !== 'passes' && check.status !== 'near'
}

/**
 * What was seen to fail, by the parts of a choice that the failing check reads: any other choice with the same parts
 * fails as well, and need not be framed. A check that is not known here is remembered for the whole choice alone.
 */
export class KnownFailures {
  readonly #seen = new Set<string>()
  /** by number of posts: a footing no wider than this fails */
  readonly #tooNarrow = new Map<string, Ticks>()
  readonly #families = new Set<Family>()

  /** Whether a frame fails on whatever footing. */
  hasFrame(choice: Choice): boolean {
    return this.#has(choice, (family) => !OF_FOOTINGS.includes(family))
  }

  /** Whether the footing under a frame fails. */
  hasFooting(choice: Choice): boolean {
    return this.#failsByWidth(choice) || this.#has(choice, (family) => OF_FOOTINGS.includes(family))
  }

  #has(choice: Choice, among: (family: Family) => boolean): boolean {
    for (const family of this.#families)
      if (among(family) && this.#seen.has(keyOf(family, choice))) return true
    return false
  }

  addCheck(check: Check, choice: Choice): void {
    const family = familyOf(check.id)
    this.#add(family, choice)
    if (family !== 'footing-size' || check.status !== 'fails') return
    const posts = postsKey(choice)
    const width = widthOf(choice)
    this.#tooNarrow.set(posts, ticks(Math.max(width, this.#tooNarrow.get(posts) ?? 0)))
  }

  addFault(fault: Fault, choice: Choice): void {
    this.#add(fault.path === 'size.height' ? 'height' : 'whole', choice)
  }

  #add(family: Family, choice: Choice): void {
    this.#families.add(family)
    this.#seen.add(keyOf(family, choice))
  }

  #failsByWidth(choice: Choice): boolean {
    return widthOf(choice) <= (this.#tooNarrow.get(postsKey(choice)) ?? -1)
  }
}

type Family =
  | 'decking'
  | 'joists'
  | 'joists and beams'
  | 'front beam'
  | 'rear beam'
  | 'front bearing'
  | 'rear bearing'
  | 'front posts'
  | 'rear posts'
  | 'footing-size'
  | 'footing-thickness'
  | 'height'
  | 'whole'

const OF_FOOTINGS: readonly Family[] = ['footing-size', 'footing-thickness', 'whole']

function familyOf(id: string): Family {
  if (id === 'decking-span') return 'decking'
  if (id === 'dead-load') return 'joists'
  if (id.startsWith('joist-') || id.startsWith('ledger-')) return 'joists and beams'
  if (id.startsWith('footing-size-')) return 'footing-size'
  if (id.startsWith('footing-thickness-')) return 'footing-thickness'
  for (const side of ['front', 'rear'] as const) {
    if (id === `beam-bearing-${side}`) return `${side} bearing`
    if (id === `beam-span-${side}` || id === `beam-overhang-${side}` || id === `beam-uplift-${side}`)
      return `${side} beam`
    if (id === `post-height-${side}`) return `${side} posts`
  }
  return 'whole'
}

/** The parts that checks of a family read. Plies count wherever joists are measured between the faces of beams. */
function keyOf(family: Family, choice: Choice): string {
  const { joist, front, rear, postSize, footing } = choice
  const plies = `${front.plies} ${rear?.plies ?? 0}`
  const own = family.startsWith('rear') ? rear : front
  const beam = `${beamKey(own)}, ${plies}`
  const parts = () => {
    switch (family) {
      case 'decking':
        return `${joist.spacing}`
      case 'joists':
        return `${joist.size} ${joist.spacing}`
      case 'joists and beams':
        return `${joist.size} ${joist.spacing} ${plies}`
      case 'front beam':
      case 'rear beam':
        return beam
      case 'front bearing':
      case 'rear bearing':
        return `${beam} ${postSize}`
      case 'front posts':
      case 'rear posts':
        return `${beam} ${postSize} ${joist.size}`
      case 'footing-size':
      case 'footing-thickness':
        return `${postsKey(choice)} ${footingKey(footing)}`
      case 'height':
        return `${joist.size} ${beamKey(front)} ${beamKey(rear)}`
      case 'whole':
        return choiceKey(choice)
    }
  }
  return `${family}: ${parts()}`
}

export function choiceKey({ joist, front, rear, postSize, footing }: Choice): string {
  return `${joist.size} ${joist.spacing}; ${beamKey(front)}; ${beamKey(rear)}; ${postSize}; ${footingKey(footing)}`
}

function beamKey(beam: BeamChoice | null): string {
  return beam === null ? '' : `${beam.size} ${beam.plies} ${beam.posts}`
}

function postsKey({ front, rear }: Choice): string {
  return `${front.posts} ${rear?.posts ?? 0}`
}

function widthOf({ footing }: Choice): Ticks {
  return ticks(Math.max(footing.tube, footing.base))
}
