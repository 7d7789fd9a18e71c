import { IRC_LIMITS } from '../data/index.ts'
import type { JoistSupport } from '../frame/index.ts'
import { bearingStress, figure } from '../rules/index.ts'
import { inches, type Ticks, ticks, toInches } from '../units/index.ts'
import { byCalculation, type Limit } from './calculated.ts'
import type { JoistContext } from './context.ts'
import { byLimit, length } from './finding.ts'
import { listedFor } from './hanger-load.ts'
import { joistsNamed } from './hanging-joists.ts'
import { judge } from './judge.ts'
import type { Check, Finding } from './types.ts'
import { feetInches } from './words.ts'

/** Seat of a joist in its hanger at a ledger or a flush beam: the 1-1/2 in that IRC 2021 R507.6.1 asks for. */
const HANGER_SEAT = inches(IRC_LIMITS.bearingOnWood.value)

/** Bearing of the joists: 1-1/2 in on every support, IRC 2021 R507.6.1, and the stress across their grain there. */
export function checkJoistBearing(context: JoistContext): Check {
  const { job } = context
  const least = inches(IRC_LIMITS.bearingOnWood.value)
  const seats = seatsOf(context)
  const shortest = ticks(Math.min(...seats))
  const found = byLimit(IRC_LIMITS.bearingOnWood, length(least), length(shortest), [
    `Shortest bearing of a joist: ${feetInches(shortest)}; ${feetInches(least)} is needed`,
  ])
  return judge(job, {
    id: `joist-bearing${context.suffix}`,
    title: 'Joist bearing',
    subjects: context.joistIds,
    fields: ['frame.beams.front.plies', 'frame.joists.size', 'frame.joists.spacing'],
    // a hanger's seat is made to the rule: being at it is not being near a limit
    prescriptive: found.ratio === 1 ? { ...found, ratio: null } : found,
    calculated: calculate(context, seats),
    good: () => `${joistsNamed(context)} bear ${feetInches(shortest)} or more.`,
    bad: `${joistsNamed(context)} bear ${feetInches(shortest)} at the least; that is too little.`,
    uncovered: 'No rule covers the bearing of the joists',
    remedy: 'Use more plies under the joists, or set the joists closer.',
    caution:
      context.hung === null
        ? ''
        : `Hangers: listed for ${figure(listedFor(job.frame.joists.size, context.hung))} lb or more each.`,
  })
}

/** Length of bearing on each support, in their order from the house. */
function seatsOf({ group, frame }: JoistContext): readonly Ticks[] {
  const lines = frame.joistGroups.find(({ id }) => id === group.id)?.lines ?? []
  return group.supports.map((_, i) => {
    const seats = lines.flatMap(({ supports }) => supports[i] ?? []).map(seatOf)
    return ticks(Math.min(...seats))
  })
}

/** Two joists that end against each other over a beam have half of it each. */
function seatOf({ half, seat }: JoistSupport): Ticks {
  if (seat === 'hung') return HANGER_SEAT
  return ticks(Math.floor(seat === 'half' ? half : 2 * half))
}

/** Stress across the grain on each support, Cb 1. NDS 2018 3.10.2. */
function calculate({ joist }: JoistContext, seats: readonly Ticks[]): Finding | null {
  if (joist === null) return null
  const limits = joist.envelope.supports.map((support, i): Limit => {
    const seat = toInches(seats[i] ?? HANGER_SEAT)
    return {
      name: `Bearing on support ${i + 1}`,
      clause: '3.10.2',
      demand: { value: bearingStress(support.greatest, joist.section.breadth, seat), unit: 'psi' },
      capacity: { value: joist.values.compressionAcross, unit: 'psi' },
      steps: [`${support.greatest.toFixed(0)} lb on ${joist.section.breadth} × ${seat} in`],
    }
  })
  const [first, ...rest] = limits
  if (first === undefined) return null
  return byCalculation([first, ...rest], joist.values.source, [joist.values.steps.compressionAcross])
}
