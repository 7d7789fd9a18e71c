import type { Spares } from '../cutting/index.ts'
import type { Job } from '../job/index.ts'
import type { Layout } from '../layout/index.ts'
import type { Takeoff } from '../takeoff/index.ts'
import { fail, ok, printMoney, type Result } from '../units/index.ts'
import { atThisBook } from './at-this-book.ts'
import { workCalendar } from './calendar.ts'
import { allowanceLines } from './lines/allowance-lines.ts'
import { blockLines } from './lines/block-lines.ts'
import { goodsLines } from './lines/goods-lines.ts'
import { hoursWorked } from './lines/hours-worked.ts'
import { jointLines } from './lines/joint-lines.ts'
import { labourLines } from './lines/labour-lines.ts'
import { lumberLines, type PlannedClass } from './lines/lumber-lines.ts'
import { withSources } from './lines/priced-by.ts'
import { spareLines } from './lines/spare-lines.ts'
import { withStatedLines } from './lines/stated-lines.ts'
import { leaveOut } from './scope.ts'
import { GREATEST_SUM } from './sums.ts'
import { countsDeliveries } from './suppliers/counted.ts'
import { deliveryLines } from './suppliers/deliveries.ts'
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
  const kept = withoutTrips(leaveOut(job, atThisBook(job, takeoff, book)), book)
  const lumber = lumberLines(job, takeoff.pieces, plans)
  const joints = jointLines(job, takeoff.runs, plans, book)
  const goods = goodsLines(kept.goods, book, faults)
  const labour = labourLines(job, kept.tasks, book, faults)
  if (faults.length > 0) return fail(faults)

  const bought = withSources(
    [...lumber, ...blockLines(takeoff.runs, plans), ...spareLines(spares, plans), ...goods],
    book,
  )
  const computed = [
    ...bought,
    ...joints.lines,
    ...labour.lines,
    ...deliveryLines(bought, book),
    ...allowanceLines(job, book),
  ]
  const { lines, idle } = withStatedLines(job, computed, book)
  const sum = lines.reduce((whole, { amount }) => whole + amount, 0)
  if (sum > GREATEST_SUM) return fail([tooMuch(sum)])
  return ok({
    lines,
    idle,
    totals: totals(
      job,
      layout.outline,
      lines,
      hoursWorked(lines, labour, joints, book.crewSize),
      layout.levels?.slice(1).map((level) => level.outline),
    ),
    calendar: workCalendar({ tasks: kept.tasks }, lines, book),
    bookName: book.name,
    bookDate: book.date,
  })
}

/** Deliveries that the suppliers' fees count are not counted by trips too. */
function withoutTrips<T extends Pick<Takeoff, 'goods'>>(kept: T, book: PriceBook): T {
  if (!countsDeliveries(book)) return kept
  return { ...kept, goods: kept.goods.filter(({ sku }) => sku !== 'delivery-trip') }
}

function tooMuch(sum: number): PriceFault {
  return {
    subject: 'Sum of the lines',
    message: `The lines add up to $${Math.round(sum / 100)}, and a deck is priced up to ${printMoney(GREATEST_SUM)}.`,
    fix: 'Look for a slip in the price book or in the sums and lines stated in the job.',
  }
}
