import type { Job } from '../../../core/job/index.ts'
import { relevantFields } from '../../state/relevant-fields.ts'
import { useJob } from '../../state/session-context.ts'
import { FieldGroup } from '../bench/field-group.tsx'
import { NearMisses } from '../bench/near-misses.tsx'
import { SelectionSlot } from '../bench/selection-slot.tsx'
import { Working } from '../working/working.tsx'
import { Rack } from './rack/rack.tsx'
import { WishList } from './wishes/wish-list.tsx'

/** How boards are cut, what just misses a stock length, and the offcuts on hand. */
export function BoardsBench({ job }: { readonly job: Job }) {
  const fit = useJob((state) => state.estimate?.fit)
  const stagger = relevantFields(job, ['frame']).filter(({ path }) => path === 'frame.stagger')
  return (
    <>
      <NearMisses />
      <WishList job={job} />
      <Working kind="joints" what="Working out what joints save." stop="Stop" />
      <FieldGroup title="Cutting" fields={[...relevantFields(job, ['cutting']), ...stagger]}>
        {fit && <p className="soft">{fit.message}</p>}
      </FieldGroup>
      <SelectionSlot />
      <Rack job={job} />
    </>
  )
}
