import type { Fit, Planned } from './estimate-types.ts'
import type { FrameRun } from './frame/index.ts'

/** Joints of a set of plans, framing and decking apart. */
export interface JointCount {
  readonly framing: number
  readonly decking: number
}

export function countJoints(runs: readonly FrameRun[], plans: readonly Planned[]): JointCount {
  const decking = new Set(runs.filter((run) => run.kind === 'decking').map((run) => run.id))
  const joints = plans.flatMap(({ plan }) => plan.joints)
  const inDecking = joints.filter((joint) => decking.has(joint.runId)).length
  return { framing: joints.length - inDecking, decking: inDecking }
}

/**
 * Whether the deck's width comes from whole boards: it fits stock when every framing run along it does (ledger,
 * rims, beam plies), and with decking when the courses do too. Read from the plans, so it says what is ordered.
 */
export function fitOf(runs: readonly FrameRun[], plans: readonly Planned[], complete: boolean): Fit {
  if (!complete) {
    return { fitsStock: false, fitsWithDecking: false, message: 'Not known: a product has no cutting plan.' }
  }
  const { framing, decking } = countJoints(runs, plans)
  return {
    fitsStock: framing === 0,
    fitsWithDecking: framing + decking === 0,
    message: messageOf(framing, decking),
  }
}

function messageOf(framing: number, decking: number): string {
  if (framing + decking === 0) return 'Every framing run and every decking course comes whole from one board.'
  if (framing === 0)
    return `Every framing run comes whole from one board; the decking has ${joints(decking)}.`
  return decking === 0
    ? `The framing has ${joints(framing)}; every decking course comes whole from one board.`
    : `The framing has ${joints(framing)}, the decking ${joints(decking)}.`
}

function joints(count: number): string {
  return `${count} ${count === 1 ? 'joint' : 'joints'}`
}
