import { dressedSizes, type LumberSize } from '../data/index.ts'
import { beamExtent, type FieldPath, type Job } from '../job/index.ts'
import { postFootprint } from '../layout/index.ts'
import { type PriceBook, productKey } from '../pricing/index.ts'
import { feet, inches, TICKS_PER_INCH, type Ticks, ticks, toInches } from '../units/index.ts'
import { choiceOf } from './choice.ts'
import type { BeamChoice, Catalogue, Choice, FootingChoice, Setbacks } from './types.ts'

const JOIST_SIZES: readonly LumberSize[] = ['2x6', '2x8', '2x10', '2x12']
const POST_SIZES: readonly LumberSize[] = ['4x4', '4x6', '6x6', '8x8']
/** Spacings that decking and tape measures are made for, inches: common practice, no source. */
const SPACINGS = [12, 16, 24]
const PLIES = [1, 2, 3]
/** Posts closer than this are never the cheaper way: common practice, no source. */
const POSTS_APART = feet(4)
/** Bases are formed in steps of 2 in: common practice, no source. */
const BASE_STEP = 2
const WIDEST_BASE = 48
/** IRC 2021 Table R507.3.1: no base is thinner. */
const LEAST_THICKNESS = 6
/** A tube covers the corners of its post by this much all round, for the base and its bolt: common practice, no source. */
const TUBE_BEYOND_POST = 1

/**
 * What a deck may be made of: sizes that the code's tables know and the price book sells, at usual spacings, with the
 * job's own values among them. A held field has only its own value.
 */
export function catalogueOf(job: Job, book: PriceBook, held: readonly FieldPath[]): Catalogue {
  const stated = choiceOf(job)
  const sold = (size: LumberSize) =>
    book.lumber.some(
      ({ product, stock }) => stock.length > 0 && productKey(product) === productKey({ ...ofJob(job), size }),
    )
  const priced = new Set(book.goods.map(({ sku }) => sku))
  const options = <Value>(field: FieldPath, own: Value, all: readonly Value[]): readonly Value[] =>
    held.includes(field) ? [own] : [...new Set([...all, own])]

  const joistSizes = options(
    'frame.joists.size',
    stated.joist.size,
    JOIST_SIZES.filter(
      (size) => sold(size) && (job.site.attachment === 'freestanding' || priced.has(`joist-hanger-${size}`)),
    ),
  )
  const spacings = options(
    'frame.joists.spacing',
    stated.joist.spacing,
    SPACINGS.map((n) => inches(n)),
  )
  const beams = (side: 'front' | 'rear', own: BeamChoice): readonly BeamChoice[] => {
    const at = `frame.beams.${side}`
    const between = beamExtent(job) - 2 * job.frame.beams[side].inset
    const most = Math.max(2, Math.floor(between / POSTS_APART) + 1)
    const counts = Array.from({ length: most - 1 }, (_, i) => i + 2)
    return options(`${at}.size`, own.size, JOIST_SIZES.filter(sold)).flatMap((size) =>
      options(`${at}.plies`, own.plies, PLIES).flatMap((plies) =>
        options(`${at}.posts`, own.posts, counts).map((posts) => ({ size, plies, posts })),
      ),
    )
  }
  return {
    setbacks: setbacksOf(job, stated, held),
    joists: joistSizes.flatMap((size) => spacings.map((spacing) => ({ size, spacing }))),
    front: beams('front', stated.front),
    rear: stated.rear === null ? [null] : beams('rear', stated.rear),
    postSizes: options(
      'frame.postSize',
      stated.postSize,
      POST_SIZES.filter(
        (size) => sold(size) && priced.has(`post-base-${size}`) && priced.has(`post-cap-${size}`),
      ),
    ),
    footings: footingsOf(stated.footing, held, priced),
  }
}

/** Setbacks that crews keep, inches: common practice, no source. */
const SETBACKS = [12, 18, 24]

/**
 * The job's own setbacks first, then the usual ones that leave a quarter of the span beside them or more, the same on
 * both sides where there are two beams; a side that is held keeps its own.
 */
