import { DEMO_JOB, type JobStatement } from '../../core/job/index.ts'

/** Whether a statement is the sample job with something of it changed. */
export function isSpoiltSample(statement: JobStatement): boolean {
  return (
    statement.name === DEMO_JOB.name &&
    statement.notes === DEMO_JOB.notes &&
    JSON.stringify(statement) !== JSON.stringify(DEMO_JOB)
  )
}
