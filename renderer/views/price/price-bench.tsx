import { fieldAt, type Job } from '../../../core/job/index.ts'
import { relevantFields } from '../../state/relevant-fields.ts'
import { FieldGroup, without } from '../bench/field-group.tsx'
import { FoldedGroup } from '../bench/folded-group.tsx'
import { SplitPart } from '../price-book/split-part.tsx'
import { PriceBookPart } from './price-book.tsx'
import { ScopeList } from './scope-list.tsx'

/** How cost becomes price, and what is in it. */
export function PriceBench({ job }: { readonly job: Job }) {
  return (
    <>
      <FieldGroup title="Price" fields={[fieldAt('builder'), ...relevantFields(job, ['pricing'])]}>
        {job.builder === 'owner' && (
          <p className="soft">An owner builds: no wages, overhead or margin. Hours are shown.</p>
        )}
      </FieldGroup>
      <FoldedGroup
        title="Work before and after"
        fields={relevantFields(job, ['work'])}
        shorten={without('Work: ')}
      />
      <PriceBookPart />
      <SplitPart />
      <ScopeList />
    </>
  )
}
