import { useEffect } from 'react'
import { ChoiceField } from '../../parts/choice-field.tsx'
import { useJob, useSession } from '../../state/session-context.ts'
import { templateAmong } from '../../state/window-memory.ts'

/** The job that new ones start from: how it is built and priced. */
export function TemplateChoice({ id }: { readonly id: string }) {
  const session = useSession()
  const jobs = useJob((state) => state.jobs)
  const memory = useJob((state) => state.memory)
  useEffect(() => {
    void session.listJobs()
  }, [session])
  const chosen = templateAmong(jobs, memory)
  return (
    <ChoiceField
      id={id}
      label="New jobs start from"
      value={chosen?.id ?? ''}
      choices={[
        { value: '', label: 'the program’s defaults' },
        ...(jobs ?? []).map((job) => ({ value: job.id, label: job.name })),
      ]}
      stated={chosen !== null}
      fault={null}
      help="Lumber, decking, guard, saw, crew and pricing of that job; not its place, size, frame or customer."
      basis="the program’s own"
      onChoose={(template) => session.remember({ template: template === '' ? null : template })}
      onReset={() => session.remember({ template: null })}
    />
  )
}
