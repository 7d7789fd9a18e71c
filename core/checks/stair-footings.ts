import { IRC_LIMITS, sectionOf } from '../data/index.ts'
import type { Job } from '../job/index.ts'
import { type TableLookup, tabledFootingDiameter } from '../rules/index.ts'
import type { StairPlan } from '../stairs/index.ts'
import { inches, ticks } from '../units/index.ts'
import type { CheckContext } from './context.ts'
import { atLeast, atMost, byLimit, length, worse } from './finding.ts'
import { byTributaryArea, toWholeInch, widthOf } from './footing-load.ts'
import { judge } from './judge.ts'
import { allowedHeight, asColumn } from './post-height.ts'
import { type Bearing, bearingOf } from './soil.ts'
import { type LoadedStairFooting, loadedStairFootings } from './stair-footing-loads.ts'
import { underTables } from './tables.ts'
import { thicknessFindings } from './thickness-findings.ts'
import type { Check, Finding } from './types.ts'
import { feetInches, squareFeetText } from './words.ts'

/** sq ft: the smallest row of IRC 2021 Table R507.3.1. */
const SMALL_AREA = 5

/** What a footing bears in all, sq ft. */
interface Borne extends LoadedStairFooting {
  readonly area: number
}

/** Footings under a landing or under stringers, by the same rules as the deck's; none where the stairs stand on a pad. */
export function checkStairFootings(context: CheckContext, stairs: StairPlan): readonly Check[] {
  const all = loadedStairFootings(stairs).map(
    (one): Borne => ({ ...one, area: one.ofLanding + one.ofFlights }),
  )
  if (all.length === 0) return []
  // all are made alike: the one that bears most decides
  const most = all.reduce((a, b) => (b.area > a.area ? b : a))
  return [
    checkSize(context, all, most),
    checkThickness(context, all, most),
    checkDepth(context, all),
    ...checkPosts(context, all),
  ]
}

function checkSize(context: CheckContext, all: readonly Borne[], most: Borne): Check {
  const bearing = bearingOf(context.job)
  const width = widthOf(most.footing)
  const prescriptive = byTable(context, most, bearing)
  const calculated = byTributaryArea(context, most, bearing)
  const needed = feetInches(toWholeInch(Math.max(prescriptive?.demand.value ?? 0, calculated.demand.value)))
  const told = `Footings under the ${under(all)} are ${feetInches(width)} across; ${needed} is needed.`
  return judge(context.job, {
    id: 'stair-footing-size',
    title: 'Footing size under stairs',
    subjects: all.map(({ footing }) => footing.id),
    fields: ['ground.base', 'ground.tube', 'site.soil', 'site.soilBearing'],
    prescriptive,
    paged: tabled(context, most, bearing).paged,
    calculated: { ...calculated, steps: [...areaSteps(most), ...calculated.steps] },
    good: () => told,
    bad: told,
    uncovered: `No table row covers a footing under ${squareFeetText(most.area)} of stairs at ${context.load} psf on ${bearing.psf} psf`,
    remedy:
      under(all) === 'landing' ? `Make the bases at least ${needed} across.` : `Use tubes of ${needed}.`,
    caution: bearing.caution,
  })
}

/** The rows for larger areas ask for 14 in at least, as those of 2018 did; the one of 5 sq ft is of 2021. */
function byTable(context: CheckContext, most: Borne, bearing: Bearing): Finding | null {
  const width = widthOf(most.footing)
  const steps = [...areaSteps(most), bearing.says]
  if (most.area <= SMALL_AREA && context.load <= 40 && context.noTables === null) {
    const least = inches(IRC_LIMITS.smallFooting.value)
    return byLimit(IRC_LIMITS.smallFooting, length(least), length(width), steps)
  }
  const lookup = tabled(context, most, bearing)
  return atLeast(lookup, width, [...steps, lookup.sentence])
}

function tabled(context: CheckContext, { area }: Borne, { psf }: Bearing): TableLookup {
  return underTables(context, tabledFootingDiameter(area, psf, context.load))
}

function checkThickness(context: CheckContext, all: readonly Borne[], most: Borne): Check {
  const { thickness, prescriptive, calculated, paged, least } = thicknessFindings(
    context,
    most.footing,
    most.area,
    areaSteps(most),
  )
  const told = `Footings under the ${under(all)} are ${feetInches(thickness)} thick`
  return judge(context.job, {
    id: 'stair-footing-thickness',
    title: 'Footing thickness under stairs',
    subjects: all.map(({ footing }) => footing.id),
    fields: ['ground.baseThickness', 'ground.base', 'ground.tube', 'site.soilBearing'],
    prescriptive,
    calculated,
    paged,
    good: () => `${told}; ${least} is enough.`,
    bad: `${told}; ${least} is needed.`,
    uncovered: `No table row covers the thickness of a footing under ${squareFeetText(most.area)} of stairs at ${context.load} psf`,
    remedy: `Make the bases at least ${least} thick.`,
    caution: '',
  })
}

