import { sectionOf } from '../data/index.ts'
import { dowelBearing, nailLateral, rectangleOf, singleShearYield } from '../rules/index.ts'
import { type PlacedFlight, RIM, type StairPlan, type StringerPattern } from '../stairs/index.ts'
import { type Ticks, toInches } from '../units/index.ts'
import { strengthLimits } from './bending-limits.ts'
import { byCalculation, type Limit } from './calculated.ts'
import type { CheckContext } from './context.ts'
import { headLoad } from './flight-load.ts'
import { judge } from './judge.ts'
import { valuesOf } from './load-path.ts'
import { borneByDeck } from './stair-head-load.ts'
import type { Check } from './types.ts'
import { uprightLoads } from './upright-loads.ts'

/** A 1/2 in bolt: its diameter, in, and what it yields at, psi. NDS 2018 Table I1. */
const BOLT = { diameter: 0.5, strength: 45_000 }

/** Bolts and nails in wood that stays wet. NDS 2018 Table 11.3.3, from memory. */
const WET = 0.7

/** Two bolts, 2 in off the upright's end where 7 diameters bear fully. NDS 2018 12.5.1, from memory. */
const AT_END = { bolts: 2, share: 2 / 3.5 }

/** Two bolts 1-1/2 in apart along a post where 4 diameters bear fully. NDS 2018 12.5.1, from memory. */
const IN_POST = { bolts: 2, share: 1.5 / 2 }

/** Three 16d common at each stringer's level cut, 0.162 in thick. */
const STRIP_NAILS = { count: 3, diameter: 0.162 }

/** A flight with its stringers and what half of it brings to the head of each, lb. */
interface Hung {
  readonly context: CheckContext
  readonly stairs: StairPlan
  readonly flight: PlacedFlight
  readonly pattern: StringerPattern
  readonly each: number
}

/**
 * Rim, header and strip that the flights hang from and stand on, with their bolts and nails, by calculation: no table of
 * the code has them. Of rims' own nails to joists nothing is reckoned, and it is told.
 */
export function checkStairHangs(context: CheckContext, stairs: StairPlan): readonly Check[] {
  return stairs.flights.flatMap((flight, i) => {
    const pattern = stairs.patterns.find((one) => one.flight === flight.number)
    if (pattern === undefined) return []
    const hung: Hung = { context, stairs, flight, pattern, each: headLoad(context.job, pattern) }
    const isDeck = i === 0
    const limits = [...(isDeck ? atDeck(hung) : atLanding(hung)), ...onStrip(hung)]
    const [first, ...more] = limits
    const source = valuesOf(context, context.job.frame.joists.size, 1).source
    return [
      judge(context.job, {
        id: `stair-hangs-${flight.number}`,
        title: `What flight ${flight.number} hangs on`,
        subjects: [`stair-header-${flight.number}`],
        // no size of the deck mends it, so none is kept from being chosen by it
        fields: ['stairs.width', 'stairs.stringers', 'stairs.run'],
        prescriptive: null,
        calculated:
          first === undefined
            ? null
            : byCalculation([first, ...more], source, [
                `${pattern.count} stringers, up to ${each(hung)} lb at the head of each`,
              ]),
        good: () => '',
        bad: `What flight ${flight.number} hangs on cannot carry ${each(hung)} lb at each of its ${pattern.count} stringers.`,
        uncovered: `No table covers ${isDeck && stairs.headBoard !== RIM ? stairs.headBoard : 'rim'}, header and bolts under ${each(hung)} lb at each of ${pattern.count} stringers`,
        remedy:
          'Put stringers closer, shorten the flight by a landing, or have a designer say what holds its head.',
        caution: isDeck ? heldBy(stairs) : '',
      }),
    ]
  })
}

/** What the board at the deck's edge is held by there, which is not reckoned. */
function heldBy({ headBoard }: StairPlan): string {
  return headBoard === RIM
    ? 'Nails of the rim into the ends of joists are reckoned for nothing: have an angle at every joist under the head of the stairs, and nail uprights to joists that they stand beside.'
    : `No joist ends at the head of the stairs: ${headBoard} runs along the edge and is held by its own two ends and the blocks between it and the next joist; nail uprights to blocks that they stand beside.`
}

