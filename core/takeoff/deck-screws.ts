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
  const count = courses.length * frame.joistCentres.length * nailing.deckScrewsPerJoist
  const thick = sectionOf(job.decking.size).thickness > inches(1)
  return [
    {
      sku: thick ? 'screw-deck-3' : 'screw-deck-2-1/2',
      quantity: Math.ceil((count * (100 + SCREW_WASTE)) / 100),
      cause: {
        fields: ['decking.size', 'frame.joists.spacing'],
        ids: ['run-decking'],
        rule: `${courses.length} courses × ${frame.joistCentres.length} joists × 2 (${cite(nailingSources.deckScrewsPerJoist)}), ${SCREW_WASTE} % more for loss`,
      },
    },
  ]
}
