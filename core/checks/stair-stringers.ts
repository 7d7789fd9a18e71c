import { DCA_LIMITS, DECKING_SPANS, STAIR_LIMITS } from '../data/index.ts'
import type { Job } from '../job/index.ts'
import {
  adjustedValues,
  bendingStress,
  isIncised,
  lookUpRow,
  momentOfInertia,
  type Rectangle,
  rectangleOf,
} from '../rules/index.ts'
import { type StairPlan, type StringerPattern, spacingFor } from '../stairs/index.ts'
import { inches, printLength, ticks, toInches } from '../units/index.ts'
import { byCalculation } from './calculated.ts'
import { rowReadWords } from './decking-span.ts'
import { atMost, byLimit, length, worse } from './finding.ts'
import { headLoad } from './flight-load.ts'
import { judge, percent } from './judge.ts'
import { plainRules } from './plain-rules.ts'
import type { Check, Finding } from './types.ts'
import { spacingText } from './words.ts'

/** lb on a tread, IRC 2021 Table R301.5. */
const TREAD_LOAD = STAIR_LIMITS.treadLoad.value

/** Deflection of a tread, a 288th of its span: read in Wisconsin SPS 320-325 Appendix B, table 7, footnotes. */
const TREAD_LIMIT = 288

/** Where boards over one span stand, from memory. */
const ONE_SPAN = ['2021', 'single span']

/** Spans of the stringers against the AWC deck guide, one check for each flight. */
export function checkStringers(job: Job, stairs: StairPlan): readonly Check[] {
  return stairs.patterns.map((pattern) => {
    const limit = pattern.kind === 'cut' ? DCA_LIMITS.cutStringerSpan : DCA_LIMITS.closedStringerSpan
    const spacing = pattern.kind === 'cut' ? DCA_LIMITS.cutStringerSpacing : DCA_LIMITS.closedStringerSpacing
    const span = byLimit(limit, length(pattern.span), length(limit.value * 32), [
      `${pattern.marks.length} treads of ${printLength(pattern.run)}: ${printLength(pattern.span)} level between the supports`,
      `About ${headLoad(job, pattern)} lb at the head of each stringer, to be borne by its hanger`,
    ])
    const rules = plainRules([
      { limit: spacing, what: 'stringers', measure: pattern.spacing, holds: 'at most' },
      ...(pattern.kind === 'cut'
        ? [
            {
              limit: DCA_LIMITS.throat,
              what: 'the wood under the notches',
              measure: pattern.throat,
              holds: 'at least' as const,
            },
          ]
        : []),
    ])
    const broken = rules.broken.length > 0 && rules.deciding !== null
    const overSpan = (span.ratio ?? 0) > 1
    const told = `Flight ${pattern.flight}: ${pattern.count} stringers, ${pattern.kind}`
    return judge(job, {
      id: `stair-stringers-${pattern.flight}`,
      title: 'Stringers',
      subjects: stairs.members
        .filter(({ id }) => id.startsWith(`stringer-${pattern.flight}-`))
        .map(({ id }) => id),
      fields: ['stairs.stringers', 'stairs.run', 'stairs.kind', 'size.height'],
      prescriptive: broken && !overSpan ? rules.deciding : span,
      calculated: null,
      beside: [
        ...(broken && !overSpan ? [span] : rules.deciding === null ? [] : [rules.deciding]),
        ...rules.beside,
      ],
      good: (share) => `${told}, ${share} of their span.`,
      bad: overSpan
        ? `${told}, span ${printLength(pattern.span)}; ${limit.value} in is the most.`
        : `${told}: ${rules.broken.map(({ what, limit: { value }, holds }) => `${what} not ${holds} ${value} in`).join('; ')}.`,
      uncovered: 'No table covers the stringers',
      remedy:
        pattern.kind === 'cut'
          ? 'Use closed stringers, or put a landing between two flights.'
          : 'Put a landing between two flights, or have posts set under the stringers by a designer.',
      caution: rules.unread,
    })
  })
}

