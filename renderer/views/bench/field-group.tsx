import { type ReactNode, useId } from 'react'
import type { FieldSpec } from '../../../core/job/index.ts'
import { JobField } from './job-field.tsx'

/** A heading with the fields under it, each in the order of the job. */
export function FieldGroup({
  title,
  fields,
  shorten = (label) => label,
  children,
}: {
  readonly title: string
  readonly fields: readonly FieldSpec[]
  /** labels that repeat the heading are cut short */
  shorten?(label: string): string
  readonly children?: ReactNode
}) {
  const id = useId()
  if (fields.length === 0 && !children) return null
  return (
    <section className="group" aria-labelledby={id}>
      <h2 id={id}>{title}</h2>
      {fields.map((field) => (
        <JobField key={field.path} spec={field} label={shorten(field.label)} />
      ))}
      {children}
    </section>
  )
}

/** Cuts a prefix such as "Front beam: " off a label and starts it with a capital. */
export function without(prefix: string): (label: string) => string {
  return (label) => {
    const rest = label.startsWith(prefix) ? label.slice(prefix.length) : label
    return rest.charAt(0).toUpperCase() + rest.slice(1)
  }
}
