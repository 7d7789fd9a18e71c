import type { Member } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import { governingLoad, spanTableLoad, tabledBeamSpan, tabledJoistSpan } from '../rules/index.ts'
import type { Platform } from '../stairs/index.ts'
import { printLength, toFeet } from '../units/index.ts'
import { atMost, worse } from './finding.ts'
import { judge } from './judge.ts'
import type { Check } from './types.ts'

/** Joists and beams of a landing against IRC 2021 Tables R507.6 and R507.5. */
export function checkLanding(job: Job, platform: Platform, members: readonly Member[]): Check {
  const { species, joists } = job.frame
  const load = spanTableLoad(job.site.liveLoad, job.site.snowLoad)
  const joist = atMost(tabledJoistSpan(joists.size, joists.spacing, species, load), platform.joistSpan, [
    `Joists of the landing, clear: ${printLength(platform.joistSpan)}`,
  ])
  const beam = atMost(tabledBeamSpan(joists.size, 2, platform.depth, species, load), platform.beamSpan, [
    `Beams of the landing, two plies of ${joists.size}, post to post: ${printLength(platform.beamSpan)}`,
  ])
  const deciding = joist === null || beam === null ? null : worse(joist, beam)
  return judge(job, {
    id: 'stair-landing',
    title: 'Landing',
    subjects: [],
    fields: ['stairs.landingDepth', 'stairs.width', 'frame.joists.size'],
    prescriptive: deciding,
    calculated: null,
    beside: [joist, beam].flatMap((one) => (one === null || one === deciding ? [] : [one])),
    good: (share) => `Joists and beams of the landing use ${share} of their span.`,
    bad: `The landing, ${printLength(platform.width)} by ${printLength(platform.depth)}, spans too far.`,
    uncovered: 'No table row covers the landing’s joists and beams',
    remedy: 'Make the landing smaller, or the joists deeper.',
    caution: `A flight of stairs bears on its edge and is not in the tables. ${bracedWords(members)} Angles at the ends of its outermost joists: listed for ${endLoad(job, platform)} lb or more.`,
  })
}

/** What keeps it from swaying on its posts, which no table has. */
function bracedWords(members: readonly Member[]): string {
  const braces = members.filter(({ role }) => role === 'landing brace').map(({ mark }) => mark)
  return braces.length === 0
    ? 'Its posts are too short for braces, and nothing reckons what keeps it from swaying: see that the flights hold it, or ask a designer.'
    : `Its braces, ${braces.join(', ')}, are common practice: no table has them and nothing reckons them.`
}

/** lb at one end of an outermost joist: half a spacing of the landing over half of its depth. */
function endLoad({ site, frame }: Job, { depth }: Platform): number {
  const area = toFeet(frame.joists.spacing / 2) * toFeet(depth / 2)
  return Math.ceil((governingLoad(site.liveLoad, site.snowLoad) + site.deadLoad) * area)
}
