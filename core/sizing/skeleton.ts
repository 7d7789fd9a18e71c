import { type LumberSize, sectionOf } from '../data/index.ts'
import { placeAllPosts } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import { type Layout, layOut } from '../layout/index.ts'
import { inches, type Ticks, ticks } from '../units/index.ts'
import { widthOf } from './catalogue.ts'
import { EFFORT, type Effort } from './effort.ts'
import { isFlush } from './is-flush.ts'
import { standByNumber } from './stand-by-number.ts'
import { startOf } from './start-choice.ts'
import type { Catalogue, Choice } from './types.ts'

/** Posts under the beams of one side. */
export interface SidePosts {
  readonly count: number
  /** of them under dropped beams, on which the joists lie */
  readonly underJoists: number
  /** sum over the posts, ticks: length with the depths of what lies on it, joist and beam, before it is rounded up to a tick */
  readonly reach: number
  /** the least of them under dropped beams, and under flush ones; infinite where there are none */
  readonly shortest: { readonly dropped: number; readonly flush: number }
}

/** Where posts stand under a choice. */
export interface Skeleton {
  /** the same where all beams lie and all posts stand the same */
  readonly id: number
  readonly front: SidePosts
  readonly rear: SidePosts
}

type Placing = Pick<Choice, 'front' | 'rear' | 'postSize' | 'footing'>

/** One in so many sides is looked at before the work on the others is foreseen. */
const LEAST_SEEN = 8

const NO_FOOTING = { tube: ticks(0), base: ticks(0), thickness: ticks(0) }

/**
 * Posts of a deck whose beams lie in one place, without framing it. On a rectangle with dropped beams they stand by
 * their number alone; elsewhere an end post also gives way to the footings of other beams, and a beam's thickness moves
 * its mitre, or a flush beam's middle.
 */
export class Skeletons {
  readonly #job: Job
  readonly #catalogue: Catalogue
  readonly #effort: Effort
  readonly #coupled: boolean
  readonly #widest: Ticks
  readonly #layouts = new Map<string, Layout | null>()
  readonly #made = new Map<number, Map<number, Skeleton | null>>()
  readonly #ids = new Map<string, number>()
  readonly #sides = new Map<string, readonly SidePosts[]>()
  /** work on the sides that are known */
  #onSides = 0

  constructor(job: Job, catalogue: Catalogue, effort: Effort) {
    this.#job = isFlush(job, 'front') || isFlush(job, 'rear') ? inSizesOf(job, startOf(job, catalogue)) : job
    this.#effort = effort
    this.#catalogue = catalogue
    this.#coupled = !standByNumber(job)
    this.#widest = ticks(Math.max(...catalogue.footings.map(widthOf)))
  }

  /** Null where the deck cannot be laid out so. */
  of(choice: Placing): Skeleton | null {
    const all = this.onAll(choice)
    if (all !== 'by footing') return all
    const width = widthOf(choice.footing)
    return this.#once(choice, width)
  }

