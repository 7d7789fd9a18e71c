import type { Job } from '../../job/index.ts'
import type { Task } from '../../takeoff/index.ts'
import { cents } from '../../units/index.ts'
import type { LabourRate, Line, PriceBook, PriceFault } from '../types.ts'
import { line, perUnit } from './line.ts'

export interface LabourLines {
  readonly lines: readonly Line[]
  /** paid hours before any rounding, in 1/100,000,000 hour */
  readonly workerHours: bigint
}

/** Paid hours of a task to 1/1000 hour, as they are printed. */
export function hoursOf(quantity: number, rate: Pick<LabourRate, 'crewHours' | 'workers'>): number {
  const hours = BigInt(quantity) * BigInt(rate.crewHours) * BigInt(rate.workers)
  return Number((2n * hours + 100_000n) / 200_000n)
}

/** One line per task: paid worker hours, to 1/1000 hour, × the loaded rate; an owner's own hours cost nothing. */
export function labourLines(
  job: Job,
  tasks: readonly Task[],
  book: PriceBook,
  faults: PriceFault[],
): LabourLines {
  const rates = new Map(book.rates.map((rate) => [rate.id, rate]))
  const price = perUnit(job.builder === 'owner' ? cents(0) : book.labourRate)
  const lines: Line[] = []
  let workerHours = 0n
  for (const task of tasks) {
    const rate = rates.get(task.rateId)
    if (rate === undefined) {
      faults.push({
        subject: task.rateId,
        message: `The price book "${book.name}" has no production rate "${task.rateId}" (${task.label}).`,
        fix: `Add "${task.rateId}" under rates, with its crew hours per ${task.unit}.`,
      })
      continue
    }
    const hours = BigInt(task.thousandths) * BigInt(rate.crewHours) * BigInt(rate.workers)
    workerHours += hours
    lines.push(
      line({
        id: `labour-${task.id}`,
        group: 'labour',
        label: task.label,
        code: rate.id,
        thousandths: hoursOf(task.thousandths, rate),
        unit: 'worker hour',
        price,
        part: 'labour',
        cause: {
          fields: task.cause.fields,
          ids: [task.id],
          rule:
            `${task.thousandths / 1000} ${task.unit} × ${rate.crewHours / 100_000} h ` +
            `× ${rate.workers} (${rate.confidence})`,
        },
      }),
    )
  }
  return { lines, workerHours }
}
