import type { Job } from '../../job/index.ts'
import type { Task } from '../../takeoff/index.ts'
import { cents } from '../../units/index.ts'
import type { LabourRate, Line, PriceBook, PriceFault } from '../types.ts'
import { line, perUnit } from './line.ts'

export interface LabourLines {
  readonly lines: readonly Line[]
  /** paid hours of each line before any rounding, in 1/100,000,000 hour */
  readonly workerHours: ReadonlyMap<Line['id'], bigint>
}

/** A factor of one, in 1/10,000. */
const PLAIN = 10_000

/** In 1/100,000,000 hour; under other than plain conditions to the nearest of them. */
function exactHours(
  quantity: number,
  { crewHours, workers }: Pick<LabourRate, 'crewHours' | 'workers'>,
  factor: number,
): bigint {
  const plain = BigInt(quantity) * BigInt(crewHours) * BigInt(workers)
  return (plain * BigInt(factor) + BigInt(PLAIN / 2)) / BigInt(PLAIN)
}

/** Paid hours of a task to 1/1000 hour, as they are printed. */
export function hoursOf(
  quantity: number,
  rate: Pick<LabourRate, 'crewHours' | 'workers'>,
  factor = PLAIN,
): number {
  const hours = exactHours(quantity, rate, factor)
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
  const workerHours = new Map<Line['id'], bigint>()
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
    const factor = task.conditions?.factor ?? PLAIN
    const hours = exactHours(task.thousandths, rate, factor)
    const id = `labour-${task.id}`
    workerHours.set(id, hours)
    lines.push(
      line({
        id,
        group: 'labour',
        label: task.label,
        code: rate.id,
        thousandths: hoursOf(task.thousandths, rate, factor),
        unit: 'worker hour',
        price,
        part: 'labour',
        cause: {
          fields: [...task.cause.fields, ...(task.conditions?.fields ?? [])],
          ids: [task.id],
          rule:
            `${task.thousandths / 1000} ${task.unit} × ${rate.crewHours / 100_000} h ` +
            `× ${rate.workers} (${rate.confidence})` +
            (task.conditions === undefined
              ? ''
              : `; ${task.conditions.why} (factors: common practice, no source)`),
        },
      }),
    )
  }
  return { lines, workerHours }
}
