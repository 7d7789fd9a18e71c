import { type Check, checksWith, checkWood } from '../checks/index.ts'
import { frameJob } from '../design.ts'
import type { Design } from '../estimate-types.ts'
import type { Fault, Job } from '../job/index.ts'
import { layAdditions } from '../lay-additions.ts'
import { printLength, ticks } from '../units/index.ts'
import { failingIn } from './by-calculation.ts'
import { footingKey, postTakesBeams, tubeTakesPost } from './catalogue.ts'
import { withChoice } from './choice.ts'
import type {
  BeamChoice,
  Catalogue,
  Choice,
  FootingChoice,
  JoistChoice,
  SizedPart,
  SizingBasis,
  SizingReason,
} from './types.ts'

/** What governs each part of a choice, and what speaks against the next smaller ones, each tried by itself. */
export function reasonsFor(
  job: Job,
  choice: Choice,
  design: Design,
  catalogue: Catalogue,
  basis: SizingBasis,
): readonly SizingReason[] {
  const sides = choice.rear === null ? (['front'] as const) : (['front', 'rear'] as const)
  return [
    reason('joists', joistText(choice.joist), smallerJoists(choice, catalogue)),
    ...sides.map((side) => {
      const beam = choice[side]
      if (beam === null) throw new Error(`no ${side} beam`)
      return reason(`${side} beam`, beamText(beam), smallerBeams(side, beam, choice, catalogue))
    }),
    reason('posts', `${choice.postSize} posts`, smallerPosts(choice, catalogue)),
    reason('footings', footingText(choice.footing), smallerFootings(choice, catalogue)),
  ]

  function reason(part: SizedPart, chosen: string, smaller: readonly Option[]): SizingReason {
    return {
      part,
      chosen,
      governs: governing(design.checks.filter((check) => partOf(check) === part)),
      smaller: smaller.map(({ text, choice: other }) => ({ option: text, why: against(job, other, basis) })),
    }
  }
}

interface Option {
  readonly text: string
  readonly choice: Choice
}

/** The check with the greatest share of its limit. */
function governing(checks: readonly Check[]): SizingReason['governs'] {
  let found: SizingReason['governs'] = null
  for (const check of checks) {
    const finding = check.governing
    if (finding === null || finding.ratio === null) continue
    if (found === null || finding.ratio > (found.finding.ratio ?? 0)) found = { check, finding }
  }
  return found
}

/** The part that a check speaks of, by its name. */
function partOf({ id }: Check): SizedPart | null {
  if (id === 'decking-span' || id === 'dead-load' || /^(joist|ledger)-/.test(id)) return 'joists'
  if (/^beam-.*-front$/.test(id)) return 'front beam'
  if (/^beam-.*-rear$/.test(id)) return 'rear beam'
  if (id.startsWith('post-height-')) return 'posts'
  if (/^footing-(size|thickness)-/.test(id)) return 'footings'
  return null
}

/** What fails with another choice, or that it is no cheaper. */
function against(job: Job, choice: Choice, basis: SizingBasis): string {
  if (!postTakesBeams(job, choice)) return 'A beam on it would be wider than the post.'
  if (!tubeTakesPost(choice.footing.tube, choice.postSize))
    return 'The tube is too narrow for the post’s base.'
  const framed = frameJob(withChoice(job, choice))
  if (!framed.ok) return faulty(framed.error)
  const { job: other, layout, frame } = framed.value
  const wood = checkWood(other, layout, frame)
  const inWood = failingIn(basis, { ...framed.value, checks: wood.checks.flat() })
  if (inWood.length > 0) return worstOf(inWood)
  const laid = layAdditions(other, layout, frame)
  if (!laid.ok) return faulty(laid.error)
  return worstOf(failingIn(basis, { ...framed.value, checks: checksWith(wood, laid.value) }))
}

function worstOf(failing: readonly Check[]): string {
  const worst = failing.reduce<Check | null>(
    (a, b) => (a === null || (b.governing?.ratio ?? 0) > (a.governing?.ratio ?? 0) ? b : a),
    null,
  )
  return worst?.message ?? 'It would pass, and the deck would cost no less.'
}

