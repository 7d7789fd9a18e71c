import type { Job, ScopeTopic } from '../../job/index.ts'
import { allowanceId, isModelled, scopeTopics } from '../scope.ts'
import type { Line, PriceBook } from '../types.ts'
import { countLine } from './line.ts'

/** What is paid to others or stated as a sum. */
const allowanceLabels: { readonly [topic in ScopeTopic]: string } = {
  stairs: 'Stairs, stated sum',
  guard: 'Guard, stated sum',
  'taking away': 'Taking away what stands there, stated sum',
  hauling: 'Hauling and disposal, stated sum',
  delivery: 'Delivery, stated sum',
  permit: 'Permit, stated sum',
  marking: 'Marking of buried services, stated sum',
  flashing: 'Flashing beyond what is counted, stated sum',
  fasteners: 'Fasteners beyond what is counted, stated sum',
  hire: 'Hire of tools, stated sum',
  'clean-up': 'Clean-up, stated sum',
}

/** One line per topic that the job includes with a sum and that is not counted piece by piece. */
export function allowanceLines(job: Job, book: Pick<PriceBook, 'suppliers'>): readonly Line[] {
  return scopeTopics.flatMap((topic) => {
    const { included, allowance } = job.scope[topic]
    if (!included || allowance === 0 || isModelled(job, topic, book)) return []
    return [
      countLine(
        {
          id: allowanceId(topic),
          group: 'other',
          label: allowanceLabels[topic],
          code: '',
          unit: 'sum',
          part: 'other',
          cause: { fields: [`scope.${topic}.allowance`], ids: [], rule: 'sum stated in the job' },
        },
        1,
        allowance,
      ),
    ]
  })
}