function checkDepth({ job }: CheckContext, all: readonly Borne[]): Check {
  const least = inches(IRC_LIMITS.footingDepth.value)
  const needed = ticks(Math.max(least, job.site.frostDepth))
  const shallowest = ticks(Math.min(...all.map(({ footing }) => footing.depth)))
  const found = byLimit(IRC_LIMITS.footingDepth, length(needed), length(shallowest), [
    `Frost depth ${feetInches(job.site.frostDepth)}${job.site.frostStated ? '' : ', taken as in a very cold place, as it is not known'}; never less than ${feetInches(least)}`,
    `Bottom of the shallowest footing of the stairs under the ground at it: ${feetInches(shallowest)}`,
  ])
  const told = `Footings under the ${under(all)} reach ${feetInches(shallowest)} down`
  return judge(job, {
    id: 'stair-footing-depth',
    title: 'Footing depth under stairs',
    subjects: all.map(({ footing }) => footing.id),
    fields: ['site.frostDepth', 'site.frostSource'],
    // they are dug to the depth that the rule asks for: being at it is not being near a limit
    prescriptive: found.ratio === 1 ? { ...found, ratio: null } : found,
    calculated: null,
    good: () => `${told}, to the frost depth or below.`,
    bad: `${told}; ${feetInches(needed)} is needed.`,
    uncovered: 'No rule covers the depth of the footings under stairs',
    remedy: `Dig to ${feetInches(needed)}.`,
    caution: '',
  })
}

/** Posts of a landing by the code's table, and as columns under what they bear. */
function checkPosts(context: CheckContext, all: readonly Borne[]): readonly Check[] {
  const { job, load } = context
  const { postSize } = job.frame
  const posts = all.flatMap(({ post, ...borne }) => (post === null ? [] : [{ post, ...borne }]))
  if (posts.length === 0) return []
  const heightOf = (post: { readonly length: number }) => ticks(post.length + job.ground.standoff)
  const byTable = posts.map(({ post, area }) => {
    const lookup = allowedHeight(context, postSize, area)
    return atMost(lookup, heightOf(post), [
      `Height of post ${post.mark}, top of the footing to the underside of the beam: ${feetInches(heightOf(post))}`,
      `It bears ${squareFeetText(area)}`,
      lookup.sentence,
    ])
  })
  const calculated = posts
    .map(({ post, area, ...borne }) => {
      const pounds = area * (load + job.site.deadLoad)
      const says = `Post ${post.mark}: ${squareFeetText(area)} × ${load + job.site.deadLoad} psf = ${pounds.toFixed(0)} lb`
      return asColumn(context, post.length, pounds, says, offMiddle(job, { ...borne, area }))
    })
    .reduce<Finding | null>(worse, null)
  const tallest = ticks(Math.max(...posts.map(({ post }) => heightOf(post))))
  return [
    judge(job, {
      id: 'stair-post-height',
      title: 'Height of the landing’s posts',
      subjects: posts.map(({ post }) => post.id),
      fields: ['size.height', 'site.ground', 'frame.postSize', 'stairs.kind'],
      // the table knows no load beside a post’s middle: its row counts where the post bears that
      prescriptive:
        byTable.some((one) => one === null) || (calculated?.ratio ?? 0) > 1
          ? null
          : byTable.reduce(worse, null),
      paged: allowedHeight(context, postSize, 0).paged,
      calculated,
      good: (share) => `Posts under the landing use ${share} of what they may.`,
      bad: `A post under the landing stands ${feetInches(tallest)}; ${postSize} may not.`,
      uncovered: `No table row covers ${postSize} posts under the landing at ${load} psf`,
      remedy: 'Use larger posts.',
      caution: '',
    }),
  ]
}

/**
 * From a post's middle to that of all it bears, both on one side, which is the safer: a header lies on its face, and a
 * beam that is flush with that face stands beside its middle.
 */
function offMiddle(
  { frame }: Job,
  { area, ofLanding, onHeader, beamOff }: Omit<Borne, 'footing' | 'post'>,
): number {
  const header = sectionOf(frame.postSize).depth / 2 + sectionOf(frame.joists.size).thickness / 2
  return area === 0 ? 0 : (ofLanding * beamOff + onHeader * header) / area
}

function areaSteps({ ofLanding, ofFlights, area }: Borne): readonly string[] {
  return [
    ofLanding > 0
      ? `The footing that bears most: ${squareFeetText(ofLanding)} of the landing and ${squareFeetText(ofFlights)} of flights, half of each that meets it: ${squareFeetText(area)}`
      : `Under each stringer: half of its flight, as wide as stringers stand apart: ${squareFeetText(area)}`,
  ]
}

function under(all: readonly Borne[]): string {
  return all.some(({ post }) => post !== null) ? 'landing' : 'stringers'
}
