import type { Job } from '../../../core/job/index.ts'
import { relevantFields } from '../../state/relevant-fields.ts'
import { useJob } from '../../state/session-context.ts'
import { CheckList } from '../bench/check-list.tsx'
import { FieldGroup } from '../bench/field-group.tsx'
import { FoldedGroup } from '../bench/folded-group.tsx'
import { SelectionSlot } from '../bench/selection-slot.tsx'
import { FoundPanel } from './found-panel.tsx'

const WORK = ['ground.concrete', 'ground.placing', 'ground.digging', 'ground.breakerDays']
const LOADS = [
  'ground.fullLoad',
  'ground.leastLoad',
  'ground.concreteWaste',
  'ground.swell',
  'ground.holeRoom',
]
const NOTED = ['ground.moved', 'ground.found', 'ground.measured']

/** Footings: tube, base, concrete; what the checks say of them, and what to do where a hole is not in its place. */
export function GroundBench({ job }: { readonly job: Job }) {
  const design = useJob((state) => state.design)
  const selected = useJob((state) => state.selected)
  const fields = relevantFields(job, ['ground'])
  const of = (paths: readonly string[]) => fields.filter(({ path }) => paths.includes(path))
  const apart = [...WORK, ...LOADS, ...NOTED]
  const below = new Set(
    [...(design?.frame.footings ?? []), ...(design?.frame.posts ?? [])].map(({ id }) => id),
  )
  const checks = (design?.checks ?? []).filter((check) => check.subjects.some((id) => below.has(id)))
  const hole = design?.frame.footings.find(({ id, postId }) => id === selected || postId === selected)
  return (
    <>
      <FieldGroup title="Footings" fields={fields.filter(({ path }) => !apart.includes(path))} />
      <FieldGroup title="Concrete and digging" fields={of(WORK)} />
      <SelectionSlot />
      {hole !== undefined && <FoundPanel key={hole.id} footing={hole} />}
      <section className="group">
        <h2>Checks below the beam</h2>
        <CheckList checks={checks} />
      </section>
      <FoldedGroup title="Loads, waste and room" fields={of(LOADS)} />
      <FoldedGroup title="Noted on site" fields={of(NOTED)} />
    </>
  )
}
