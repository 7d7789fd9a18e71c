import { LEDGER_EDGES } from '../data/index.ts'
import type { Carrier } from '../frame/index.ts'
import { inches, type Ticks, ticks } from '../units/index.ts'
import { fewest, nearEqual } from './spread.ts'

/** A column of fasteners: one, in the row that is its turn, or both at the ends of a ledger's pieces. */
export interface LedgerColumn {
  /** from the hooked end */
  readonly at: Ticks
  readonly row: 'top' | 'bottom' | 'both'
}

type Marked = Pick<Carrier, 'length' | 'marks' | 'lines' | 'taken'>

/** Off a joist's face: a washer and the flange of its hanger, or where joists stand too near each other the washer alone. */
const OFF_JOIST = [inches(2.25), inches(1)]
/** Places are tried on what a tape shows well. */
const STEP = inches(1 / 4)
const END = inches(LEDGER_EDGES.ends)

/** What a joint of a ledger takes beyond what the ledger takes anyway: a pair on either side of it. */
export const AT_LEDGER_JOINT = 4

/** How many fasteners a ledger takes without its joints; null where they find no place clear of the joists. */
export function ledgerCount(ledger: Marked, spacing: Ticks): number | null {
  const columns = wholeCount(ledger, spacing)
  return columns === null ? null : columns + 2
}

/**
 * Where they go, as many as are counted, and a pair more on either side of each joint: clear of joists, hangers and joints,
 * never farther apart than the spacing, as near to equal distances as can be. Empty where they find no place.
 */
export function ledgerColumns(ledger: Marked, spacing: Ticks): readonly LedgerColumn[] {
  const whole = wholeCount(ledger, spacing)
  if (whole === null) return []
  const columns = whole + 2 * ledger.lines.length
  for (const off of OFF_JOIST) {
    const stretches = stretchesOf(ledger, off)
    const counts = stretches === null ? null : shared(stretches, columns, spacing)
    if (stretches === null || counts === null) continue
    return stretches.flatMap((free, i) => {
      const places = nearEqual(free, counts[i] ?? 2, spacing) ?? []
      return places.map(
        (at, k): LedgerColumn => ({
          at: ticks(at),
          row: k === 0 || k === places.length - 1 ? 'both' : k % 2 === 1 ? 'bottom' : 'top',
        }),
      )
    })
  }
  return []
}

/** Columns of a ledger in one piece. */
function wholeCount(ledger: Marked, spacing: Ticks): number | null {
  for (const off of OFF_JOIST) {
    const count = fewest(freePlaces({ ...ledger, lines: [] }, off), spacing)
    if (count !== null) return count
  }
  return null
}

/** Free places of each piece between the ledger's ends and its joints; null where one has no two. */
function stretchesOf(ledger: Marked, off: number): readonly (readonly number[])[] | null {
  const joints = ledger.lines.map(({ at }) => at)
  const free = [
    ...new Set([...freePlaces(ledger, off), ...joints.flatMap((joint) => besideJoint(ledger, joint, off))]),
  ].sort((a, b) => a - b)
  const stretches = [0, ...joints].map((from, i) => {
    const to = joints[i] ?? ledger.length
    return free.filter((at) => at > from && at < to)
  })
  return stretches.every(({ length }) => length >= 2) ? stretches : null
}

/** Places in a joint's own bay that are nearer to a joist than others may be, where its pairs find none else on one of its sides. */
function besideJoint(ledger: Marked, joint: number, off: number): readonly number[] {
  const things = [...ledger.marks, ...ledger.taken]
  const from = Math.max(0, ...things.flatMap(({ at, wide }) => (at + wide <= joint ? [at + wide] : [])))
  const to = Math.min(ledger.length, ...things.flatMap(({ at }) => (at >= joint ? [at] : [])))
  const inBay = (tried: number): readonly number[] =>
    freePlaces(ledger, tried).filter((at) => at >= from && at <= to)
  const [usual, closest] = [inBay(off), inBay(Math.min(...OFF_JOIST))]
  return [
    ...(usual.some((at) => at < joint) ? [] : closest.filter((at) => at < joint).slice(-1)),
    ...(usual.some((at) => at > joint) ? [] : closest.filter((at) => at > joint).slice(0, 1)),
  ]
}

/** Clear of every joist and far enough from ends and joints. */
function freePlaces({ length, marks, lines, taken }: Marked, off: number): readonly number[] {
  const tried = Math.max(0, Math.floor((length - 2 * END) / STEP) + 1)
  return Array.from({ length: tried }, (_, i) => END + i * STEP).filter(
    (at) =>
      [...marks, ...taken].every((one) => at <= one.at - off || at >= one.at + one.wide + off) &&
      lines.every((joint) => Math.abs(joint.at - at) >= END),
  )
}

/** The least for each stretch, then one more where they stand farthest apart, until all are dealt out; null where that fails. */
function shared(
  stretches: readonly (readonly number[])[],
  columns: number,
  spacing: Ticks,
): readonly number[] | null {
  const counts = stretches.map((free) => fewest(free, spacing))
  if (!counts.every((count) => count !== null)) return null
  const dealt = [...counts]
  const apart = (i: number): number => {
    const free = stretches[i] ?? []
    const count = dealt[i] ?? 0
    return count >= free.length ? 0 : ((free.at(-1) ?? 0) - (free[0] ?? 0)) / (count - 1)
  }
  let left = columns - dealt.reduce((sum, count) => sum + count, 0)
  for (; left > 0; left -= 1) {
    const widest = dealt.reduce((best, _, i) => (apart(i) > apart(best) ? i : best), 0)
    if (apart(widest) === 0) return null
    dealt[widest] = (dealt[widest] ?? 0) + 1
  }
  return left === 0 ? dealt : null
}
