import { dressedSizes, type LumberSize } from '../data/index.ts'
import { type FieldPath, fieldAt, type Job, type JsonValue, valueAt } from '../job/index.ts'
import { TICKS_PER_INCH, toInches } from '../units/index.ts'

/** Fields with values to try together. */
export type Try = readonly (readonly [path: FieldPath, value: JsonValue])[]

const POSTS: readonly LumberSize[] = ['4x4', '4x6', '6x6', '8x8']
const TUBES = [8, 10, 12, 14, 16, 18, 20, 24]
const WIDEST_BASE = 48
const LEAST_SETBACK = 6

/** Choices of one value that mend what their check asks for; every other choice there is a matter of taste or a fact. */
const MENDING: { readonly [path in FieldPath]?: JsonValue } = {
  'site.attachment': 'freestanding',
  'site.ledgerFastener': 'bolt',
  'frame.treatment': 'treated',
  'frame.blocking': 'over beams',
  'decking.size': '2x6',
  'ground.standoff': '1 in',
  'scope.guard.included': true,
}

/** Parts whose fields are all for the builder to choose. */
const OWN_PARTS = ['stairs', 'guard']

/** Values to try at a field, the nearest to what the job states first; none where it states a fact. */
export function remedyTries(job: Job, path: FieldPath): readonly Try[] {
  const one = (values: readonly JsonValue[]) => values.map((value): Try => [[path, value]])
  const end = path.split('.').at(-1) ?? ''
  if (Object.hasOwn(MENDING, path)) {
    const value = MENDING[path]
    return value === undefined || valueAt(job, path) === value ? [] : one([value])
  }
  if (path === 'frame.joists.size') return one(deeper(job.frame.joists.size))
  if (path === 'frame.joists.spacing') {
    const now = toInches(job.frame.joists.spacing)
    return one(texts([24, 16, 12].filter((n) => n < now)))
  }
  if (path === 'frame.postSize') return one(POSTS.slice(POSTS.indexOf(job.frame.postSize) + 1))
  if (path === 'ground.base') return bases(job)
  if (path === 'ground.baseThickness')
    return job.ground.base === 0 ? [] : one(texts(up(toInches(job.ground.baseThickness), 1, 16)))
  if (path === 'ground.tube') {
    const now = toInches(job.ground.tube)
    const widest = job.ground.base === 0 ? Number.POSITIVE_INFINITY : toInches(job.ground.base)
    return one(texts(TUBES.filter((n) => n > now && n <= widest)))
  }
  if (path === 'site.deadLoad') return one(up(job.site.deadLoad, 1, 15))
  if (path.startsWith('frame.beams.')) return one(ofBeam(job, path, end))
  return OWN_PARTS.includes(path.split('.')[0] ?? '') ? one(ofPart(job, path)) : []
}

function ofBeam(job: Job, path: FieldPath, what: string): readonly JsonValue[] {
  const side = path.includes('.front.') ? ('front' as const) : ('rear' as const)
  const beam = job.frame.beams[side]
  if (what === 'size') return deeper(beam.size)
  if (what === 'plies') return up(beam.plies, 1, 3 - beam.plies)
  if (what === 'posts') return [...up(beam.posts, 1, 6), ...down(beam.posts, 1, 2)]
  const now = toInches(beam[what === 'inset' ? 'inset' : 'setback'])
  if (what === 'inset') return texts([...down(now, 2, 2), ...up(now, 2, 6)])
  return what === 'setback' ? texts([...down(now, 1, LEAST_SETBACK), ...up(now, 2, 12)]) : []
}

/** Wider bases, each as thick as it juts out beyond the tube, or as it is now where that is more. */
function bases({ ground }: Job): readonly Try[] {
  const tube = toInches(ground.tube)
  const from = Math.max(toInches(ground.base), tube)
  return up(from, 2, Math.max(0, Math.floor((WIDEST_BASE - from) / 2))).map((base): Try => {
    const least = Math.max(6, Math.ceil((base - tube) / 2))
    const wider = ['ground.base', `${base} in`] as const
    return ground.base > 0 && toInches(ground.baseThickness) >= least
      ? [wider]
      : [wider, ['ground.baseThickness', `${least} in`]]
  })
}

/** Other choices of a field, or numbers near its own. */
function ofPart(job: Job, path: FieldPath): readonly JsonValue[] {
  const field = fieldAt(path)
  const now = valueAt(job, path)
  if (field.choices !== undefined) return field.choices.filter((choice) => choice !== now)
  if (field.kind === 'flag') return [now !== true]
  if (typeof now !== 'number') return []
  const within = (value: number) => value >= (field.min ?? value) && value <= (field.max ?? value)
  if (field.kind === 'count') return [...up(now, 1, 3), now - 1, now - 2].filter(within)
  if (field.kind !== 'length') return []
  const inch = now / TICKS_PER_INCH
  return texts(
    [...up(inch, 1, 12), ...down(inch, 1, Math.max(0, inch - 12))].filter((n) => within(n * TICKS_PER_INCH)),
  )
}

function deeper(size: LumberSize): readonly LumberSize[] {
  const all: readonly LumberSize[] = ['2x6', '2x8', '2x10', '2x12']
  return all.filter((one) => dressedSizes[one].depth > dressedSizes[size].depth)
}

function texts(inches: readonly number[]): readonly string[] {
  return inches.map((n) => `${n} in`)
}

/** So many numbers above one, in whole steps of it. */
function up(from: number, step: number, count: number): readonly number[] {
  const first = Math.floor(from / step) * step
  return Array.from({ length: Math.max(0, count) }, (_, i) => first + (i + 1) * step)
}

/** Numbers below one, in whole steps of it, down to a least. */
function down(from: number, step: number, least: number): readonly number[] {
  const first = Math.ceil(from / step) * step
  const count = Math.max(0, Math.floor((first - least) / step))
  return Array.from({ length: count }, (_, i) => first - (i + 1) * step)
}
