import { IRC_LIMITS } from '../data/index.ts'
import { stairsOf } from '../job/index.ts'
import { figure } from '../rules/index.ts'
import { inches } from '../units/index.ts'
import type { CheckContext } from './context.ts'
import { byLimit, length } from './finding.ts'
import { judge } from './judge.ts'
import type { BeamFacts } from './measures.ts'
import { postReaction } from './post-reaction.ts'
import type { Check } from './types.ts'
import { beamName, feetInches } from './words.ts'

/**
 * Base and cap of the posts: a stand-off over the concrete, IRC 2021 R317.1.4, and metal that holds both ends in their
 * places. Its strength is in its maker's listing: the load is told.
 */
export function checkPostEnds(context: CheckContext): readonly Check[] {
  return context.beams.filter((facts) => facts.posts.length > 0).map((facts) => checkOne(context, facts))
}

function checkOne(context: CheckContext, facts: BeamFacts): Check {
  const { job } = context
  const { key } = facts.beam
  const least = inches(IRC_LIMITS.postStandoff.value)
  const reactions = facts.posts.map(({ id }) => postReaction(context, id))
  const load = Math.max(0, ...reactions.map((one) => one ?? 0))
  // what stairs bring is reckoned with the stairs: a base is not to be chosen by the deck's load alone
  const stairs = stairsOf(job).length > 0 ? '; where stairs hang, for what the load of the stairs says' : ''
  const told = reactions.includes(null)
    ? ''
    : ` Base and cap: listed for ${figure(Math.ceil(load))} lb or more${stairs}.`
  const found = byLimit(IRC_LIMITS.postStandoff, length(least), length(job.ground.standoff), [
    `Stand-off of the post base: ${feetInches(job.ground.standoff)}; ${feetInches(least)} keeps the wood off wet concrete`,
    `Greatest reaction of the ${beamName(facts.beam)}, and of what else bears there, on a post: ${figure(Math.ceil(load))} lb${stairs === '' ? '' : ', the stairs not in it'}`,
    'A base with its anchor bolt and a cap, or a pair of plates, on every post: counted in the takeoff',
  ])
  return judge(job, {
    id: `post-ends-${key}`,
    title: 'Post bases and caps',
    subjects: facts.posts.map(({ id }) => id),
    fields: ['ground.standoff'],
    // a base is made with the stand-off that the rule asks for: being at it is not being near a limit
    prescriptive: found.ratio === 1 ? { ...found, ratio: null } : found,
    calculated: null,
    good: () =>
      `Posts under the ${beamName(facts.beam)} stand ${feetInches(job.ground.standoff)} over the concrete.${told}`,
    bad: `Posts under the ${beamName(facts.beam)} stand ${feetInches(job.ground.standoff)} over the concrete; ${feetInches(least)} is needed.`,
    uncovered: '',
    remedy: `Use bases with a stand-off of ${feetInches(least)}.`,
    caution: '',
    listings: reactions.includes(null) ? [] : [{ of: 'post base or cap', pounds: Math.ceil(load) }],
  })
}
