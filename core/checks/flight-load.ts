import type { Job } from '../job/index.ts'
import type { StringerPattern } from '../stairs/index.ts'
import { type Ticks, ticks, toFeet } from '../units/index.ts'

/** What is walked on of a flight, level: a run for each tread, which is what stringers span or a little more. */
export function walkedRun({ marks, run, span }: StringerPattern): Ticks {
  return ticks(Math.max(span, marks.length * run))
}

/** lb at one end of an inner stringer: live and dead load over half of what is walked on. */
export function headLoad({ site }: Job, pattern: StringerPattern): number {
  const area = toFeet(pattern.spacing) * toFeet(walkedRun(pattern) / 2)
  return Math.ceil((Math.max(site.liveLoad, site.snowLoad) + site.deadLoad) * area)
}
