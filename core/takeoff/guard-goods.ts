import { cite, nailing, nailingSources, sectionOf } from '../data/index.ts'
import type { Cause } from '../frame/index.ts'
import type { GuardPlan } from '../guard/index.ts'
import type { Job } from '../job/index.ts'
import { inches, toFeet, toInches } from '../units/index.ts'
import { guardHoldDownSku } from './hardware.ts'
import { type Nailed, nailPounds } from './nails.ts'
import type { GoodShare } from './tally.ts'

/** Screws stripped and dropped, percent: common practice, no source. */
const SCREW_WASTE = 5

/** Bolts of one post: common practice; the hold-down takes the upper one. */
export const GUARD_POST_BOLTS = 2

/** Screws of one thing, by kind: common practice, no source. */
const SCREWS = { railEnd: 2, balusterEnd: 2, capPerFoot: 2 } as const

/** Posts' hardware, balusters or panels, gates, and the screws and nails that fix them. */
export function guardGoods(job: Job, guard: GuardPlan | null): readonly GoodShare[] {
  if (guard === null) return []
  const { deckPosts, stairPosts, balusters, panels, gates } = guard
  const because = (
    rule: string,
    fields: readonly string[] = ['guard.where', 'guard.postSpacing'],
  ): Cause => ({
    fields,
    ids: guard.members.filter(({ role }) => role === 'guard post').map(({ id }) => id),
    rule,
  })
  return [
    {
      sku: guardHoldDownSku(job),
      quantity: job.guard.fixing === 'hold-downs' ? deckPosts + stairPosts : 0,
      cause: because(
        `One hold-down listed for ${job.guard.holdDown.toLocaleString('en-US')} lb or more at the upper bolt of each post (AWC DCA 6); beside stairs into the block between the stringers (common practice, no source)`,
        ['guard.where', 'guard.fixing', 'guard.holdDown'],
      ),
    },
    {
      sku: 'carriage-bolt-1/2',
      quantity: GUARD_POST_BOLTS * (deckPosts + stairPosts),
      cause: because(
        'Two through bolts for each post, on the deck and beside the stairs (common practice, no source)',
      ),
    },
    ...balusters.map(({ stock, count, sloped }) => ({
      sku: `baluster-${toInches(stock)}in`,
      quantity: count,
      cause: because(
        `As few in each bay as let no ${sloped ? '4-3/8 in ball through beside stairs' : '4 in ball through'} (IRC 2021 R312.1.3)`,
        ['guard.infill', 'guard.postSpacing', 'guard.height'],
      ),
    })),
    ...panels.map(({ stock, sloped, count }) => ({
      sku: `guard${sloped ? '-stair' : ''}-panel-${toFeet(stock)}ft`,
      quantity: count,
      cause: because('The shortest panel that fills each bay, cut to length', [
        'guard.infill',
        'guard.postSpacing',
      ]),
    })),
    { sku: 'guard-gate', quantity: gates, cause: because('At the head of the stairs', ['guard.gate']) },
    ...screws(job, guard, because),
    ...guardNails(guard).map(nailPounds),
  ].filter(({ quantity }) => quantity > 0)
}

function screws(
  job: Job,
  { members, balusters, levelLength, slopedLength }: GuardPlan,
  because: (rule: string, fields?: readonly string[]) => Cause,
): readonly GoodShare[] {
  const rails = members.filter(({ role }) => role === 'guard rail').length
  const long = SCREWS.railEnd * 2 * rails
  const short = SCREWS.balusterEnd * 2 * balusters.reduce((sum, { count }) => sum + count, 0)
  const cap = job.guard.cap === 'none' ? 0 : Math.ceil(toFeet(levelLength + slopedLength) * SCREWS.capPerFoot)
  const thick = job.guard.cap !== 'none' && sectionOf(job.guard.cap).thickness > inches(1)
  const bought = (count: number) => Math.ceil((count * (100 + SCREW_WASTE)) / 100)
  const says = `${SCREW_WASTE} % more for loss (common practice, no source)`
  return [
    {
      sku: 'screw-deck-3',
      quantity: bought(long + (thick ? cap : 0)),
      cause: because(`${long} screws at the ends of rails${thick ? `, ${cap} in the cap` : ''}; ${says}`),
    },
    {
      sku: 'screw-deck-2-1/2',
      quantity: bought(short + (thick ? 0 : cap)),
      cause: because(`${short} screws in balusters${thick ? '' : `, ${cap} in the cap`}; ${says}`),
    },
  ]
}

/** Blocks behind posts are nailed as others are. */
export function guardNails({ members }: GuardPlan): readonly Nailed[] {
  const blocks = members.filter(({ role }) => role === 'guard blocking')
  if (blocks.length === 0) return []
  return [
    {
      nail: '16d common',
      count: 2 * blocks.length * nailing.blockEnd,
      each: `${nailing.blockEnd} at each end`,
      joint: 'block behind a guard post',
      says: cite(nailingSources.blockEnd),
      fields: ['guard.where'],
      ids: blocks.map(({ id }) => id),
    },
  ]
}
