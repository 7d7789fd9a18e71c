import type { Estimate } from './estimate-types.ts'
import { refusedPoints } from './refused-points.ts'
import { printMoney } from './units/index.ts'
import type { Thing } from './why-things.ts'

/** Id of a joint of one member, in ticks from its left end. */
export function jointId(memberId: string, at: number): string {
  return `joint-${memberId}-${at}`
}

/** Every joint that the plans make and every point where a rule allows none. */
export function jointThings({ job, takeoff, plans, frame }: Estimate): [string, Thing][] {
  const marks = new Map(frame.members.map((member) => [member.id, member.mark]))
  const runs = new Map(takeoff.runs.map((run) => [run.id, run]))
  const made = plans.flatMap(({ plan }) =>
    plan.joints.flatMap(({ runId, memberId, at, label, cost }): [string, Thing][] => {
      const run = runs.get(runId)
      if (run === undefined) return []
      const text = `Joint of ${marks.get(memberId) ?? memberId} at ${label}: ${printMoney(cost)}`
      return [[jointId(memberId, at), { text, cause: { ...run.cause, ids: [runId] } }]]
    }),
  )
  const refused = takeoff.runs.flatMap((run) =>
    refusedPoints(run, job).map(({ at, label, why }): [string, Thing] => [
      jointId(run.id, at),
      { text: `No joint of ${run.label} at ${label}`, cause: { ...run.cause, ids: [run.id], rule: why } },
    ]),
  )
  return [...made, ...refused]
}
