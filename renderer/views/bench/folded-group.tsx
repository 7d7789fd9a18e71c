import { type ReactNode, useEffect, useState } from 'react'
import type { FieldSpec } from '../../../core/job/index.ts'
import { useJob } from '../../state/session-context.ts'
import { JobField } from './job-field.tsx'

/** Fields that are seldom touched, folded away under a heading; opened by itself where one of them is at fault. */
export function FoldedGroup({
  title,
  fields,
  shorten = (label) => label,
  children,
}: {
  readonly title: string
  readonly fields: readonly FieldSpec[]
  shorten?(label: string): string
  readonly children?: ReactNode
}) {
  const [open, setOpen] = useState(false)
  const paths = fields.map((field) => field.path)
  const wrong = useJob(
    (state) =>
      state.faults.some(({ path }) => paths.includes(path)) ||
      paths.some((path) => state.drafts[path]?.fault),
  )
  const sought = useJob((state) => state.sought !== null && paths.includes(state.sought))
  useEffect(() => {
    if (wrong || sought) setOpen(true)
  }, [wrong, sought])
  if (fields.length === 0) return null
  return (
    <details className="folded" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{title}</summary>
      {fields.map((field) => (
        <JobField key={field.path} spec={field} label={shorten(field.label)} />
      ))}
      {children}
    </details>
  )
}
