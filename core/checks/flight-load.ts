import type { Job } from '../job/index.ts'
import type { PlacedFlight, StairPlan, StringerPattern } from '../stairs/index.ts'
import { type Ticks, ticks, toFeet } from '../units/index.ts'

/** What is walked on of a flight, level: a run for each tread, which is what stringers span or a little more. */
export function walkedRun({ marks, run, span }: StringerPattern): Ticks {
  return ticks(Math.max(span, marks.length * run))
}

/** The same of a placed flight; its run where no stringer is laid out for it. */
export function walkedOf({ patterns }: Pick<StairPlan, 'patterns'>, { number, run }: PlacedFlight): Ticks {
  const pattern = patterns.find(({ flight }) => flight === number)
  return pattern === undefined ? run : walkedRun(pattern)
}

/** lb at one end of an inner stringer: live and dead load over half of what is walked on. */
export function headLoad({ site }: Job, pattern: StringerPattern): number {
  const area = toFeet(pattern.spacing) * toFeet(walkedRun(pattern) / 2)
  return Math.ceil((Math.max(site.liveLoad, site.snowLoad) + site.deadLoad) * area)
}
