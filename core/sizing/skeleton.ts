import { sectionOf } from '../data/index.ts'
import { placeAllPosts } from '../frame/index.ts'
import { isRectangle, type Job } from '../job/index.ts'
import { type Layout, layOut } from '../layout/index.ts'
import { inches, type Ticks, ticks } from '../units/index.ts'
import { widthOf } from './catalogue.ts'
import type { Catalogue, Choice } from './types.ts'

/** Posts under the beams of one side. */
export interface SidePosts {
  readonly count: number
  /** sum over the posts, ticks: length with the depths of joist and beam, before it is rounded up to a tick */
  readonly reach: number
  /** the least of them */
  readonly shortest: number
}

/** Where posts stand under a choice. */
export interface Skeleton {
  /** the same where all beams lie and all posts stand the same */
  readonly id: number
  readonly front: SidePosts
  readonly rear: SidePosts
}

type Placing = Pick<Choice, 'front' | 'rear' | 'postSize' | 'footing'>

const NO_FOOTING = { tube: ticks(0), base: ticks(0), thickness: ticks(0) }

/**
 * Posts of a deck whose beams lie in one place, without framing it. On a rectangle they stand by their number alone; on
 * any other outline an end post also gives way to the footings of other beams, and a beam's thickness moves its mitre.
 */
export class Skeletons {
  readonly #job: Job
  readonly #catalogue: Catalogue
  readonly #coupled: boolean
  readonly #widest: Ticks
  readonly #layouts = new Map<string, Layout | null>()
  readonly #made = new Map<string, Skeleton | null>()
  readonly #ids = new Map<string, number>()

  constructor(job: Job, catalogue: Catalogue) {
    this.#job = job
    this.#catalogue = catalogue
    this.#coupled = !isRectangle(job)
    this.#widest = ticks(Math.max(...catalogue.footings.map(widthOf)))
  }

  /** Null where the deck cannot be laid out so. */
  of(choice: Placing): Skeleton | null {
    const all = this.onAll(choice)
    if (all !== 'by footing') return all
    const width = widthOf(choice.footing)
    return this.#once(`${keyOf(choice)} ${choice.postSize} ${width}`, choice, { ...NO_FOOTING, tube: width })
  }

  /** The same on all footings, where they move no post. */
  onAll(choice: Omit<Placing, 'footing'>): Skeleton | 'by footing' | null {
    const key = keyOf(choice)
    const plain = this.#once(key, choice, NO_FOOTING)
    if (!this.#coupled || plain === null) return plain
    const widest = this.#once(`${key} ${choice.postSize} widest`, choice, {
      ...NO_FOOTING,
      tube: this.#widest,
    })
    // where the widest footing moves no post, none does
    return widest?.id === plain.id ? plain : 'by footing'
  }

  /** Every way in which the posts of a side may stand under a beam, whatever the other side has and the footings are. */
  sidesOf(side: 'front' | 'rear', plies: number, posts: number): readonly SidePosts[] {
    const key = `${side} ${this.#coupled ? plies : 0} ${posts}`
    const found = this.#sides.get(key) ?? distinct(this.#allSides(side, plies, posts))
    this.#sides.set(key, found)
    return found
  }

  readonly #sides = new Map<string, readonly SidePosts[]>()

  #allSides(side: 'front' | 'rear', plies: number, posts: number): readonly SidePosts[] {
    const { front, rear, postSizes, footings } = this.#catalogue
    const others: readonly (Choice['rear'] | Choice['front'])[] = side === 'front' ? rear : front
    const ofOthers = new Map(others.map((one) => [`${one?.plies} ${one?.posts}`, one]))
    const widths = new Map(footings.map((one) => [widthOf(one), one]))
    const [first] = ofOthers.values()
    const [size] = front
    if (size === undefined) return []
    const own = { size: size.size, plies, posts }
    return (this.#coupled ? [...ofOthers.values()] : [first ?? null]).flatMap((other) =>
      (this.#coupled ? postSizes : postSizes.slice(0, 1)).flatMap((postSize) =>
        (this.#coupled ? [...widths.values()] : [...widths.values()].slice(0, 1)).flatMap((footing) => {
          const pair = side === 'front' ? { front: own, rear: other } : { front: other ?? own, rear: own }
          const made = this.of({ ...pair, postSize, footing })
          return made === null ? [] : [made[side]]
        }),
      ),
    )
  }

  #once(key: string, choice: Omit<Placing, 'footing'>, footing: Choice['footing']): Skeleton | null {
    const found = this.#made.get(key)
    if (found !== undefined) return found
    const made = this.#make(choice, footing)
    this.#made.set(key, made)
    return made
  }

  #make({ front, rear, postSize }: Omit<Placing, 'footing'>, footing: Choice['footing']): Skeleton | null {
    const { beams } = this.#job.frame
    const job: Job = {
      ...this.#job,
      frame: {
        ...this.#job.frame,
        beams: {
          front: { ...beams.front, plies: front.plies, posts: front.posts },
          rear: rear === null ? beams.rear : { ...beams.rear, plies: rear.plies, posts: rear.posts },
        },
        postSize,
      },
      ground: { ...this.#job.ground, tube: footing.tube, base: footing.base },
    }
    const layout = this.#layout(job)
    if (layout === null) return null
    const joist = sectionOf(job.frame.joists.size).depth
    const placed = placeAllPosts(job, layout)
    const reaches = (side: 'front' | 'rear') => {
      const depth = joist + sectionOf(job.frame.beams[side].size).depth
      const all = placed.flatMap(({ spec, own }) =>
        spec === side ? own.map(({ exactLength }) => exactLength + depth) : [],
      )
      return {
        count: all.length,
        reach: all.reduce((sum, one) => sum + one, 0),
        shortest: Math.min(Number.POSITIVE_INFINITY, ...all),
      }
    }
    const places = placed
      .map(({ line: { y, from, to }, posts }) => `${y} ${from} ${to}: ${posts.map(({ at }) => at).join(' ')}`)
      .join(', ')
    const id = this.#ids.get(places) ?? this.#ids.size
    this.#ids.set(places, id)
    return { id, front: reaches('front'), rear: reaches('rear') }
  }

  #layout(job: Job): Layout | null {
    const { front, rear } = job.frame.beams
    const key = `${front.plies} ${rear.plies}`
    const found = this.#layouts.get(key)
    if (found !== undefined) return found
    const two = { front: { ...front, posts: 2 }, rear: { ...rear, posts: 2 } }
    const postSize = Math.max(front.plies, rear.plies) > 2 ? '4x6' : '4x4'
    // beams lie so whatever stands under them: the least posts and footings keep their own faults out of it
    const laid = layOut({
      ...job,
      frame: { ...job.frame, beams: two, postSize },
      ground: { ...job.ground, tube: inches(8), base: ticks(0) },
    })
    const layout = laid.ok ? laid.value : null
    this.#layouts.set(key, layout)
    return layout
  }
}

function keyOf({ front, rear }: Omit<Placing, 'footing'>): string {
  return `${front.plies} ${rear?.plies ?? 0} ${front.posts} ${rear?.posts ?? 0}`
}

function distinct(sides: readonly SidePosts[]): readonly SidePosts[] {
  return [...new Map(sides.map((one) => [`${one.count} ${one.reach}`, one])).values()]
}
