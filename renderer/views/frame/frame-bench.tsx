import { useDeferredValue } from 'react'
import type { Check } from '../../../core/checks/index.ts'
import { type Job, STAIR_BRANCHES } from '../../../core/job/index.ts'
import { relevantFields } from '../../state/relevant-fields.ts'
import { useJob } from '../../state/session-context.ts'
import { CheckList } from '../bench/check-list.tsx'
import { FieldGroup, without } from '../bench/field-group.tsx'
import { FoldedGroup } from '../bench/folded-group.tsx'
import { SelectionSlot } from '../bench/selection-slot.tsx'
import { LaidWet } from './laid-wet.tsx'
import { SizingPanel } from './sizing-panel.tsx'

const NO_CHECKS: readonly Check[] = []

/** Joists, beams and posts, with what the checks say of them. */
export function FrameBench({ job }: { readonly job: Job }) {
  const frame = relevantFields(job, ['frame'])
  const pick = (...starts: readonly string[]) =>
    frame.filter(({ path }) => starts.some((start) => path.startsWith(start)))
  const stairs = relevantFields(job, ['stairs'])
  const checks = useDeferredValue(useJob((state) => state.design?.checks) ?? NO_CHECKS)
  return (
    <>
      <FieldGroup
        title="Joists"
        fields={pick('frame.joists.size', 'frame.joists.spacing')}
        shorten={without('Joist ')}
      />
      <FieldGroup title="Front beam" fields={pick('frame.beams.front.')} shorten={without('Front beam: ')} />
      <FieldGroup title="Rear beam" fields={pick('frame.beams.rear.')} shorten={without('Rear beam: ')} />
      <FieldGroup title="Posts" fields={pick('frame.postSize')} shorten={without('Post ')} />
      <SizingPanel />
      <SelectionSlot />
      <section className="group">
        <h2>Checks</h2>
        <CheckList checks={checks} fold told={2} />
      </section>
      <FoldedGroup title="Lumber" fields={pick('frame.species', 'frame.grade', 'frame.treatment')} />
      <FoldedGroup
        title="Details of the frame"
        fields={pick(
          'frame.joists.layoutFrom',
          'frame.joists.overMiddle',
          'frame.joists.longest',
          'frame.rimPlies',
          'frame.blocking',
          'frame.bracing',
          'frame.stagger',
        )}
      />
      {STAIR_BRANCHES.map(({ branch, name }) => (
        <FoldedGroup
          key={branch}
          title={name}
          fields={stairs.filter(({ path }) => path.split('.').slice(0, -1).join('.') === branch)}
          shorten={without(`${name}: `)}
        />
      ))}
      <FoldedGroup title="Guard" fields={relevantFields(job, ['guard'])} shorten={without('Guard: ')} />
      <FoldedGroup title="Decking" fields={relevantFields(job, ['decking'])} shorten={without('Decking ')}>
        <LaidWet />
      </FoldedGroup>
    </>
  )
}
