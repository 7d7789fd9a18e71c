import type { AuditFault, CutJob, CutPlan } from '../types.ts'
import { cheapestMember, piecesOfRun } from './cheapest-member.ts'
import { bestWorth } from './knapsack.ts'
import { bestWorthShared } from './knapsack-shared.ts'
import { type Counted, mitresOfPiece, type SharedCuts, sharedCuts } from './shared-cuts.ts'
import {
  type Allowed,
  allowedStock,
  boughtByCount,
  longestUsable,
  offcutWorth,
  unitPriceAt,
} from './stock-rules.ts'

/** Whole numbers up to this are exact, and so are their sums that stay below it. */
const MOST = Number.MAX_SAFE_INTEGER

/** The stated bound follows from the certificate's prices, by this file's own arithmetic. */
export function auditBound(job: CutJob, plan: CutPlan): AuditFault[] {
  const { certificate } = plan
  const fault = (message: string): AuditFault[] => [{ rule: 'bound', where: 'certificate', message }]
  const numbers = [
    certificate.scale,
    ...certificate.prices.map((entry) => entry.price),
    ...certificate.capPrices.map((entry) => -entry.price),
  ]
  if (
    certificate.scale < 1 ||
    numbers.some((value) => !Number.isInteger(value) || value < 0 || value > MOST)
  ) {
    return fault('Its prices are not whole numbers of the right sign.')
  }
  const proven = provenBound(job, plan)
  if (typeof proven === 'string') return fault(proven)
  if (certificate.dualBound > proven)
    return fault(`The prices prove ${proven} cents, not ${certificate.dualBound}.`)
  if (plan.bound > plan.cost + plan.preference) return fault('The bound lies above the plan itself.')
  if (plan.bound > certificate.dualBound && certificate.search === null) {
    return fault(
      `${plan.bound} cents are stated; the prices prove ${certificate.dualBound} and no search is recorded.`,
    )
  }
  return []
}

const TOO_LARGE = 'Its prices are too large to be added exactly.'

/** The bound in cents that the certificate's prices prove, or why they prove none. */
function provenBound(job: CutJob, plan: CutPlan): number | string {
  const { scale } = plan.certificate
  if (scale * dearest(job) > MOST) return TOO_LARGE
  const shared = sharedCuts(job, plan.certificate.shared)
  if (typeof shared === 'string') return shared
  const nameOf = ({ length, ends }: Counted): string => `${length} ${ends}`
  const priceOf = new Map(
    plan.certificate.prices.map(({ length, ends = '', price }) => [nameOf({ length, ends }), price]),
  )
  const most = new Map<string, Sort>()
  const meet = (counted: Counted, count: number): void => {
    const known = most.get(nameOf(counted))?.most ?? 0
    most.set(nameOf(counted), {
      ...counted,
      price: priceOf.get(nameOf(counted)) ?? 0,
      most: known + count,
    })
  }
  let bound = 0n
  for (const { length, mitres } of job.pieces) {
    const counted = shared.counted(length, mitres)
    meet(counted, 1)
    bound += BigInt(priceOf.get(nameOf(counted)) ?? 0)
  }
  const longest = longestUsable(job)
  for (const run of job.runs) {
    if (run.members.length === 0) continue
    const caps = plan.certificate.capPrices.filter((entry) => entry.runId === run.id)
    const tolls = capTolls(job, run.id, caps, scale)
    if (tolls === null) return `A price of a limit on ${run.label} has no rule of the job behind it.`
    const counted = (length: number, from: number, to: number): Counted =>
      shared.counted(length, mitresOfPiece(run, from, to))
    const price = (length: number, from: number, to: number): number =>
      priceOf.get(nameOf(counted(length, from, to))) ?? 0
    const member = cheapestMember(run, longest, price, tolls.toll, scale)
    if (member > MOST) return TOO_LARGE
    bound += BigInt(run.members.length) * BigInt(member) + tolls.constant
    const ofEach = new Map<string, Counted & { most: number }>()
    for (const piece of piecesOfRun(run, longest)) {
      const own = counted(piece.length, piece.from, piece.to)
      const known = ofEach.get(nameOf(own))?.most ?? 0
      ofEach.set(nameOf(own), { ...own, most: Math.max(known, piece.most) })
    }
    for (const own of ofEach.values()) meet(own, own.most * run.members.length)
  }

  const sorts = [...most.values()]
  const pieces = sorts.reduce((sum, { most: count }) => sum + count, 0)
  const worths = boardWorths(job, sorts, shared, scale)
  if (worths === null) return TOO_LARGE
  for (const [id, stock] of allowedStock(job)) {
    const term = stockTerm(job, stock, worths.get(id) ?? 0, pieces, scale)
    if (term === null)
      return `${id} is endless and worth more than it costs, so that the prices prove nothing.`
    bound += term
  }
  const unit = BigInt(scale)
  const whole = bound / unit
  return Number(whole * unit < bound ? whole + 1n : whole)
}

/** Pieces that count alike, what one is worth, and how many of it there can be. */
interface Sort extends Counted {
  readonly price: number
  readonly most: number
}

interface CapPrice {
  readonly point: number
  readonly price: number
  readonly cap: number
  readonly points?: readonly number[]
}