/** Tread boards over the stringers: IRC Table R507.7 where they run over three or more, else one board under 300 lb. */
export function checkTreads(job: Job, stairs: StairPlan): readonly Check[] {
  const pattern = stairs.patterns.reduce((a, b) => (b.spacing > a.spacing ? b : a))
  const { size } = stairs.tread.product
  const over = pattern.kind === 'cut' && pattern.count > 2
  const row = size === '5/4x6' ? '1-1/4 in wood' : '2 in wood'
  const at = over ? ['2018', 'multiple spans'] : ONE_SPAN
  const lookup = lookUpRow(DECKING_SPANS, { at, row, column: 'perpendicular' })
  const recalled = lookUpRow(DECKING_SPANS, { at: ['2021', 'multiple spans'], row, column: 'perpendicular' })
  const spacing = ticks(Math.ceil(pattern.spacing))
  const others = otherTreads(job, stairs, pattern)
  const prescriptive = atMost(lookup, pattern.spacing, [
    `Stringers at ${spacingText(spacing)}, boards over ${over ? 'two spans or more' : 'one span'}`,
    lookup.sentence,
  ])
  return [
    judge(job, {
      id: 'stair-treads',
      title: 'Treads',
      subjects: stairs.members.filter(({ role }) => role === 'tread').map(({ id }) => id),
      fields: ['stairs.treads', 'stairs.stringers', 'stairs.width'],
      prescriptive,
      calculated: size === '5/4x6' ? null : treadUnderLoad(job, pattern.spacing, rectangleOf(size)),
      good: (share) =>
        `Treads of ${size} use ${share} of their span${over ? `, ${rowReadWords(recalled)}` : ''}.`,
      bad: `Treads of ${size} span ${spacingText(spacing)} between the stringers.`,
      uncovered: `No table row covers treads of ${size} over ${over ? 'these stringers' : 'one span'}`,
      remedy: `Treads of ${size} do not hold there: ${others}.`,
      whenUncovered: `Outside prescriptive scope: ${others}.`,
      caution: '',
    }),
  ]
}

/** What else treads between closed stringers may be: of 2x6 where those hold, and on cut stringers where those reach. */
function otherTreads(job: Job, { patterns, tread }: StairPlan, pattern: StringerPattern): string {
  const spacing = spacingFor('2x6', pattern)
  const recalled = atMost(
    lookUpRow(DECKING_SPANS, { at: ONE_SPAN, row: '2 in wood', column: 'perpendicular' }),
    spacing,
    [],
  )
  const share =
    worse(recalled, treadUnderLoad(job, spacing, rectangleOf('2x6')))?.ratio ?? Number.POSITIVE_INFINITY
  const reached = patterns.every(({ span }) => span <= inches(DCA_LIMITS.cutStringerSpan.value))
  return [
    ...(share <= 1 && tread.product.size !== '2x6'
      ? [`take treads of 2x6, ${percent(share)} used by figures that the building official must accept`]
      : []),
    ...(reached ? ['take cut stringers, over which the boards run on as a row of the table allows'] : []),
    'have a licensed designer draw them',
  ].join(', or ')
}

/** One board, flat, under the whole 300 lb in the middle of a span; the factor for flat use is left out. NDS 2018 3.3. */
function treadUnderLoad(job: Job, spacing: number, upright: Rectangle): Finding {
  const { species, treatment } = job.frame
  const board = { breadth: upright.depth, depth: upright.breadth }
  const span = toInches(spacing) - 1.5
  const values = adjustedValues('2x6', species, {
    wet: true,
    incised: treatment === 'treated' && isIncised(species),
    duration: 1,
    repetitive: 1,
  })
  const moment = (TREAD_LOAD * span) / 4
  const deflection = (TREAD_LOAD * span ** 3) / (48 * values.modulus * momentOfInertia(board))
  return byCalculation(
    [
      {
        name: 'Bending',
        clause: '3.3',
        demand: { value: bendingStress(moment, board), unit: 'psi' },
        capacity: { value: values.bending, unit: 'psi' },
        steps: [
          values.steps.bending,
          `M = P L ÷ 4 = ${TREAD_LOAD} × ${span.toFixed(2)} ÷ 4 = ${moment.toFixed(0)} in-lb`,
        ],
      },
      {
        name: 'Deflection',
        clause: '3.5',
        demand: { value: deflection, unit: 'in' },
        capacity: { value: span / TREAD_LIMIT, unit: 'in' },
        steps: [
          values.steps.modulus,
          `P L³ ÷ (48 E' I), a ${TREAD_LIMIT}th of ${span.toFixed(2)} in allowed`,
        ],
      },
    ],
    values.source,
    [
      `One board of ${board.breadth} × ${board.depth} in, flat, bears ${TREAD_LOAD} lb (IRC 2021 Table R301.5)`,
    ],
  )
}