  /** The same on all footings, where they move no post. */
  onAll(choice: Omit<Placing, 'footing'>): Skeleton | 'by footing' | null {
    const plain = this.#once(choice, ticks(0))
    if (!this.#coupled || plain === null) return plain
    const widest = this.#once(choice, this.#widest)
    // where the widest footing moves no post, none does
    return widest?.id === plain.id ? plain : 'by footing'
  }

  /**
   * Every way in which the posts of a side may stand under a beam, whatever the other side has and the footings are; none
   * once bounds have had their share of the work, or what is seen of it tells that they will.
   * @param places of beams for which all of it is asked
   */
  sidesOf(side: 'front' | 'rear', plies: number, posts: number, places: number): readonly SidePosts[] {
    const key = `${side} ${this.#coupled ? plies : 0} ${posts}`
    const found = this.#sides.get(key)
    if (found !== undefined) return found
    if (this.#effort.boundsAreDone) return []
    const before = this.#effort.spent
    const made = distinct(this.#allSides(side, plies, posts))
    this.#sides.set(key, made)
    this.#onSides += this.#effort.spent - before
    this.#foresee(side, places)
    return made
  }

  /** All sides take about what those that are known took: the two are met together, so one tells all. */
  #foresee(side: 'front' | 'rear', places: number): void {
    const all = new Set(this.#catalogue[side].map((one) => `${one?.plies} ${one?.posts}`)).size
    if (this.#sides.size * LEAST_SEEN < all) return
    this.#effort.foreseeBounds((this.#onSides * all * places) / this.#sides.size)
  }

  #allSides(side: 'front' | 'rear', plies: number, posts: number): readonly SidePosts[] {
    const { front, rear, postSizes, footings } = this.#catalogue
    const others: readonly (Choice['rear'] | Choice['front'])[] = side === 'front' ? rear : front
    const ofOthers = new Map(others.map((one) => [`${one?.plies} ${one?.posts}`, one]))
    const widths = new Map(footings.map((one) => [widthOf(one), one]))
    const [first] = ofOthers.values()
    const [size] = front
    if (size === undefined) return []
    const own = { size: size.size, plies, posts }
    const made = (beams: Pick<Placing, 'front' | 'rear'>, postSize: LumberSize) => {
      const all = this.onAll({ ...beams, postSize })
      const each =
        all === 'by footing'
          ? [...widths.values()].map((footing) => this.of({ ...beams, postSize, footing }))
          : [all]
      return each.flatMap((one) => one?.[side] ?? [])
    }
    return (this.#coupled ? [...ofOthers.values()] : [first ?? null]).flatMap((other) =>
      (this.#coupled ? postSizes : postSizes.slice(0, 1)).flatMap((postSize) =>
        made(side === 'front' ? { front: own, rear: other } : { front: other ?? own, rear: own }, postSize),
      ),
    )
  }

  /** @param width of the footings; 0 where they are left out of account, and with them the size of posts */
  #once(choice: Omit<Placing, 'footing'>, width: Ticks): Skeleton | null {
    const post = this.#catalogue.postSizes.indexOf(choice.postSize) + 1
    // two numbers below 2 to the 20th: maps look larger ones up slowly
    const counts = countsKey(choice)
    const onPosts = this.#made.get(counts) ?? new Map<number, Skeleton | null>()
    this.#made.set(counts, onPosts)
    const key = width === 0 ? 0 : post * 2 ** 14 + width
    const found = onPosts.get(key)
    if (found !== undefined) return found
    const made = this.#make(choice, { ...NO_FOOTING, tube: width })
    onPosts.set(key, made)
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
    this.#effort.addToBounds(EFFORT.place)
    const joist = sectionOf(job.frame.joists.size).depth
    const placed = placeAllPosts(job, layout)
    const reaches = (side: 'front' | 'rear') => {
      const beam = sectionOf(job.frame.beams[side].size).depth
      const under = (flush: boolean) =>
        placed.flatMap(({ spec, line, own }) =>
          spec === side && line.flush === flush
            ? own.map(({ exactLength }) => exactLength + beam + (flush ? 0 : joist))
            : [],
        )
      const [dropped, flush] = [under(false), under(true)]
      return {
        count: dropped.length + flush.length,
        underJoists: dropped.length,
        reach: [...dropped, ...flush].reduce((sum, one) => sum + one, 0),
        shortest: {
          dropped: Math.min(Number.POSITIVE_INFINITY, ...dropped),
          flush: Math.min(Number.POSITIVE_INFINITY, ...flush),
        },
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

/** The job with joists that can hang from its beams: those that it states may be too deep for them. */
function inSizesOf(job: Job, { joist, front, rear }: Choice): Job {
  const { joists, beams } = job.frame
  return {
    ...job,
    frame: {
      ...job.frame,
      joists: { ...joists, size: joist.size },
      beams: {
        front: { ...beams.front, size: front.size },
        rear: rear === null ? beams.rear : { ...beams.rear, size: rear.size },
      },
    },
  }
}

/** Plies and posts as one number, under 2 to the 20th. */
function countsKey({ front, rear }: Omit<Placing, 'footing'>): number {
  return ((front.plies * 8 + (rear?.plies ?? 0)) * 128 + front.posts) * 128 + (rear?.posts ?? 0)
}

function distinct(sides: readonly SidePosts[]): readonly SidePosts[] {
  return [...new Map(sides.map((one) => [`${one.count} ${one.underJoists} ${one.reach}`, one])).values()]
}
