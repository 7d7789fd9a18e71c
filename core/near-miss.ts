import type { CutJob } from './cutting/index.ts'
import type { Design, NearMiss } from './estimate-types.ts'
import type { FieldPath } from './job/index.ts'
import type { ClassToCut } from './pricing/index.ts'
import {
  type Cents,
  cents,
  inches,
  printLength,
  printMoney,
  type Ticks,
  ticks,
  toFeet,
} from './units/index.ts'

/** A length this little above a stock length is called out. */
const NEAR = inches(2)

/** Fields of the job that make a deck larger or smaller, with the word for it. */
const sizeFields = [
  { path: 'size.width', key: 'width', word: 'wide' },
  { path: 'size.depth', key: 'depth', word: 'deep' },
  { path: 'size.height', key: 'height', word: 'high' },
] as const

/** A deck with one size changed, priced again; null where it cannot be built or priced. */
export interface TriedSize {
  readonly lumber: Cents
  readonly design: Design
}
export type TrySize = (key: 'width' | 'depth' | 'height', value: Ticks) => TriedSize | null

/** Equal lengths of one product that just miss a stock length. */
interface Candidate {
  readonly subject: string
  readonly count: number
  readonly length: Ticks
  readonly stock: Ticks
  readonly over: Ticks
  /** what the next length up costs more, each; null where none is long enough */
  readonly nextUp: Cents | null
  readonly fields: readonly FieldPath[]
  readonly productSize: string
}

/**
 * Pieces and runs that are up to 2 in longer than a stock length, the trade's classic loss (a 12 ft board for
 * 12 ft 1 in). For each: what the next board up costs, and what the lumber really costs less at the size that
 * would drop it, by planning that deck too.
 */
export function nearMisses(
  design: Design,
  classes: readonly ClassToCut[],
  lumber: Cents,
  trySize: TrySize,
): readonly NearMiss[] {
  const tried = new Map<string, TriedSize | null>()
  return candidates(design, classes).map((candidate) => {
    const field = sizeFieldOf(candidate)
    const suggestion = field === undefined ? null : suggest(design, candidate, field, lumber, trySize, tried)
    const costs =
      candidate.nextUp === null ? (suggestion?.saves ?? cents(0)) : cents(candidate.nextUp * candidate.count)
    return {
      subject: candidate.subject,
      length: candidate.length,
      stock: candidate.stock,
      over: candidate.over,
      costs,
      message: messageOf(candidate, field?.word ?? '', suggestion),
      suggestion,
    }
  })
}

/** The size that a length follows: the first one that its cause names. */
function sizeFieldOf({ fields }: Candidate) {
  return fields
    .map((path) => sizeFields.find((field) => field.path === path))
    .find((field) => field !== undefined)
}

function suggest(
  design: Design,
  candidate: Candidate,
  field: (typeof sizeFields)[number],
  lumber: Cents,
  trySize: TrySize,
  tried: Map<string, TriedSize | null>,
): NearMiss['suggestion'] {
  const now = design.job.size[field.key]
  if (now <= candidate.over) return null
  const value = ticks(now - candidate.over)
  const key = `${field.key} ${value}`
  const after = tried.has(key) ? (tried.get(key) ?? null) : trySize(field.key, value)
  tried.set(key, after)
  if (after === null || after.lumber >= lumber || stillThere(after.design, candidate)) return null
  return { field: field.path, value, saves: cents(lumber - after.lumber) }
}

/** True where the smaller deck still has such a length above that stock length. */
function stillThere(smaller: Design, candidate: Candidate): boolean {
  const { pieces, runs } = smaller.takeoff
  return [...pieces, ...runs].some(
    (wood) =>
      wood.product.size === candidate.productSize &&
      wood.length > candidate.stock &&
      wood.length - candidate.stock <= NEAR &&
      subjectOf(wood) === candidate.subject,
  )
}

type Wood = Design['takeoff']['pieces'][number] | Design['takeoff']['runs'][number]

/** What a length is called: the run's label, or the piece's place. */
function subjectOf(wood: Wood): string {
  return 'label' in wood ? wood.label : wood.place
}

function candidates(design: Design, classes: readonly ClassToCut[]): readonly Candidate[] {
  const found = new Map<string, Candidate>()
  for (const { product, cutJob } of classes) {
    const lengths = [...cutJob.stock].sort((a, b) => a.length - b.length || a.price - b.price)
    const woods: readonly Wood[] = [...design.takeoff.pieces, ...design.takeoff.runs]
    for (const wood of woods.filter((w) => w.product.size === product.size)) {
      const usable = (stock: (typeof lengths)[number]) => stock.length - 2 * cutJob.endTrim
      const missed = lengths.findLast((stock) => usable(stock) < wood.length)
      if (missed === undefined || wood.length - usable(missed) > NEAR) continue
      const next = lengths.filter((stock) => usable(stock) >= wood.length)
      const count = 'memberIds' in wood ? wood.memberIds.length : 1
      const key = `${product.size} ${subjectOf(wood)} ${wood.length}`
      const before = found.get(key)
      found.set(key, {
        subject: subjectOf(wood),
        count: count + (before?.count ?? 0),
        length: wood.length,
        stock: missed.length,
        over: ticks(wood.length - usable(missed)),
        nextUp: next.length === 0 ? null : cents(Math.max(0, least(next) - missed.price)),
        fields: wood.cause.fields,
        productSize: product.size,
      })
    }
  }
  return [...found.values()]
}

function least(stock: CutJob['stock']): number {
  return Math.min(...stock.map(({ price }) => price))
}

function messageOf(candidate: Candidate, word: string, suggestion: NearMiss['suggestion']): string {
  const { subject, count, length, stock, over, nextUp } = candidate
  const what = count === 1 ? subject : `${subject} (${count})`
  const miss = `${what}: ${printLength(length)} is ${printLength(over)} over a ${toFeet(stock)} ft board.`
  const next =
    nextUp === null
      ? ' No listed length is long enough, so it is jointed.'
      : ` The next length up costs ${printMoney(nextUp)} more${count === 1 ? '' : ' each'}.`
  const drop =
    suggestion === null
      ? ''
      : ` At ${printLength(suggestion.value)} ${word} the lumber costs ${printMoney(suggestion.saves)} less.`
  return `${miss}${next}${drop}`
}
