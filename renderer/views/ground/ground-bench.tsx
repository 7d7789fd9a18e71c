import type { Job } from '../../../core/job/index.ts'
import { relevantFields } from '../../state/relevant-fields.ts'
import { useJob } from '../../state/session-context.ts'
import { CheckList } from '../bench/check-list.tsx'
import { FieldGroup } from '../bench/field-group.tsx'
import { SelectionSlot } from '../bench/selection-slot.tsx'

/** Footings: tube, base, concrete; what the checks say of them. */
export function GroundBench({ job }: { readonly job: Job }) {
  const design = useJob((state) => state.design)
  const below = new Set(
    [...(design?.frame.footings ?? []), ...(design?.frame.posts ?? [])].map(({ id }) => id),
  )
  const checks = (design?.checks ?? []).filter((check) => check.subjects.some((id) => below.has(id)))
  return (
    <>
      <FieldGroup title="Footings" fields={relevantFields(job, ['ground'])} />
      <SelectionSlot />
      <section className="group">
        <h2>Checks below the beam</h2>
        <CheckList checks={checks} />
      </section>
    </>
  )
}
