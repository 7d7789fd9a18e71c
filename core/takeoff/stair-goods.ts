import type { Cause } from '../frame/index.ts'
import { furtherStairs, type Job, jobOfStairs } from '../job/index.ts'
import type { StairConnector, StairPlan } from '../stairs/index.ts'
import { feet, inches, TICKS_PER_FOOT, toFeet, toInches } from '../units/index.ts'
import { boardScrew } from './board-screw.ts'
import { tubePieces } from './ground-goods.ts'
import { type Nailed, nailPounds, pliesTogether } from './nails.ts'
import type { GoodShare } from './tally.ts'
import { UNDER_PAD } from './volumes.ts'

/** Screws stripped and dropped, percent: common practice, no source. */
const SCREW_WASTE = 5

/** Brackets of a handrail stand at most so far apart, two at least: common practice, no source. */
const BRACKETS_APART = feet(4)

/** A rail's end turns back to its post or wall, so that no sleeve is caught: common practice, no source. */
const RETURN = inches(3)

/** Nails of one connector, by kind: common practice, no source; the listing of the connector bought governs. */
const NAILS_EACH = {
  'stringer hanger': { common: 6, short: 8 },
  'stringer foot angle': { common: 0, short: 4 },
  'stringer landing angle': { common: 0, short: 8 },
  'tread bracket': { common: 0, short: 8 },
} as const

/** Hardware, screws and nails, handrail of one of the stairs, and what its pad takes beside its concrete. */
export function stairGoods(whole: Job, stairs: StairPlan): readonly GoodShare[] {
  const job = jobOfStairs(whole, stairs.branch)
  return [
    ...stairs.connectors.flatMap((one) => connectorGoods(one, stairs)),
    ...[...stripNailed(stairs), ...landingNailed(stairs)].map(nailPounds),
    ...plyNailed(stairs).map(nailPounds),
    ...screws(job, stairs),
    ...handrail(stairs),
    ...pad(stairs),
    ...tubes(stairs),
  ]
    .filter(({ quantity }) => quantity > 0)
    .map((good) => ({
      ...good,
      cause: {
        ...good.cause,
        fields: good.cause.fields.map((path) => furtherStairs(stairs.branch, path)),
      },
    }))
}

function connectorGoods({ kind, count, cause }: StairConnector, { floor }: StairPlan): readonly GoodShare[] {
  const each = (sku: string): GoodShare => ({ sku, quantity: count, cause })
  switch (kind) {
    case 'stringer hanger':
      return [each('stringer-hanger'), ...nails(kind, count, cause)]
    case 'stringer foot angle':
      return [
        each('stringer-foot-angle'),
        // into concrete, or into the blocking under a floor of wood
        each(floor === null ? 'anchor-bolt-1/2' : 'ledger-lag-1/2'),
        ...nails(kind, count, cause),
      ]
    case 'stringer landing angle':
      return [each('stringer-foot-angle'), ...nails(kind, count, cause)]
    case 'header bolt':
    case 'landing brace bolt':
      return [each('ledger-bolt-1/2')]
    case 'tread bracket':
      return [each('tread-bracket'), ...nails(kind, count, cause)]
    default:
      // a landing's metal is counted with the deck's
      return []
  }
}

function nails(kind: keyof typeof NAILS_EACH, count: number, cause: Cause): readonly GoodShare[] {
  return nailed(kind, count, cause).map(nailPounds)
}

function nailed(kind: keyof typeof NAILS_EACH, count: number, cause: Cause): readonly Nailed[] {
  const { common, short } = NAILS_EACH[kind]
  const says = 'common practice, no source'
  const into = (nail: '10d common' | '10d × 1-1/2', each: number): Nailed => ({
    nail,
    count: count * each,
    each: `${each} each`,
    joint: kind,
    says,
    fields: cause.fields,
    ids: cause.ids,
  })
  return [into('10d common', common), into('10d × 1-1/2', short)]
}

/** Three 16d at each stringer, as a ledger strip is nailed under joists: IRC 2021 Table R602.3(1), from memory. */
const STRIP_NAILS = 3

function stripNailed({ patterns }: StairPlan): readonly Nailed[] {
  return patterns.flatMap(({ flight, count, below }): readonly Nailed[] =>
    below === 0
      ? []
      : [
          {
            nail: '16d common',
            count: STRIP_NAILS * count,
            each: `${STRIP_NAILS} at each stringer`,
            joint: 'strip on the landing’s beam',
            says: 'IRC 2021 Table R602.3(1), from memory',
            fields: ['stairs.kind'],
            ids: [`stair-strip-${flight}`],
          },
        ],
  )
}

/** Boards of one landing's beam, face to face, as those of the deck's beams. */
function plyNailed({ members }: StairPlan): readonly Nailed[] {
  const plies = members.filter(({ role }) => role === 'landing beam')
  const beams = Map.groupBy(plies, ({ mark }) => mark.replace(/[a-z]$/, ''))
  return [...beams].flatMap(([mark, alike]) =>
    alike.length < 2
      ? []
      : [
          {
            ...pliesTogether(
              `Landing beam ${mark}`,
              Math.max(...alike.map(({ length }) => length)),
              alike.map(({ id }) => id),
            ),
            fields: ['stairs.kind'],
          } satisfies Nailed,
        ],
  )
}

