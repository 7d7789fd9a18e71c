import { DCA_LIMITS, guardBolts, IRC_LIMITS, STAIR_LIMITS, sectionOf } from '../data/index.ts'
import { type GuardPlan, isBacked } from '../guard/index.ts'
import type { Job } from '../job/index.ts'
import {
  adjustedValues,
  bendingStress,
  guardPostMoment,
  guardPostPull,
  isIncised,
  rectangleOf,
} from '../rules/index.ts'
import type { StairPlan } from '../stairs/index.ts'
import { feet, inches, printLength, ticks, toInches } from '../units/index.ts'
import { byCalculation } from './calculated.ts'
import { byLimit } from './finding.ts'
import { judge } from './judge.ts'
import { type PlainRule, plainRules } from './plain-rules.ts'
import type { Check, Finding } from './types.ts'

/** From the deck's framing down to the upper bolt of a guard post: common practice, no source. */
const UPPER_BOLT = inches(guardBolts.fromEdge)

/** Height and openings of the guard as it is built. IRC 2021 R312.1.2 and R312.1.3. */
function checkGuardMake(job: Job, guard: GuardPlan, stairs: readonly StairPlan[]): Check {
  const rules = makeRules(job, guard)
  const { deciding, beside, broken, unread } = plainRules(rules)
  const length = ticks(Math.round(guard.levelLength + guard.slopedLength))
  return judge(job, {
    id: 'guard-make',
    title: 'Height and openings of the guard',
    subjects: [],
    fields: ['guard.height', 'guard.infill', 'guard.postSpacing'],
    prescriptive: deciding,
    calculated: null,
    beside,
    good: () =>
      `${printLength(length)} of guard, ${printLength(job.guard.height)} high (${IRC_LIMITS.guardHeight.source.clause})${job.guard.infill === 'balusters' ? `, ${openings(guard)}` : ''}.`,
    bad: `${broken.map(({ what, limit, holds }) => `${what} is not ${holds} ${limit.value} in`).join('; ')}.`,
    uncovered: 'No rule covers the guard',
    remedy: broken.some(({ limit }) => limit === STAIR_LIMITS.guardOpening)
      ? 'Close the opening with uprights, or set the posts nearer each other.'
      : 'Make the guard 36 in high or higher.',
    caution: [
      unread,
      job.guard.infill === 'panels'
        ? 'Panels: the maker’s report must show that they bear 200 lb at the top and that no 4 in ball passes.'
        : '',
      gateWords(job, guard, stairs),
    ]
      .filter((text) => text !== '')
      .join(' '),
  })
}

/** Gates as they are sold close no wider way: common practice, no source. */
const WIDEST_GATE = feet(5)

/** Stairs at which a gate that is asked for is not counted, or is counted as one of usual width. */
function gateWords(job: Job, { stretches }: GuardPlan, stairs: readonly StairPlan[]): string {
  if (!job.guard.gate) return ''
  const hung = stairs.filter(({ edge }) => stretches.some((stretch) => stretch.edge.id === edge.id))
  const bare = stairs.filter((one) => !hung.includes(one))
  const wide = hung.filter(({ width }) => width > WIDEST_GATE)
  return [
    ...(stairs.length === 0 ? ['No gate is counted: there are no stairs.'] : []),
    ...bare.map(
      ({ width }) =>
        `No gate is counted at the stairs ${printLength(width)} wide: no guard stands along their edge to hang it from.`,
    ),
    ...wide.map(
      ({ width }) =>
        `The gate at the stairs ${printLength(width)} wide is counted as one of usual width: ask who makes one so wide before it is bought.`,
    ),
  ].join(' ')
}

function makeRules(job: Job, guard: GuardPlan): readonly PlainRule[] {
  const { stretches, stairs } = guard
  const { height, infill } = job.guard
  const opening = Math.max(0, ...stretches.flatMap(({ bays }) => bays.map((bay) => bay.opening)))
  const sloped = Math.max(0, ...stairs.flatMap(({ bays }) => bays.map((bay) => bay.opening)))
  return [
    { limit: IRC_LIMITS.guardHeight, what: 'the guard', measure: height, holds: 'at least' },
    ...(infill === 'panels'
      ? []
      : [
          {
            limit: STAIR_LIMITS.guardOpening,
            what: 'an opening of the guard',
            measure: opening,
            holds: 'at most' as const,
          },
        ]),
    ...(infill === 'panels' || stairs.length === 0
      ? []
      : [
          {
            limit: STAIR_LIMITS.stairGuardOpening,
            what: 'an opening beside the stairs',
            measure: sloped,
            holds: 'at most' as const,
          },
          {
            limit: STAIR_LIMITS.stairTriangle,
            what: 'the opening under the rail beside the stairs',
            measure: Math.max(...stairs.map(({ triangle }) => triangle)),
            holds: 'at most' as const,
          },
        ]),
    ...guard.openings.map(({ stairs: lower, level, clear }) => ({
      limit: STAIR_LIMITS.guardOpening,
      what: `the opening between ${markOf(guard, level)} and ${markOf(guard, lower)}`,
      measure: clear,
      holds: 'at most' as const,
    })),
    ...(stairs.length === 0
      ? []
      : [
          {
            limit: STAIR_LIMITS.stairGuardHeight,
            what: 'the guard beside the stairs',
            measure: height,
            holds: 'at least' as const,
          },
        ]),
  ]
}

