import { type CompareRow, largestWithin, leastOf } from '../../../core/compare/index.ts'
import { fieldAt, type Job } from '../../../core/job/index.ts'
import { printLength } from '../../../core/units/index.ts'
import { printDollars } from '../../state/print.ts'
import { JobField } from '../bench/job-field.tsx'

/** The largest of the compared sizes that a stated budget pays for. */
export function WithinBudget({
  job,
  rows,
  onTake,
}: {
  readonly job: Job
  readonly rows: readonly CompareRow[]
  onTake(row: CompareRow): void
}) {
  return (
    <div className="size-budget">
      <JobField spec={fieldAt('pricing.budget')} label="Budget" />
      {job.pricing.budget > 0 && rows.length > 0 && <Found job={job} rows={rows} onTake={onTake} />}
    </div>
  )
}

function Found({
  job,
  rows,
  onTake,
}: {
  readonly job: Job
  readonly rows: readonly CompareRow[]
  onTake(row: CompareRow): void
}) {
  const paid = job.builder === 'owner' ? 'cost' : 'price'
  const found = largestWithin(rows, job.pricing.budget, paid)
  if (found === null) {
    const least = leastOf(rows, paid)
    return (
      <p role="status">
        It pays for none of these sizes.
        {least !== null && ` The least is ${nameOf(least)}, ${printDollars(least[paid])}.`}
      </p>
    )
  }
  const isOwn = found.width === job.size.width && found.depth === job.size.depth
  return (
    <p role="status">
      The largest of these sizes that it pays for: <strong>{nameOf(found)}</strong>,{' '}
      {printDollars(found[paid])}.{' '}
      {isOwn ? (
        'It is the deck’s.'
      ) : (
        <button type="button" className="button" onClick={() => onTake(found)}>
          Make it the deck’s
        </button>
      )}
    </p>
  )
}

function nameOf({ width, depth }: CompareRow): string {
  return `${printLength(width)} × ${printLength(depth)}`
}