/** What a joint at each point pays under the cap prices, and their constant part; null where no rule backs a price. */
function capTolls(
  job: CutJob,
  runId: string,
  caps: readonly CapPrice[],
  scale: number,
): { toll: (point: number) => number; constant: bigint } | null {
  const run = job.runs.find((candidate) => candidate.id === runId)
  if (run === undefined) return null
  const members = run.members.length
  const tolls = run.points.map(() => 0)
  const excessUsed = run.points.map(() => 0)
  let constant = 0n
  for (const { point, price, cap, points } of caps) {
    const spread = points ?? [point]
    if (points === undefined) {
      const rule = run.points[point]
      if (rule === undefined) return null
      const soft = rule.cap !== null && rule.excess !== null && cap >= rule.cap
      const hard = Math.min(
        rule.cap !== null && rule.excess === null ? rule.cap : members,
        run.neighboursApart ? Math.ceil(members / 2) : members,
        // what a window allows at all its points together, it allows at this one
        ...(run.windows ?? []).filter((window) => window.points.includes(point)).map((window) => window.cap),
      )
      if (cap < hard) {
        if (!soft) return null
        excessUsed[point] = (excessUsed[point] ?? 0) - price
        if ((excessUsed[point] ?? 0) > (rule.excess ?? 0) * scale) return null
      }
    } else {
      const rule = (run.windows ?? []).find(
        (window) =>
          window.points.length === points.length && window.points.every((at, k) => at === points[k]),
      )
      if (rule === undefined || cap < rule.cap) return null
    }
    for (const at of spread) tolls[at] = (tolls[at] ?? 0) - price
    constant += BigInt(price) * BigInt(cap)
  }
  return { toll: (point) => tolls[point] ?? 0, constant }
}

/** No board, joint, handling and saw cuts of one piece cost more than this together, in cents; 1 at the least. */
function dearest(job: CutJob): number {
  const boards = job.stock.flatMap((option) => [
    option.price,
    ...(option.breaks ?? []).map((step) => step.price),
  ])
  const joints = job.runs.flatMap((run) => run.points.map((point) => point.cost + (point.excess ?? 0)))
  return Math.max(1, ...boards) + Math.max(0, ...joints) + job.handling + 2 * job.perCut
}

/**
 * Best worth of one board of each stock option, the cents spared by its offcut or its last cut included; null where
 * the prices of all that a board may hold do not add up exactly.
 */
function boardWorths(
  job: CutJob,
  sorts: readonly Sort[],
  shared: SharedCuts,
  scale: number,
): Map<string, number> | null {
  const savings = (job.keep?.centsPerFoot ?? 0) > 0 || job.perCut > 0
  const worths = sorts
    .map(({ length, ends, price, most }) => ({
      width: length + job.kerf,
      price: price - job.perCut * scale,
      most,
      ends,
    }))
    .filter(({ price }) => savings || price > 0)
  const divisor = worths.reduce((least, { width }) => commonDivisor(least, width), 0) || 1
  const unit = shared.saves.size > 0 ? 1 : divisor
  const stocks = [...allowedStock(job)]
  const capacity = Math.max(0, ...stocks.map(([, stock]) => Math.floor((stock.usable + job.kerf) / unit)))
  let sum = 0
  for (const { width, price, most } of worths)
    sum += Math.abs(price) * Math.min(most, Math.floor((capacity * unit) / width))
  if (sum > MOST) return null
  if (shared.saves.size > 0) {
    const best = bestWorthShared(worths, capacity, shared.saves, shared.wider)
    return new Map(stocks.map(([id, stock]) => [id, best(stock.usable + job.kerf)]))
  }
  const table = bestWorth(
    worths.map((worth) => ({ ...worth, width: worth.width / unit })),
    capacity,
    savings,
  )
  return new Map(
    stocks.map(([id, stock]) => {
      const room = Math.floor((stock.usable + job.kerf) / unit)
      if (!savings) return [id, table[room] ?? 0]
      let best = 0
      for (let used = 1; used <= room; used++) {
        const worth = table[used] ?? 0
        if (worth > Number.NEGATIVE_INFINITY)
          best = Math.max(best, worth + spared(job, stock, used * unit) * scale)
      }
      return [id, best]
    }),
  )
}

function spared(job: CutJob, stock: Allowed, width: number): number {
  const left = stock.usable - width
  const whole = stock.trim === 0 && left === -job.kerf ? job.perCut : 0
  return whole + offcutWorth(job, stock.option, left)
}

function commonDivisor(a: number, b: number): number {
  return b === 0 ? a : commonDivisor(b, a % b)
}

/** The least that boards of one option can add to the bound; null where they could lower it without end. */
function stockTerm(job: CutJob, stock: Allowed, worth: number, pieces: number, scale: number): bigint | null {
  const { option, most } = stock
  const own = (job.handling + (stock.trim > 0 ? job.perCut : 0)) * scale
  if (!boughtByCount(option)) {
    const gain = worth - own - option.price * scale
    if (gain <= 0) return 0n
    const count = own + option.price === 0 ? Math.min(most, pieces) : most
    return count === Number.POSITIVE_INFINITY ? null : -BigInt(count) * BigInt(gain)
  }
  const gain = Math.max(0, worth - own)
  const pack = option.pack ?? 1
  const last = Math.max(pieces, option.minimum ?? 1, ...(option.breaks ?? []).map((step) => step.from)) + pack
  let least = 0n
  for (
    let count = Math.ceil((option.minimum ?? 1) / pack) * pack;
    count <= Math.min(last, most);
    count += pack
  ) {
    const term = BigInt(count) * (BigInt(unitPriceAt(option, count)) * BigInt(scale) - BigInt(gain))
    if (term < least) least = term
  }
  return least
}