function markOf({ members }: GuardPlan, post: string): string {
  return members.find(({ id }) => id === post)?.mark ?? post
}

/** Bays beside stairs have a limit of their own, and so are told apart from the level ones. */
function openings({ stretches, stairs, openings: beside }: GuardPlan): string {
  const mostOf = (clear: readonly number[]): string =>
    printLength(ticks(Math.ceil(Math.max(0, ...clear) / 2) * 2))
  const most = (bays: readonly { readonly opening: number }[]): string =>
    mostOf(bays.map(({ opening }) => opening))
  const level = stretches.flatMap(({ bays }) => bays)
  const sloped = stairs.flatMap(({ bays }) => bays)
  const { value, source } = STAIR_LIMITS.stairGuardOpening
  return [
    ...(level.length === 0
      ? []
      : [`openings of ${most(level)} at most (${STAIR_LIMITS.guardOpening.source.clause})`]),
    ...(sloped.length === 0
      ? []
      : [
          `openings beside the stairs of ${most(sloped)} at most, where ${printLength(inches(value))} may be (${source.clause})`,
        ]),
    ...(beside.length === 0
      ? []
      : [
          `${mostOf(beside.map(({ clear }) => clear))} at most from a post of the stairs to what stands next to it`,
        ]),
  ].join(', ')
}

/** Posts of the guard and how they are held: AWC DCA 6, and by statics and bending beside it. */
function checkGuardPosts(job: Job, guard: GuardPlan): Check {
  const { postSize, fixing, height } = job.guard
  const section = sectionOf(postSize)
  const joist = sectionOf(job.frame.joists.size)
  const held = fixing === 'hold-downs'
  const deep = job.frame.joists.size !== '2x6'
  const rules = plainRules([
    {
      limit: DCA_LIMITS.guardPostSize,
      what: 'a guard post',
      measure: section.thickness,
      holds: 'at least',
    },
    {
      limit: DCA_LIMITS.guardPostSpacing,
      what: 'the distance between two posts',
      measure: widestSpacing(guard),
      holds: 'at most',
    },
  ])
  const capacity = job.guard.holdDown
  const below = toInches(sectionOf(job.decking.size).thickness + UPPER_BOLT)
  // the lower bolt holds the foot at every post; a block tight behind some of them only helps
  const arm = toInches(joist.depth - 2 * UPPER_BOLT)
  const pull = guardPostPull(IRC_LIMITS.guardLoad.value, toInches(height), below, arm)
  const tied: Finding = byLimit(
    DCA_LIMITS.guardHoldDown,
    { value: capacity, unit: 'lb' },
    { value: DCA_LIMITS.guardHoldDown.value, unit: 'lb' },
    [`One hold-down of ${capacity} lb at each post`],
  )
  const broken = rules.broken.length > 0
  const loose = broken ? '' : unheld(guard)
  // the guide's hold-down is for guards of 36 in: what a higher one pulls counts as reckoned
  const reckoned = held && deep && loose === '' ? postUnderLoad(job, pull, capacity, { below, arm }) : null
  return judge(job, {
    id: 'guard-posts',
    title: 'Guard posts',
    subjects: guard.members.filter(({ role }) => role === 'guard post').map(({ id }) => id),
    // how posts are held hangs on where they stand: no size of the frame mends it
    fields: [
      'guard.postSize',
      'guard.postSpacing',
      ...(loose === ''
        ? (['guard.fixing', 'guard.holdDown', 'guard.height', 'frame.joists.size'] as const)
        : []),
    ],
    prescriptive: broken
      ? rules.deciding
      : reckoned !== null && (reckoned.ratio ?? 0) <= 1
        ? { ...tied, ratio: null }
        : null,
    calculated: broken ? null : reckoned,
    beside: [...rules.beside, ...(broken || rules.deciding === null ? [] : [rules.deciding])],
    good: () =>
      `${guard.deckPosts} posts of ${postSize}, ${printLength(ticks(Math.ceil(widestSpacing(guard))))} apart at most, held into the joists; ${Math.ceil(pull)} lb at the upper bolt by statics, the post turning about the lower one.`,
    bad: broken
      ? `${rules.broken.map(({ what, limit, holds }) => `${what} is not ${holds} ${limit.value} in`).join('; ')}.`
      : `A push of ${IRC_LIMITS.guardLoad.value} lb at the top pulls ${Math.ceil(pull)} lb at the upper bolt, where the hold-down bears ${capacity} lb, or bends the post too far.`,
    uncovered:
      loose !== ''
        ? loose
        : deep
          ? 'Posts bolted to the rim alone are covered by no table'
          : 'AWC DCA 6 fixes no guard to 2x6 joists',
    whenUncovered:
      loose !== ''
        ? LOOSE
        : deep
          ? 'Hold the posts by hold-downs into the joists; a licensed designer may allow other ways.'
          : 'Use joists of 2x8 or deeper.',
    remedy: broken
      ? 'Set the posts closer, or choose a thicker post.'
      : 'State a hold-down that is listed for more, lower the guard, deepen the joists or choose a thicker post.',
    caution: [
      rules.unread,
      'R507.10: the load of a post must reach more than one joist, and no post is notched where it meets the deck.',
      guard.stairPosts > 0
        ? `Posts beside the stairs are bolted to the stringers, with a block${job.guard.fixing === 'hold-downs' ? ' and a hold-down' : ''} behind each: that is not in the tables.`
        : '',
      held && capacity > DCA_LIMITS.guardHoldDown.value
        ? `The hold-down is stated to be listed for ${capacity} lb: see on its sheet for which wood, and which bolt, washers and nails it asks for.`
        : '',
    ]
      .filter((text) => text !== '')
      .join(' '),
  })
}

