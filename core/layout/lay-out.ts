import type { Fault, Job } from '../job/index.ts'
import { fail, ok, type Result, TICKS_PER_FOOT, ticks } from '../units/index.ts'
import { layoutFaults } from './field-faults.ts'
import { supportLines } from './supports.ts'
import type { Layout, Point } from './types.ts'

/** Outline, zones and support lines of a job, or what keeps it from being framed, each fault at its field. */
export function layOut(job: Job): Result<Layout, readonly Fault[]> {
  const faults = layoutFaults(job)
  if (faults.length > 0) return fail(faults)
  const { width, depth, height } = job.size
  const zero = ticks(0)
  const outline: readonly Point[] = [
    { x: zero, y: zero },
    { x: width, y: zero },
    { x: width, y: depth },
    { x: zero, y: depth },
  ]
  return ok({
    outline,
    zones: [{ id: 'zone-1', outline, supports: supportLines(job) }],
    deckTop: height,
    areaSquareFeet: (width * depth) / TICKS_PER_FOOT ** 2,
  })
}
