import { dressedSizes, IRC_LIMITS, type LumberSize } from '../data/index.ts'
import {
  areaOf,
  columnStability,
  eccentricCapacity,
  guidePostHeight,
  rectangleOf,
  type TableLookup,
  tabledPostHeight,
} from '../rules/index.ts'
import { inches, type Ticks, ticks, toInches } from '../units/index.ts'
import { byCalculation, type Limit } from './calculated.ts'
import type { CheckContext } from './context.ts'
import { beside, guideCaution } from './deck-guide.ts'
import { atMost, byLimit, length, worse } from './finding.ts'
import { judge } from './judge.ts'
import { valuesOf } from './load-path.ts'
import type { BeamFacts } from './measures.ts'
import { postReaction } from './post-reaction.ts'
import { underTables } from './tables.ts'
import type { Check, Finding } from './types.ts'
import { beamName, feetInches, SPECIES_NAME, squareFeetText } from './words.ts'

/** Height of the posts, footing's top to the beam's underside, against IRC 2021 Table R507.4, beam by beam. */
export function checkPostHeights(context: CheckContext): readonly Check[] {
  return context.beams.filter((facts) => facts.posts.length > 0).map((facts) => checkOne(context, facts))
}

function checkOne(context: CheckContext, facts: BeamFacts): Check {
  const { job } = context
  const { postSize, species } = job.frame
  const tallest = ticks(Math.max(...facts.posts.map((post) => post.length)) + job.ground.standoff)
  const { beam, key } = facts.beam
  const guide = postSize === '6x6' ? byGuide(context, facts, tallest) : []
  return judge(job, {
    id: `post-height-${key}`,
    title: 'Post height',
    subjects: facts.posts.map((post) => post.id),
    fields: ['size.height', 'site.ground', 'frame.postSize', `frame.beams.${beam}.posts`],
    prescriptive: byTable(context, facts, tallest),
    paged: allowedHeight(context, postSize, 0).paged,
    calculated: calculate(context, facts),
    beside: guide,
    good: (share) => `Posts under the ${beamName(facts.beam)} use ${share} of what they may.`,
    bad: `A post under the ${beamName(facts.beam)} stands ${feetInches(tallest)}; ${postSize} may not.`,
    uncovered: `No table row covers ${postSize} posts of ${SPECIES_NAME[species]} at ${context.load} psf and up to ${squareFeetText(Math.max(...facts.areas))}`,
    remedy: postSize === '8x8' ? 'Use more posts, or a lower deck.' : 'Use larger posts, or more of them.',
    caution: guideCaution(guide),
  })
}

/** The worst post by the table; where a post has no row, only the 14 ft that no post may pass. */
function byTable(context: CheckContext, facts: BeamFacts, tallest: Ticks): Finding | null {
  const { postSize } = context.job.frame
  const findings = facts.posts.map((post, i) => {
    const height = ticks(post.length + context.job.ground.standoff)
    const area = facts.areas[i] ?? 0
    const lookup = allowedHeight(context, postSize, area)
    return atMost(lookup, height, [
      `Height of post ${post.number}, top of the footing to the underside of the beam: ${feetInches(height)}`,
      `Tributary area: ${squareFeetText(area)}`,
      lookup.sentence,
    ])
  })
  if (findings.every((one) => one !== null)) return findings.reduce<Finding | null>(worse, null)
  const cap = inches(IRC_LIMITS.postHeightCap.value)
  if (tallest <= cap) return null
  return byLimit(IRC_LIMITS.postHeightCap, length(tallest), length(cap), [
    `Tallest post: ${feetInches(tallest)}`,
  ])
}

/** AWC DCA 6 Table 4, which knows 6x6 posts by beam and joist span. */
function byGuide(context: CheckContext, facts: BeamFacts, tallest: Ticks): readonly Finding[] {
  const span = ticks(Math.max(0, ...facts.spans))
  return beside(context, guidePostHeight(span, facts.joistSpan, context.job.frame.species), (found) =>
    atMost(found, tallest, [`Tallest post: ${feetInches(tallest)}`, found.sentence]),
  )
}

/** How high a post of a size may stand by the code's table. */
export function allowedHeight(context: CheckContext, size: LumberSize, area: number): TableLookup {
  return underTables(context, tabledPostHeight(size, area, context.job.frame.species, context.spanLoad))
}

/** Each post under the greatest reaction of all that stands on it. NDS 2018 3.6 and 3.7. */
function calculate(context: CheckContext, facts: BeamFacts): Finding | null {
  if (!context.path.beams.some((one) => one.facts === facts)) return null
  return facts.posts
    .map((post) => {
      const load = Math.max(0, postReaction(context, post.id) ?? 0)
      return asColumn(
        context,
        post.length,
        load,
        `Post ${post.number}: ${load.toFixed(0)} lb, the greatest reaction on it`,
      )
    })
    .reduce<Finding | null>(worse, null)
}

/**
 * One post as a column, pinned at both ends, under a load in lb.
 * @param off from the post's middle to the load, ticks; NDS 2018 15.4.1 where it is not on it
 */
export function asColumn(context: CheckContext, length: Ticks, load: number, says: string, off = 0): Finding {
  const { postSize } = context.job.frame
  const values = valuesOf(context, postSize, 1)
  const slenderness = Math.max(0, toInches(length)) / toInches(dressedSizes[postSize].thickness)
  const stability = columnStability(slenderness, values.leastModulus, values.compression)
  const area = areaOf(rectangleOf(postSize))
  const column: Limit = {
    name: 'Column',
    clause: '3.7.1',
    demand: { value: load, unit: 'lb' },
    capacity: { value: stability * values.compression * area, unit: 'lb' },
    steps: [values.steps.compression, says, `le/d = ${slenderness.toFixed(1)}, CP = ${stability.toFixed(3)}`],
  }
  if (off === 0) return byCalculation([column], values.source)
  const depth = toInches(dressedSizes[postSize].depth)
  const stress = eccentricCapacity({
    compression: stability * values.compression,
    bending: values.bending,
    leastModulus: values.leastModulus,
    slenderness,
    off: toInches(off) / depth,
  })
  const beside: Limit = {
    name: 'Column under a load beside its middle',
    clause: '15.4.1',
    demand: { value: load, unit: 'lb' },
    capacity: { value: stress * area, unit: 'lb' },
    steps: [
      values.steps.bending,
      `It bears ${toInches(off).toFixed(2)} in off the middle: 6 e/d = ${((6 * toInches(off)) / depth).toFixed(3)}; fc = ${stress.toFixed(1)} psi brings the sum of 15.4.1 to 1`,
    ],
  }
  return byCalculation([column, beside], values.source)
}
