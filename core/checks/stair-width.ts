import { IRC_LIMITS, STAIR_LIMITS } from '../data/index.ts'
import type { GuardPlan } from '../guard/index.ts'
import type { Job } from '../job/index.ts'
import type { StairPlan } from '../stairs/index.ts'
import { inches, printLength, ticks } from '../units/index.ts'
import { judge } from './judge.ts'
import { plainRules } from './plain-rules.ts'
import type { Check } from './types.ts'

/** Handrails are set here above the nosings: within the 34 to 38 in of the clause. */
const RAIL_HEIGHT = inches(36)

/** Width of the stairs above the handrail. IRC 2021 R311.7.1. */
export function checkStairWidth(job: Job, stairs: StairPlan): Check {
  const narrowest = ticks(Math.min(...stairs.flights.map(({ width }) => width)))
  const widths = [...new Set(stairs.flights.map(({ width }) => width))]
  const wide =
    widths.length === 1
      ? `The stairs are ${printLength(narrowest)} wide.`
      : `Flights are ${widths.map((width) => printLength(width)).join(' and ')} wide.`
  const { deciding, beside } = plainRules([
    { limit: IRC_LIMITS.stairWidth, what: 'the stairs', measure: narrowest, holds: 'at least' },
  ])
  const turned = job.stairs.kind === 'landing left' || job.stairs.kind === 'landing right'
  return judge(job, {
    id: 'stair-width',
    title: 'Width of the stairs',
    subjects: [],
    fields: ['stairs.width', ...(turned ? ['stairs.landingDepth'] : [])],
    prescriptive: deciding,
    calculated: null,
    beside,
    good: () => wide,
    bad: wide,
    uncovered: 'No rule covers the width',
    remedy: 'Make them 36 in wide or more; a flight that turns is as wide as its landing is deep.',
    caution: '',
  })
}

/** Handrail where the stairs have four risers or more, and what it is fixed to. IRC 2021 R311.7.8. */
export function checkHandrail(job: Job, stairs: StairPlan, guard: GuardPlan | null): Check {
  const { needed, sides } = stairs.handrail
  const held = isHeld(job, stairs, guard)
  const height = plainRules([
    { limit: STAIR_LIMITS.handrailLow, what: 'the handrail', measure: RAIL_HEIGHT, holds: 'at least' },
    { limit: STAIR_LIMITS.handrailHigh, what: 'the handrail', measure: RAIL_HEIGHT, holds: 'at most' },
  ])
  const { says, value, source } = IRC_LIMITS.handrailRisers
  const missing = needed && sides === 0
  const rule = {
    method: 'prescriptive' as const,
    document: source.document,
    edition: source.edition,
    clause: source.clause,
    demand: { value: stairs.risers, unit: 'count' as const },
    capacity: { value: value - 1, unit: 'count' as const },
    ratio: missing ? stairs.risers / (value - 1) : null,
    confidence: source.confidence,
    lookup: says,
    steps: [`${stairs.risers} risers; a handrail is needed from ${value}`],
  }
  return judge(job, {
    id: 'stair-handrail',
    title: 'Handrail',
    subjects: [],
    fields: ['stairs.handrail', 'stairs.kind', 'guard.where'],
    prescriptive: missing ? rule : held ? height.deciding : null,
    calculated: null,
    beside: [...(missing ? [] : [rule]), ...height.beside],
    good: () =>
      sides > 0
        ? `A handrail on ${sidesText(sides)}, ${stairs.handrail.flights.map((long) => printLength(long)).join(' and ')} each.`
        : `${stairs.risers} risers need no handrail.`,
    bad: `${stairs.risers} risers need a handrail, and there is none.`,
    uncovered: `A handrail on ${sidesText(sides)} has nothing to be fixed to: no guard stands beside ${stairs.flights.length > 1 ? 'each flight' : 'the stairs'}, and posts for the handrail alone are not counted`,
    whenUncovered: `Have a guard along all open edges, which goes down beside the stairs, or set down a sum for posts and say how they are held${needed ? '' : `; or leave the handrail out: ${stairs.risers} risers need none`}.`,
    remedy: 'Add a handrail on one side at least.',
    caution: 'Set it 34 to 38 in above the nosings, with a profile that a hand closes round.',
  })
}

/** Whether each flight has posts of a guard, or a wall of the house, on as many sides as handrails; a guard that others build counts. */
function isHeld(job: Job, { handrail, flights, number }: StairPlan, guard: GuardPlan | null): boolean {
  if (guard === null && job.scope.guard.included) return true
  return flights.every(({ number: flight }) => {
    const beside = guard?.stairs.filter((one) => one.flight === flight) ?? []
    const walls = guard?.house.filter((one) => one.stairs === number && one.flight === flight) ?? []
    return beside.length + walls.length >= handrail.sides
  })
}

function sidesText(sides: number): string {
  return sides === 1 ? 'one side' : 'both sides'
}
