import { cite, nailing, nailingSources, sectionOf } from '../data/index.ts'
import type { Frame } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import { inches } from '../units/index.ts'
import type { GoodShare } from './tally.ts'

/** Stripped and dropped, percent: common practice, no source. */
const SCREW_WASTE = 5

/** Two screws in each course at each joist; those of a butt joint come with the joint. */
export function deckScrews(job: Job, frame: Frame): readonly GoodShare[] {
  const courses = frame.members.filter((member) => member.role === 'decking')
  const crossings = courses.reduce((sum, course) => sum + course.bearings.length, 0)
  const alike = courses.every(({ bearings }) => bearings.length === courses[0]?.bearings.length)
  const joists = courses[0]?.bearings.length ?? 0
  const counted = alike
    ? `${courses.length} courses × ${joists} joists`
    : `${crossings} crossings of courses and joists`
  const count = crossings * nailing.deckScrewsPerJoist
  const thick = sectionOf(job.decking.size).thickness > inches(1)
  return [
    {
      sku: thick ? 'screw-deck-3' : 'screw-deck-2-1/2',
      quantity: Math.ceil((count * (100 + SCREW_WASTE)) / 100),
      cause: {
        fields: ['decking.size', 'frame.joists.spacing'],
        ids: frame.runs.filter(({ kind }) => kind === 'decking').map(({ id }) => id),
        rule: `${counted} × 2 (${cite(nailingSources.deckScrewsPerJoist)}), ${SCREW_WASTE} % more for loss`,
      },
    },
  ]
}