const LOOSE =
  'Outside prescriptive scope: move these posts by their spacing, or have a licensed designer say how each is held to more than one joist.'

/** Posts that stand in wood, behind which fewer blocks stand than reach two joists, and whose bolts go through a joint; empty where there are none. */
function unheld({ stretches, members, backing }: GuardPlan): string {
  const posts = stretches.flatMap((stretch) => stretch.posts)
  const marks = (own: typeof posts) =>
    own.map(({ id }) => members.find((one) => one.id === id)?.mark ?? id).join(', ')
  const bare = posts.filter((post) => !isBacked(post, backing))
  const jointed = posts.filter(({ atJoint }) => atJoint === true)
  const inside = posts.filter(({ inWood }) => inWood === true)
  return [
    ...(inside.length === 0
      ? []
      : [`${marks(inside)} would stand in a joist or in another post, for no place beside it is left`]),
    ...(bare.length === 0 ? [] : [`No room for all blocks tight behind ${marks(bare)}`]),
    ...(jointed.length === 0
      ? []
      : [`The board is jointed where ${marks(jointed)} would be bolted through it`]),
  ].join('; ')
}

function widestSpacing({ stretches }: GuardPlan): number {
  const gaps = stretches.flatMap(({ posts }) => posts.slice(1).map(({ at }, i) => at - (posts[i]?.at ?? at)))
  return Math.max(0, ...gaps)
}

/** Pull at the upper bolt by statics, and bending of the post at the deck's surface. NDS 2018 3.3, CD 1.0. */
function postUnderLoad(
  job: Job,
  pull: number,
  capacity: number,
  { below, arm }: { readonly below: number; readonly arm: number },
): Finding {
  const { postSize, height } = job.guard
  const { species, treatment } = job.frame
  const values = adjustedValues(postSize, species, {
    wet: true,
    incised: treatment === 'treated' && isIncised(species),
    duration: 1,
    repetitive: 1,
  })
  const load = IRC_LIMITS.guardLoad.value
  const { breadth, depth } = rectangleOf(postSize)
  // pushed square to the rim, a 4x6 bends about its weaker axis where its narrow side faces out: the safer one
  const bent = { breadth: Math.max(breadth, depth), depth: Math.min(breadth, depth) }
  const moment = guardPostMoment(load, toInches(height))
  return byCalculation(
    [
      {
        name: 'Pull at the upper bolt',
        clause: 'statics',
        demand: { value: pull, unit: 'lb' },
        capacity: { value: capacity, unit: 'lb' },
        steps: [
          `P (h + t) ÷ arm + P = ${load} × (${toInches(height)} + ${below}) ÷ ${arm} + ${load} = ${pull.toFixed(0)} lb`,
        ],
      },
      {
        name: 'Bending of the post',
        clause: '3.3',
        demand: { value: bendingStress(moment, bent), unit: 'psi' },
        capacity: { value: values.bending, unit: 'psi' },
        steps: [values.steps.bending, `M = P h = ${load} × ${toInches(height)} = ${moment} in-lb`],
      },
    ],
    values.source,
    [`${load} lb at the top of the guard (IRC 2021 Table R301.5)`],
  )
}

/** Every rule for a guard as it is built; none where none is counted, or where no edge asks for one. */
export function checkGuardBuilt(
  job: Job,
  guard: GuardPlan | null,
  stairs: readonly StairPlan[],
): readonly Check[] {
  if (guard === null || guard.levelLength + guard.slopedLength === 0) return []
  return [checkGuardMake(job, guard, stairs), checkGuardPosts(job, guard)]
}