function setbacksOf(
  job: Job,
  { setbacks: own, rear: rearBeam }: Choice,
  held: readonly FieldPath[],
): readonly Setbacks[] {
  const free = rearBeam !== null
  const keeps = (side: 'front' | 'rear') => held.includes(`frame.beams.${side}.setback`)
  const usual = SETBACKS.map((n): Setbacks => {
    const to = inches(n)
    return { front: keeps('front') ? own.front : to, rear: free && !keeps('rear') ? to : own.rear }
  }).filter(({ front, rear }) => {
    const span = job.size.depth - front - (free ? rear : 0)
    return Math.max(front, free ? rear : 0) * 4 <= span
  })
  return [...new Map([own, ...usual].map((one) => [setbacksKey(one), one])).values()]
}

function ofJob({ frame: { species, grade, treatment } }: Job) {
  return { species, grade, treatment }
}

/** Tubes that the book sells, alone and on every base; a base as thick as it juts out, 6 in at least, in steps of 2 in. */
function footingsOf(
  own: FootingChoice,
  held: readonly FieldPath[],
  priced: ReadonlySet<string>,
): readonly FootingChoice[] {
  const tubes = held.includes('ground.tube')
    ? [own.tube]
    : [...priced]
        .flatMap((sku) => /^form-tube-(\d+)in$/.exec(sku)?.[1] ?? [])
        .map((diameter) => inches(Number(diameter)))
  const ways = tubes.flatMap((tube) =>
    basesOn(tube, own, held, priced).flatMap((base) =>
      thicknessesOf(tube, base, own, held).map((thickness) => ({ tube, base, thickness })),
    ),
  )
  return [...new Map([own, ...ways].map((way) => [footingKey(way), way])).values()]
}

function basesOn(
  tube: Ticks,
  own: FootingChoice,
  held: readonly FieldPath[],
  priced: ReadonlySet<string>,
): readonly Ticks[] {
  if (held.includes('ground.base')) return own.base === 0 || own.base >= tube ? [own.base] : []
  if (!priced.has('footing-base-form')) return [ticks(0)]
  const from = toInches(tube) + BASE_STEP
  const count = Math.max(0, Math.floor((WIDEST_BASE - from) / BASE_STEP) + 1)
  return [ticks(0), ...Array.from({ length: count }, (_, i) => inches(from + i * BASE_STEP))]
}

function thicknessesOf(
  tube: Ticks,
  base: Ticks,
  own: FootingChoice,
  held: readonly FieldPath[],
): readonly Ticks[] {
  if (base === 0 || held.includes('ground.baseThickness')) return [own.thickness]
  const juts = (base - tube) / 2 / TICKS_PER_INCH
  const least = Math.max(LEAST_THICKNESS, Math.ceil(juts / 2) * 2)
  return [least, least + 2, least + 4].map((thickness) => inches(thickness))
}

export function waysOf({ setbacks, joists, front, rear, postSizes, footings }: Catalogue): number {
  return setbacks.length * joists.length * front.length * rear.length * postSizes.length * footings.length
}

export function setbacksKey({ front, rear }: Setbacks): string {
  return `${front}/${rear}`
}

export function beamKey(beam: BeamChoice | null): string {
  return beam === null ? '' : `${beam.size} ${beam.plies} ${beam.posts}`
}

export function footingKey({ tube, base, thickness }: FootingChoice): string {
  return base === 0 ? `${tube}` : `${tube} ${base} ${thickness}`
}

/** Of the concrete on the ground. */
export function widthOf({ tube, base }: FootingChoice): Ticks {
  return ticks(Math.max(tube, base))
}

/** Whether a post's metal base has concrete under all of it: the tube is as wide as the post's diagonal and 1 in round it. */
export function tubeTakesPost(tube: Ticks, postSize: LumberSize): boolean {
  const { thickness, depth } = dressedSizes[postSize]
  const across = Math.hypot(toInches(thickness), toInches(depth)) + 2 * TUBE_BEYOND_POST
  return toInches(tube) >= across
}

/** Whether a post is as wide as the beams on it; the layout refuses a job where it is not. */
export function postTakesBeams(
  job: Job,
  { front, rear, postSize }: Pick<Choice, 'front' | 'rear' | 'postSize'>,
): boolean {
  const on = { ...job, frame: { ...job.frame, postSize } }
  return [front, rear].every(
    (beam) => beam === null || postFootprint(on, { ...job.frame.beams.front, ...beam }) !== null,
  )
}
