import { printInches } from '../../units/index.ts'
import { hangersThere, joistsAtHipEnd } from '../build/at-hip-end.ts'
import { outsideWords } from '../build/outside-words.ts'
import { squareWords } from '../build/square-words.ts'
import { framingPlan } from '../drawings/framing-plan.ts'
import { siteFacts } from '../quote/customer-facts.ts'
import type { Sheet } from '../sheet-types.ts'
import type { PaperSource } from '../source.ts'
import { connectorLegend } from '../tables/connector-legend.ts'
import { memberSchedule } from '../tables/member-schedule.ts'
import type { Layer } from '../types.ts'

export const PLAN_LAYERS: readonly Layer[] = [
  'house',
  'decking',
  'footings',
  'beams',
  'posts',
  'joists',
  'stairs',
  'guard',
  'joints',
  'marks',
  'dimensions',
]

/** The framing plan to scale, how to read it, and every member by its mark. */
export function framingSheet({ estimate }: PaperSource): Sheet {
  const { job } = estimate
  const { species, grade, treatment, joists, postSize } = job.frame
  return {
    id: 'framing',
    title: 'Framing plan',
    audience: 'permit office',
    across: true,
    blocks: [
      {
        kind: 'drawing',
        drawing: framingPlan(estimate, estimate.plans),
        layers: PLAN_LAYERS,
      },
      {
        kind: 'facts',
        together: 'facts',
        rows: [
          ...siteFacts(job),
          ['Frame, outside', `${outsideWords(estimate)}; ${squareWords(estimate)}`],
          ['Lumber', `${species} ${grade}, ${treatment}`],
          [
            'Joists',
            `${joists.size} at ${printInches(joists.spacing)} o.c., laid out from the ${joists.layoutFrom} end`,
          ],
          ['Posts', postSize],
          ...toBeDesigned(estimate).map((words): readonly [string, string] => ['To be designed', words]),
          [
            'How to read it',
            'Seen from above, as the set-ups of the cutting sheet are: the face or edge that is up there is up here. Plies are lettered: a of a beam is the rear one, or the left one where the beam runs away from the house; a of a rim is the outermost. Full lines: wood seen. Dashed: what lies under it. A heavy short stroke across a member: a joint. Figures beside the beams: posts, numbered as on the ground. A length as laid is the whole member’s: what is longer than its board comes in pieces, which the cutting list names.',
          ],
        ],
      },
      { kind: 'table', table: connectorLegend(estimate), empty: 'No metal holds this frame.' },
      {
        kind: 'table',
        columns: 'members',
        table: memberSchedule(estimate),
        empty: 'There are no members.',
      },
    ],
  }
}

/** Joints that no table covers, before anything for them is bought. */
function toBeDesigned(estimate: PaperSource['estimate']): readonly string[] {
  const { frame, checks } = estimate
  return frame.hips.map((hip) => {
    const { memberIds } = hip
    const marks = frame.members.filter(({ id }) => memberIds.includes(id)).map(({ mark }) => mark)
    const check = checks.find(
      ({ title, subjects }) => title === 'Hip' && subjects.includes(memberIds[0] ?? ''),
    )
    return `The joint of hip ${marks.join(' and ')} at the inside corner: ask the designer before its hanger is ordered.${hangersThere(joistsAtHipEnd(estimate, hip))} ${check?.remedy ?? ''}`.trim()
  })
}