/** Through the beam's inner ply into the end of a landing's outermost joist: as a rim is nailed to joists, common practice, no source. */
export const END_NAILS = 3

function landingNailed({ connectors, members }: StairPlan): readonly Nailed[] {
  const ends = connectors.find(({ kind }) => kind === 'landing end angle')?.count ?? 0
  return ends === 0
    ? []
    : [
        {
          nail: '16d common',
          count: END_NAILS * ends,
          each: `${END_NAILS} into each end`,
          joint: 'landing’s beam into the end of an outermost joist',
          says: 'common practice, no source',
          fields: ['stairs.kind'],
          ids: members.flatMap(({ role, id }) => (role === 'landing joist' ? [id] : [])),
        },
      ]
}

/** Every kind of joint of stairs that is nailed. */
export function stairNails(plans: readonly StairPlan[]): readonly Nailed[] {
  return plans.flatMap((plan) => [
    ...plan.connectors.flatMap(({ kind, count, cause }) =>
      isNailed(kind) ? nailed(kind, count, cause) : [],
    ),
    ...stripNailed(plan),
    ...landingNailed(plan),
    ...plyNailed(plan),
  ])
}

function isNailed(kind: StairConnector['kind']): kind is StairConnector['kind'] & keyof typeof NAILS_EACH {
  return Object.hasOwn(NAILS_EACH, kind)
}

/** Two screws in each board of a tread and of a riser at each stringer that it lies on. */
function screws(job: Job, stairs: StairPlan): readonly GoodShare[] {
  const closed = job.stairs.stringers === 'closed'
  const boards = stairs.members.filter(({ role }) => role === 'tread' || role === 'riser')
  const stringersOf = (id: string) =>
    closed ? 2 : (stairs.patterns.find(({ flight }) => id.split('-')[1] === `${flight}`)?.count ?? 0)
  const bySku = new Map<string, number>()
  for (const { id, role, product } of boards) {
    if (role === 'tread' && closed) continue
    const sku = boardScrew(product.size)
    bySku.set(sku, (bySku.get(sku) ?? 0) + 2 * stringersOf(id))
  }
  const courses = stairs.members.filter(({ role }) => role === 'landing decking').length
  const joists = stairs.members.filter(({ role }) => role === 'landing joist').length
  const decked = boardScrew(job.decking.size)
  if (courses > 0) bySku.set(decked, (bySku.get(decked) ?? 0) + 2 * courses * joists)
  return [...bySku].map(([sku, count]) => ({
    sku,
    quantity: Math.ceil((count * (100 + SCREW_WASTE)) / 100),
    cause: {
      fields: ['stairs.treads', 'stairs.risers'],
      ids: boards.slice(0, 1).map(({ id }) => id),
      rule: `${count} screws in treads, risers and landing, two at each bearing, ${SCREW_WASTE} % more for loss (common practice, no source)`,
    },
  }))
}

function handrail({ handrail: { sides, each, flights: rails }, flights }: StairPlan): readonly GoodShare[] {
  const brackets = rails.reduce<number>(
    (sum, long) => sum + Math.max(2, Math.ceil(long / BRACKETS_APART) + 1),
    0,
  )
  const cause = (rule: string): Cause => ({
    fields: ['stairs.handrail'],
    ids: [`stringer-${flights[0]?.number}-1`],
    rule,
  })
  return [
    {
      sku: 'handrail',
      quantity: sides * toFeet(each + 2 * RETURN * rails.length),
      cause: cause(
        'From over the lowest riser to over the uppermost on each side asked for (IRC 2021 R311.7.8.4, from memory), and 3 in to return either end of each flight’s rail (common practice, no source)',
      ),
    },
    {
      sku: 'handrail-bracket',
      quantity: sides * brackets,
      cause: cause('One every 4 ft and one at the end of each flight’s rail (common practice, no source)'),
    },
  ]
}

function pad({ pad: one, flights }: StairPlan): readonly GoodShare[] {
  if (one === null) return []
  const cause = (rule: string): Cause => ({
    fields: ['stairs.foot', 'stairs.padDepth', 'stairs.padThickness', 'stairs.width'],
    ids: [`stringer-${flights[0]?.number}-1`],
    rule: `${rule} (common practice, no source)`,
  })
  return [
    {
      sku: 'gravel',
      quantity: (one.width * one.depth * UNDER_PAD) / TICKS_PER_FOOT ** 3,
      cause: cause('4 in under the pad'),
    },
    {
      sku: 'form-board',
      quantity: toFeet(2 * (one.width + one.depth)),
      cause: cause('Round the pad'),
    },
  ]
}

/** Feet of tube under stringers and landings, by diameter, from 4 ft pieces. */
function tubes({ footings }: StairPlan): readonly GoodShare[] {
  const first = footings[0]
  if (first === undefined) return []
  const bases = footings.filter(({ base }) => base > 0)
  return [
    {
      sku: `form-tube-${toInches(first.tube)}in`,
      quantity: 4 * tubePieces(footings.map(({ tubeLength }) => toFeet(tubeLength))),
      cause: { ...first.cause, ids: footings.map(({ id }) => id) },
    },
    {
      sku: 'footing-base-form',
      quantity: bases.length,
      cause: { ...first.cause, ids: bases.map(({ id }) => id) },
    },
  ]
}
