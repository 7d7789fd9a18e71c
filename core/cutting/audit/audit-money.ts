import type { AuditFault, CutJob, CutPlan } from '../types.ts'
import { allowedStock, boughtByCount, offcutWorth, unitPriceAt } from './stock-rules.ts'

/** Counts, prices, amounts and sums of the order; joints' cost; preferences; gap and status; waste. */
export function auditMoney(job: CutJob, plan: CutPlan): AuditFault[] {
  const faults: AuditFault[] = []
  const expect = (rule: string, where: string, real: number, stated: number): void => {
    if (real !== stated) faults.push({ rule, where, message: `It should be ${real}, not ${stated}.` })
  }
  auditOrder(job, plan, faults, expect)
  const pointCost = (runId: string, at: number): number =>
    job.runs.find((run) => run.id === runId)?.points.find((point) => point.at === at)?.cost ?? 0
  for (const joint of plan.joints)
    expect('joint cost', `${joint.runId} at ${joint.label}`, pointCost(joint.runId, joint.at), joint.cost)
  expect('stock cost', 'plan', total(plan.order.map((line) => line.amount)), plan.stockCost)
  expect(
    'joint cost',
    'plan',
    total(plan.joints.map((joint) => pointCost(joint.runId, joint.at))),
    plan.jointCost,
  )
  expect('cost', 'plan', plan.stockCost + plan.jointCost, plan.cost)
  expect('preference', 'plan', preference(job, plan), plan.preference)
  expect('gap', 'plan', plan.cost + plan.preference - plan.bound, plan.gap)
  const proven = plan.gap === 0
  if (proven !== (plan.status === 'proven optimal')) {
    faults.push({
      rule: 'status',
      where: 'plan',
      message: `A gap of ${plan.gap} cents is not “${plan.status}”.`,
    })
  }
  auditWaste(job, plan, expect)
  return faults
}

type Expect = (rule: string, where: string, real: number, stated: number) => void

function auditOrder(job: CutJob, plan: CutPlan, faults: AuditFault[], expect: Expect): void {
  const allowed = allowedStock(job)
  const cut = new Map<string, number>()
  for (const board of plan.boards) cut.set(board.stockId, (cut.get(board.stockId) ?? 0) + 1)
  const ordered = new Set<string>()
  for (const line of plan.order) {
    const where = `order, ${line.stockId}`
    if (ordered.has(line.stockId))
      faults.push({ rule: 'order line', where, message: 'It is ordered on two lines.' })
    ordered.add(line.stockId)
    const stock = allowed.get(line.stockId)
    if (stock === undefined) {
      faults.push({ rule: 'unknown stock', where, message: 'It is not among the stock the job allows.' })
      continue
    }
    const { option } = stock
    const needed = cut.get(line.stockId) ?? 0
    if (boughtByCount(option) ? line.count < needed : line.count !== needed) {
      faults.push({ rule: 'order count', where, message: `${needed} boards are cut, ${line.count} ordered.` })
    }
    if (line.count > stock.most) {
      faults.push({
        rule: 'more than there are',
        where,
        message: `${line.count} are ordered where ${stock.most} can be had.`,
      })
    }
    if (line.count % (option.pack ?? 1) !== 0) {
      faults.push({ rule: 'pack', where, message: `It comes in packs of ${option.pack}.` })
    }
    if (line.count < (option.minimum ?? 0)) {
      faults.push({ rule: 'minimum', where, message: `At least ${option.minimum} must be bought.` })
    }
    expect('order length', where, option.length, line.length)
    expect('price', where, unitPriceAt(option, line.count), line.price)
    expect('amount', where, unitPriceAt(option, line.count) * line.count, line.amount)
  }
  for (const [id, count] of cut) {
    if (!ordered.has(id))
      faults.push({ rule: 'order count', where: id, message: `${count} boards are cut, none ordered.` })
  }
}

function total(amounts: readonly number[]): number {
  let sum = 0
  for (const amount of amounts) sum += amount
  return sum
}

/** Stagger, handling and saw cuts, less the offcuts worth keeping, in cents. */
function preference(job: CutJob, plan: CutPlan): number {
  let sum = 0
  for (const run of job.runs) {
    for (const point of run.points) {
      if (point.cap === null || point.excess === null) continue
      const jointed = plan.runPieces.filter(
        (piece) => piece.runId === run.id && piece.from !== 0 && piece.from === point.at,
      )
      sum += Math.max(0, jointed.length - point.cap) * point.excess
    }
  }
  const allowed = allowedStock(job)
  for (const board of plan.boards) {
    const stock = allowed.get(board.stockId)
    const trim = stock?.trim ?? 0
    const end = board.cuts.at(-1)?.to ?? 0
    const spared = trim === 0 && end === board.length ? 1 : 0
    const cuts = board.cuts.length + (trim > 0 ? 1 : 0) - spared
    sum += job.handling + cuts * job.perCut
    if (stock !== undefined) sum -= offcutWorth(job, stock.option, board.offcut)
  }
  return sum
}

function auditWaste(job: CutJob, plan: CutPlan, expect: Expect): void {
  const allowed = allowedStock(job)
  let [used, kerf, trim, kept, thrown] = [0, 0, 0, 0, 0]
  for (const board of plan.boards) {
    const trims = 2 * (allowed.get(board.stockId)?.trim ?? 0)
    // what two pieces share at a slanting cut is used once
    const pieces = board.cuts.reduce((sum, { from, length, mitres }, k) => {
      const shared = mitres === undefined ? 0 : Math.max(0, (board.cuts[k - 1]?.to ?? 0) - from)
      return sum + length - shared
    }, 0)
    used += pieces
    trim += trims
    kerf += board.length - trims - pieces - board.offcut
    if (job.keep !== null && board.offcut >= job.keep.from) kept += board.offcut
    else thrown += board.offcut
  }
  expect('waste', 'length used', used, plan.waste.used)
  expect('waste', 'kerfs', kerf, plan.waste.kerf)
  expect('waste', 'trims', trim, plan.waste.trim)
  expect('waste', 'offcuts kept', kept, plan.waste.kept)
  expect('waste', 'thrown away', thrown, plan.waste.thrown)
}