function each({ each: pounds }: Hung): string {
  return `${Math.ceil(pounds)}`
}

/** Behind the rim an upright at each stringer, bolted to rim and header; the rim between the joists that end at it, where it is no joist itself. */
function atDeck(hung: Hung): readonly Limit[] {
  const { context, stairs, flight, pattern, each } = hung
  const { job } = context
  const uprights = stairs.members.filter(({ role }) => role === 'stair upright').length
  if (uprights === 0) return []
  // where joists keep an upright from standing behind its stringer the header brings it more
  const shared = (each * Math.max(pattern.count, uprights)) / uprights
  const brought = Math.max(shared, ...uprightLoads(stairs, flight, pattern, each))
  const values = valuesOf(context, job.frame.joists.size, 1)
  const spacing = toInches(job.frame.joists.spacing)
  return [
    bolts(context, brought, 'Bolts of an upright', AT_END, sectionOf('2x6').thickness),
    ...(borneByDeck(context, stairs)?.beam == null
      ? []
      : strengthLimits(
          { values, section: rectangleOf(job.frame.joists.size) },
          (brought * spacing) / 4,
          brought,
          ' of the rim',
        )),
  ]
}

/** The header from post to post of a landing, bolted to each. */
function atLanding(hung: Hung): readonly Limit[] {
  const { context, stairs, flight, pattern, each } = hung
  const { job } = context
  const posts = stairs.behindHeader
  const header = stairs.members.find(({ id }) => id === `stair-header-${flight.number}`)
  if (posts < 2 || header === undefined) return []
  const span = toInches(flight.width) / (posts - 1)
  const all = each * Math.max(1, pattern.count - 1)
  const onPost = posts === 2 ? all / 2 : (1.25 * all) / (posts - 1)
  const spread = ((all / toInches(flight.width)) * span ** 2) / 8
  const values = valuesOf(context, header.product.size, 1)
  return [
    bolts(context, onPost, 'Bolts of a landing post', IN_POST, sectionOf(job.frame.postSize).depth),
    ...strengthLimits(
      { values, section: rectangleOf(header.product.size) },
      Math.max(spread, (each * span) / 4),
      onPost,
      ' of the header',
    ),
  ]
}

/** Two bolts through a board across its grain into wood along it. */
function bolts(
  context: CheckContext,
  pounds: number,
  name: string,
  { bolts: count, share }: typeof AT_END,
  behind: Ticks,
): Limit {
  const { gravity } = valuesOf(context, context.job.frame.joists.size, 1)
  const { diameter, strength } = BOLT
  const { value } = singleShearYield(
    { length: toInches(behind), strength: dowelBearing(gravity, diameter, 'along') },
    {
      length: toInches(sectionOf(context.job.frame.joists.size).thickness),
      strength: dowelBearing(gravity, diameter, 'across'),
    },
    diameter,
    strength,
    90,
  )
  return {
    name,
    clause: '12.3',
    demand: { value: pounds, unit: 'lb' },
    capacity: { value: count * value * WET * share, unit: 'lb' },
    steps: [
      `Z = ${value.toFixed(0)} lb × CM ${WET} × CΔ ${share.toFixed(2)} × ${count} bolts of 1/2 in, one member across its grain`,
    ],
  }
}

/** The ledger strip under the feet of the flight above a landing. */
function onStrip({ context, pattern, each }: Hung): readonly Limit[] {
  if (pattern.below === 0) return []
  const values = valuesOf(context, '2x4', 1)
  const { count, diameter } = STRIP_NAILS
  const value = nailLateral(values.gravity, diameter)
  const seat = 1.5 * 1.5
  return [
    {
      name: 'Nails of the strip at a stringer',
      clause: '12.3',
      demand: { value: each, unit: 'lb' },
      capacity: { value: count * value * WET, unit: 'lb' },
      steps: [`Z = ${value.toFixed(0)} lb × CM ${WET} × ${count} nails 16d common`],
    },
    {
      name: 'Stringer on the strip',
      clause: '3.10',
      demand: { value: each / seat, unit: 'psi' },
      capacity: { value: values.compressionAcross, unit: 'psi' },
      steps: [values.steps.compressionAcross, `${each} lb on 1 1/2 in by 1 1/2 in`],
    },
  ]
}
