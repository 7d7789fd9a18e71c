import { DCA_BRACING } from '../data/index.ts'
import { figure, kneeBraceForce } from '../rules/index.ts'
import { inches, toInches } from '../units/index.ts'
import type { CheckContext } from './context.ts'
import { judge } from './judge.ts'
import type { Check, Finding } from './types.ts'

/** A designer's drawing stands in place of a clause; what it asks is in the drawing. */
const designed: Finding = {
  method: 'prescriptive',
  document: 'Drawing',
  edition: 'as stated',
  clause: 'frame.bracing',
  demand: { value: 1, unit: 'count' },
  capacity: null,
  ratio: null,
  confidence: 'verified',
  lookup: 'stated in the job',
  steps: ['The job states that a licensed designer drew the bracing'],
}

/** Sideways push at a post for which the force in its brace is told, lb: a round figure, no load of any code. */
const PUSH = 100

const UNCOVERED: { readonly [bracing in 'none stated' | 'knee braces']: string } = {
  'none stated':
    'No table covers what holds a freestanding deck upright sideways, and the job states no bracing',
  'knee braces': 'No table says how many knee braces hold a freestanding deck upright sideways',
}

/**
 * What holds a freestanding deck upright sideways. No table of the code covers it, so only a designer's drawing passes;
 * knee braces are counted, and what the AWC deck guide asks for stands beside, deciding nothing.
 */
export function checkSidewaysStability(context: CheckContext): Check {
  const { job, frame } = context
  const { bracing } = job.frame
  const guide = byGuide(context)
  const braces = frame.members.filter(({ role }) => role === 'knee brace')
  const counted =
    braces.length > 0
      ? `${braces.length} knee braces are in the takeoff.`
      : bracing === 'knee braces'
        ? 'The posts are too short for knee braces: none is in the takeoff.'
        : 'Braces both ways at the end posts are usual.'
  return judge(job, {
    id: 'lateral-stability',
    title: 'Sideways stability',
    subjects: [...frame.posts, ...braces].map(({ id }) => id),
    fields: ['site.attachment', 'frame.bracing', 'site.windExposure'],
    prescriptive: bracing === 'designed' ? designed : null,
    calculated: null,
    beside: guide === null ? [] : [guide],
    good: () => 'Its bracing is as a licensed designer drew it, as the job states.',
    bad: '',
    uncovered: bracing === 'designed' ? '' : UNCOVERED[bracing],
    whenUncovered:
      'Outside prescriptive scope: have a licensed designer draw the bracing, or ask the building official for the one that is usual here.',
    remedy: '',
    caution:
      bracing === 'designed' ? 'Show the drawing with the permit; braces are not in the takeoff.' : counted,
  })
}

/** Braced end posts against those of the guide's figure, from memory; null where a designer drew the bracing. */
function byGuide({ job, frame }: CheckContext): Finding | null {
  if (job.frame.bracing === 'designed') return null
  const { from, leg, source } = DCA_BRACING
  const ends = new Set(
    frame.beams.flatMap(({ postIds }) => [postIds[0], postIds.at(-1)]).filter((id) => id !== undefined),
  )
  const along = frame.members.filter(({ id, role }) => role === 'knee brace' && id.includes('-along-'))
  const asked = job.size.height > inches(from) ? ends.size : 0
  const tallest = toInches(Math.max(0, ...frame.posts.map(({ length }) => length)) + job.ground.standoff)
  const { windExposure } = job.site
  return {
    method: 'prescriptive',
    document: source.document,
    edition: source.edition,
    clause: source.clause,
    demand: { value: asked, unit: 'count' },
    capacity: { value: along.length, unit: 'count' },
    ratio: null,
    confidence: source.confidence,
    lookup: `knee braces along the beam at its end posts, where the deck is higher than ${from} in`,
    steps: [
      `${ends.size} end posts; ${along.length} braced along their beam, ${along.length} across it`,
      `Each ${PUSH} lb that pushes sideways at a braced post ${figure(tallest, 1)} in tall puts ${figure(kneeBraceForce(PUSH, tallest, leg))} lb into its brace: push × height ÷ ${leg} in × √2`,
      windExposure === 'unknown'
        ? 'Wind exposure not known: a designer takes D, the most open'
        : `Wind exposure as stated: ${windExposure}`,
    ],
  }
}
