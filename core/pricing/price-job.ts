import type { Spares } from '../cutting/index.ts'
import type { Job } from '../job/index.ts'
import type { Layout } from '../layout/index.ts'
import type { Takeoff } from '../takeoff/index.ts'
import { fail, ok, type Result } from '../units/index.ts'
import { atThisBook } from './at-this-book.ts'
import { workCalendar } from './calendar.ts'
import { allowanceLines } from './lines/allowance-lines.ts'
import { goodsLines } from './lines/goods-lines.ts'
import { jointLines } from './lines/joint-lines.ts'
import { labourLines } from './lines/labour-lines.ts'
import { lumberLines, type PlannedClass } from './lines/lumber-lines.ts'
import { spareLines } from './lines/spare-lines.ts'
import { leaveOut } from './scope.ts'
import { totals } from './totals.ts'
import type { PriceBook, PriceFault, Pricing } from './types.ts'

/** What a price is made from. */
export interface Priceable {
  readonly job: Job
  readonly layout: Pick<Layout, 'outline'> & Partial<Pick<Layout, 'levels'>>
  readonly takeoff: Pick<Takeoff, 'pieces' | 'runs' | 'goods' | 'tasks'>
}

/** Lines, cost and price of a planned job; or every good and rate that the price book lacks. */
export function priceJob(
  design: Priceable,
  plans: readonly PlannedClass[],
  book: PriceBook,
  spares: Spares | null = null,
): Result<Pricing, readonly PriceFault[]> {
  const { job, layout, takeoff } = design
  const faults: PriceFault[] = []
  const kept = leaveOut(job, atThisBook(job, takeoff, book))
  const lumber = lumberLines(job, takeoff.pieces, plans)
  const joints = jointLines(job, takeoff.runs, plans, book)
  const goods = goodsLines(kept.goods, book, faults)
  const labour = labourLines(job, kept.tasks, book, faults)
  if (faults.length > 0) return fail(faults)

  const lines = [
    ...lumber,
    ...spareLines(spares, plans),
    ...goods,
    ...joints.lines,
    ...labour.lines,
    ...allowanceLines(job),
  ]
  return ok({
    lines,
    totals: totals(
      job,
      layout.outline,
      lines,
      hours(labour.workerHours, joints.minutes, book.crewSize),
      layout.levels?.slice(1).map((level) => level.outline),
    ),
    calendar: workCalendar({ tasks: kept.tasks }, lines, book),
    bookName: book.name,
    bookDate: book.date,
  })
}

/**
 * Paid hours of tasks and joints, and the clock hours in which a crew of that size does them, in 1/100 hour.
 * @param tasks in 1/100,000,000 hour
 */
function hours(tasks: bigint, jointMinutes: number, crewSize: number) {
  // exact in 1/300,000,000 hour, so that minutes are whole too
  const worked = 3n * tasks + BigInt(jointMinutes) * 5_000_000n
  const hundredths = (n: bigint, d: bigint) => Number((2n * n + d) / (2n * d))
  return {
    workerHours: hundredths(worked, 3_000_000n),
    crewHours: hundredths(worked, 3_000_000n * BigInt(crewSize)),
  }
}
