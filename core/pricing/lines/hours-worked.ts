import type { Line } from '../types.ts'
import type { JointLines } from './joint-lines.ts'
import type { LabourLines } from './labour-lines.ts'

/**
 * Paid hours of tasks and joints, and the clock hours in which a crew of that size does them, in 1/100 hour. Hours
 * counted are summed exactly and rounded once; hours stated by hand count as they are stated.
 */
export function hoursWorked(
  lines: readonly Line[],
  { workerHours }: Pick<LabourLines, 'workerHours'>,
  { minutes }: Pick<JointLines, 'minutes'>,
  crewSize: number,
) {
  // exact in 1/300,000,000 hour, so that 1/1000 of a joint's minutes are whole too
  let worked = 0n
  for (const { id, thousandths, overridden } of lines) {
    const counted = workerHours.get(id)
    const each = minutes.get(id)
    if (each !== undefined) worked += BigInt(thousandths) * BigInt(each) * 5_000n
    else if (counted !== undefined)
      worked += overridden?.quantity === true ? BigInt(thousandths) * 300_000n : 3n * counted
  }
  const hundredths = (n: bigint, d: bigint) => Number((2n * n + d) / (2n * d))
  return {
    workerHours: hundredths(worked, 3_000_000n),
    crewHours: hundredths(worked, 3_000_000n * BigInt(crewSize)),
  }
}
