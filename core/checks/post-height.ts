import { IRC_LIMITS, type LumberSize } from '../data/index.ts'
import { type TableLookup, tabledPostHeight } from '../rules/index.ts'
import { inches, type Ticks, ticks } from '../units/index.ts'
import type { BeamFacts, CheckContext } from './context.ts'
import { atMost, byLimit, length, worse } from './finding.ts'
import { judge } from './judge.ts'
import { underTables } from './tables.ts'
import type { Check, Finding } from './types.ts'
import { feetInches, SPECIES_NAME, squareFeetText } from './words.ts'

/** Height of the posts, footing's top to the beam's underside, against IRC 2021 Table R507.4, beam by beam. */
export function checkPostHeights(context: CheckContext): readonly Check[] {
  return context.beams.filter((facts) => facts.posts.length > 0).map((facts) => checkOne(context, facts))
}

interface Standing {
  readonly height: Ticks
  readonly area: number
  readonly finding: Finding | null
}

function checkOne(context: CheckContext, facts: BeamFacts): Check {
  const { job } = context
  const { postSize, species } = job.frame
  const standing = facts.posts.map((post, i): Standing => {
    const height = ticks(post.length + job.ground.standoff)
    const area = facts.areas[i] ?? 0
    const lookup = allowed(context, postSize, area)
    const finding = atMost(lookup, height, [
      `Height of post ${post.number}, top of the footing to the underside of the beam: ${feetInches(height)}`,
      `Tributary area: ${squareFeetText(area)}`,
      lookup.sentence,
    ])
    return { height, area, finding }
  })
  const tallest = standing.reduce((a, b) => (b.height > a.height ? b : a))
  const covered = standing.every((one) => one.finding !== null)
  const cap = inches(IRC_LIMITS.postHeightCap.value)
  const tooTall = byLimit(IRC_LIMITS.postHeightCap, length(tallest.height), length(cap), [
    `Tallest post: ${feetInches(tallest.height)}`,
  ])
  const prescriptive = covered
    ? standing.reduce<Finding | null>((worst, one) => worse(worst, one.finding), null)
    : tallest.height > cap
      ? tooTall
      : null
  const { beam } = facts.beam
  return judge(job, {
    id: `post-height-${beam}`,
    title: 'Post height',
    subjects: facts.posts.map((post) => post.id),
    fields: ['size.height', 'site.ground', 'frame.postSize', `frame.beams.${beam}.posts`],
    prescriptive,
    calculated: null,
    good: (share) => `Posts under the ${beam} beam use ${share} of their height.`,
    bad: `A post under the ${beam} beam stands ${feetInches(tallest.height)}; ${postSize} may not.`,
    uncovered: `No table row covers ${postSize} posts of ${SPECIES_NAME[species]} at ${context.load} psf and up to ${squareFeetText(Math.max(...facts.areas))}`,
    remedy: postSize === '8x8' ? 'Use more posts, or a lower deck.' : 'Use larger posts, or more of them.',
    caution: '',
  })
}

function allowed(context: CheckContext, size: LumberSize, area: number): TableLookup {
  return underTables(context, tabledPostHeight(size, area, context.job.frame.species, context.spanLoad))
}
