import type { StockOption } from './cutting/index.ts'
import type { Design, NearMiss } from './estimate-types.ts'
import type { ProductClass } from './frame/index.ts'
import type { FieldPath } from './job/index.ts'
import { type ClassToCut, productKey } from './pricing/index.ts'
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
  /** no order of that size costs less */
  readonly proven: boolean
  readonly design: Design
}
export type TrySize = (key: 'width' | 'depth' | 'height', value: Ticks) => TriedSize | null

/** Equal lengths of one product that just miss a stock length. */
interface Candidate {
  readonly subject: string
  readonly product: string
  readonly count: number
  readonly length: Ticks
  readonly stock: Ticks
  readonly over: Ticks
  /** what the next length up costs more, each; null where none is long enough */
  readonly nextUp: Cents | null
  readonly fields: readonly FieldPath[]
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
  return { field: field.path, value, saves: cents(lumber - after.lumber), proven: after.proven }
}

/** True where the smaller deck still has such lengths above that stock length. */
function stillThere(smaller: Design, candidate: Candidate): boolean {
  return woodOf(smaller).some(
    (wood) =>
      productKey(wood.product) === candidate.product &&
      wood.subject === candidate.subject &&
      wood.length > candidate.stock &&
      wood.length - candidate.stock <= NEAR,
  )
}

/** A length of lumber that is needed so many times. */
interface Wood {
  readonly subject: string
  readonly product: ProductClass
  readonly length: Ticks
  readonly count: number
  readonly fields: readonly FieldPath[]
}

/** Pieces by the role of their member, runs by their label. */
function woodOf({ frame, stairs, guard, takeoff }: Design): readonly Wood[] {
  const all = [...frame.members, ...stairs.flatMap((flight) => flight.members), ...(guard?.members ?? [])]
  const members = new Map(all.map((member) => [member.id, member]))
  const pieces = takeoff.pieces.map(({ memberId, product, length, cause }) => {
    const member = members.get(memberId)
    const fields = member?.cause.fields ?? cause.fields
    return { subject: member?.role ?? memberId, product, length, count: 1, fields }
  })
  const runs = takeoff.runs.map(({ label, product, length, wild, memberIds, cause }) => {
    const fields = members.get(memberIds[0] ?? '')?.cause.fields ?? cause.fields
    return { subject: label, product, length: ticks(length + (wild ?? 0)), count: memberIds.length, fields }
  })
  return [...pieces, ...runs]
}

function candidates(design: Design, classes: readonly ClassToCut[]): readonly Candidate[] {
  const found = new Map<string, Candidate>()
  const woods = woodOf(design)
  for (const { product, cutJob } of classes) {
    const key = productKey(product)
    const stocks = [...cutJob.stock].sort((a, b) => a.length - b.length || a.price - b.price)
    const usable = (stock: StockOption) => stock.length - 2 * cutJob.endTrim
    for (const wood of woods.filter((one) => productKey(one.product) === key)) {
      const missed = stocks.findLast((stock) => usable(stock) < wood.length)
      if (missed === undefined || wood.length - usable(missed) > NEAR) continue
      const longer = stocks.filter((stock) => usable(stock) >= wood.length).map(({ price }) => price)
      const id = `${key} ${wood.subject} ${wood.length}`
      found.set(id, {
        subject: wood.subject,
        product: key,
        count: wood.count + (found.get(id)?.count ?? 0),
        length: wood.length,
        stock: missed.length,
        over: ticks(wood.length - usable(missed)),
        nextUp: longer.length === 0 ? null : cents(Math.max(0, Math.min(...longer) - missed.price)),
        fields: wood.fields,
      })
    }
  }
  return [...found.values()]
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
      : ` At ${printLength(suggestion.value)} ${word} the lumber costs ${suggestion.proven ? '' : 'at least '}${printMoney(suggestion.saves)} less.`
  return `${miss}${next}${drop}`
}