function faulty([first]: readonly Fault[]): string {
  return sentence(first?.message ?? 'it cannot be framed')
}

function sentence(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`
}

function smallerJoists(choice: Choice, { joists }: Catalogue): readonly Option[] {
  const { size, spacing } = choice.joist
  const sizes = [...new Set(joists.map((one) => one.size))].filter((one) => depthOf(one) < depthOf(size))
  const spacings = [...new Set(joists.map((one) => one.spacing))].filter((one) => one > spacing)
  const options: JoistChoice[] = [
    ...sizes
      .sort((a, b) => depthOf(b) - depthOf(a))
      .slice(0, 1)
      .map((one) => ({ size: one, spacing })),
    ...spacings
      .sort((a, b) => a - b)
      .slice(0, 1)
      .map((one) => ({ size, spacing: one })),
  ]
  return options.map((joist) => ({ text: joistText(joist), choice: { ...choice, joist } }))
}

function smallerBeams(
  side: 'front' | 'rear',
  beam: BeamChoice,
  choice: Choice,
  catalogue: Catalogue,
): readonly Option[] {
  const all: readonly (BeamChoice | null)[] = catalogue[side]
  const known = all.filter((one) => one !== null)
  const next = (smaller: (one: BeamChoice) => boolean, rank: (one: BeamChoice) => number) =>
    known
      .filter(smaller)
      .sort((a, b) => rank(b) - rank(a))
      .slice(0, 1)
  const same =
    (...keys: readonly (keyof BeamChoice)[]) =>
    (one: BeamChoice) =>
      keys.every((key) => one[key] === beam[key])
  const options = [
    ...next(
      (one) => same('plies', 'posts')(one) && depthOf(one.size) < depthOf(beam.size),
      (one) => depthOf(one.size),
    ),
    ...next(
      (one) => same('size', 'posts')(one) && one.plies < beam.plies,
      (one) => one.plies,
    ),
    ...next(
      (one) => same('size', 'plies')(one) && one.posts < beam.posts,
      (one) => one.posts,
    ),
  ]
  return options.map((one) => ({ text: beamText(one), choice: { ...choice, [side]: one } }))
}

function smallerPosts(choice: Choice, { postSizes }: Catalogue): readonly Option[] {
  const rank = ['4x4', '4x6', '6x6', '8x8']
  return postSizes
    .filter((size) => rank.indexOf(size) < rank.indexOf(choice.postSize))
    .sort((a, b) => rank.indexOf(b) - rank.indexOf(a))
    .slice(0, 1)
    .map((postSize) => ({ text: `${postSize} posts`, choice: { ...choice, postSize } }))
}

function smallerFootings(choice: Choice, { footings }: Catalogue): readonly Option[] {
  const { footing } = choice
  const wide = (one: FootingChoice) => Math.max(one.base, one.tube)
  const best = (smaller: (one: FootingChoice) => boolean, rank: (one: FootingChoice) => number) =>
    footings
      .filter((one) => footingKey(one) !== footingKey(footing) && smaller(one))
      .sort((a, b) => rank(b) - rank(a) || a.thickness - b.thickness)
      .slice(0, 1)
  const options = [
    ...best(
      (one) => one.tube === footing.tube && wide(one) < wide(footing) && one.thickness >= footing.thickness,
      wide,
    ),
    ...best(
      (one) => one.tube === footing.tube && one.base === footing.base && one.thickness < footing.thickness,
      (one) => one.thickness,
    ),
  ]
  return options.map((one) => ({ text: footingText(one), choice: { ...choice, footing: one } }))
}

function depthOf(size: string): number {
  return Number(size.split('x')[1])
}

export function joistText({ size, spacing }: JoistChoice): string {
  return `${size} at ${printLength(spacing)}`
}

export function beamText({ size, plies, posts }: BeamChoice): string {
  return `${plies}-${size} on ${posts} posts`
}

export function footingText({ tube, base, thickness }: FootingChoice): string {
  const on =
    base === ticks(0) ? 'no base' : `a base ${printLength(base)} across and ${printLength(thickness)} thick`
  return `${printLength(tube)} tubes, ${on}`
}
