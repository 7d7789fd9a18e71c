import type { Cause } from '../frame/index.ts'
import { furtherStairs, type Job, jobOfStairs } from '../job/index.ts'
import type { StairPlan } from '../stairs/index.ts'
import { TICKS_PER_FOOT, toFeet } from '../units/index.ts'
import { boardFeetOf } from './board-feet.ts'
import type { TaskShare } from './tally.ts'
import { digRate } from './tasks.ts'
import { dugForPad } from './volumes.ts'

/** Work on one of the stairs, its landing and its foot; digging and mixing of tubes are counted with the deck's. */
export function stairTasks(whole: Job, stairs: StairPlan): readonly TaskShare[] {
  const job = jobOfStairs(whole, stairs.branch)
  const { patterns, flights, handrail, pad, footings } = stairs
  const stringers = patterns.reduce((sum, { count }) => sum + count, 0)
  const treads = flights.reduce((sum, flight) => sum + flight.treads, 0)
  const because = (rule: string, fields: readonly string[] = ['stairs.kind', 'stairs.width']): Cause => ({
    fields: fields.map((path) => furtherStairs(stairs.branch, path)),
    ids: patterns.map(({ flight }) => `stringer-${flight}-1`),
    rule,
  })
  const risers = job.stairs.risers === 'open' ? 0 : treads
  return [
    {
      rateId: 'stair-header',
      quantity: flights.length + patterns.filter(({ below }) => below > 0).length,
      cause: because(
        'One board behind the heads of each flight’s stringers, and a strip under feet at a landing',
      ),
    },
    {
      rateId: 'stringer-first',
      quantity: patterns.length,
      cause: because('The first stringer of each flight is the pattern'),
    },
    {
      rateId: 'stringer-copy',
      quantity: stringers - patterns.length,
      cause: because('The others are cut from the pattern'),
    },
    { rateId: 'stringer-set', quantity: stringers, cause: because('One per stringer') },
    { rateId: 'tread', quantity: treads, cause: because('One per tread', ['stairs.kind', 'stairs.treads']) },
    { rateId: 'riser', quantity: risers, cause: because('One per closed riser', ['stairs.risers']) },
    {
      rateId: 'stair-rail',
      quantity: handrail.sides * toFeet(handrail.each),
      cause: because('Along the slope, on each side asked for', ['stairs.handrail']),
    },
    ...(pad === null
      ? []
      : [
          {
            rateId: digRate(job, Math.min(pad.width, pad.depth)),
            quantity: dugForPad(pad),
            cause: because('Pad and the 4 in of gravel under it', ['stairs.foot', 'stairs.padDepth']),
          },
          {
            rateId: 'pad',
            quantity: (pad.width * pad.depth) / TICKS_PER_FOOT ** 2,
            cause: because('Area of the pad', ['stairs.foot', 'stairs.padDepth']),
          },
        ]),
    ...['layout-footing', 'hole-clean', 'form-tube'].map((rateId) => ({
      rateId,
      quantity: footings.length,
      cause: because('One per footing under the stairs', ['stairs.foot', 'stairs.kind']),
    })),
    ...landingTasks(stairs, because),
  ]
}

function landingTasks(
  { members, platform, footings }: StairPlan,
  because: (rule: string, fields?: readonly string[]) => Cause,
): readonly TaskShare[] {
  if (platform === null) return []
  const own = (role: string) => members.filter((member) => member.role === role)
  const feetOfBoard = (role: string) =>
    boardFeetOf(own(role)).reduce((sum, { thousandths }) => sum + thousandths, 0) / 1000
  const posts = own('landing post').length
  const fields = ['stairs.kind', 'stairs.landingDepth']
  const task = (rateId: string, quantity: number, rule: string): TaskShare => ({
    rateId,
    quantity,
    cause: because(rule, fields),
  })
  return [
    task('form-base', footings.filter(({ base }) => base > 0).length, 'One per base under the landing'),
    task('wetset-bolt', posts, 'One per post of the landing'),
    task('post-base-wet', posts, 'One per post of the landing'),
    task('post-set', posts, 'One per post of the landing'),
    task('post-cap', posts, 'One per post of the landing'),
    task('post-brace', own('landing brace').length, 'One per brace of the landing'),
    task('beam-builtup', feetOfBoard('landing beam'), 'Board feet of the landing’s beams'),
    task('joist', feetOfBoard('landing joist'), 'Board feet of the landing’s joists'),
    task('deck-perp-screw', (platform.width * platform.depth) / TICKS_PER_FOOT ** 2, 'Area of the landing'),
  ]
}
