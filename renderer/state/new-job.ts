import {
  type FieldPath,
  fieldAt,
  findField,
  JOB_VERSION,
  type JobStatement,
  readJob,
  setField,
} from '../../core/job/index.ts'
import { fail, ok, type Result } from '../../core/units/index.ts'
import { faultSentence, readText, statedForm } from './field-value.ts'

/** What is asked before a new job is made, by question; everything else starts at its default. */
export const ASKED = {
  size: ['size.width', 'size.depth', 'size.height'],
  holding: ['site.attachment', 'stairs.kind', 'guard.where'],
  builder: ['builder'],
  site: ['site.frostDepth', 'site.soil', 'site.snowLoad'],
} as const satisfies { readonly [question: string]: readonly FieldPath[] }

/** What was typed or chosen, by field; a field that is not there is not answered. */
export interface Answers {
  readonly [path: FieldPath]: string
}

/** What is wrong with an answer and what would be right, by field. */
export interface AnswerFaults {
  readonly [path: FieldPath]: string
}

/** What a job is called that nobody has named. */
export const UNNAMED = 'New deck'

/** The statement of a job that nobody has said anything of yet. */
export const UNANSWERED: JobStatement = { version: JOB_VERSION, name: UNNAMED }

/** The answers with one more, or without it where its text is empty: no text is no answer. */
export function answered(answers: Answers, path: FieldPath, text: string): Answers {
  const { [path]: dropped, ...others } = answers
  return text.trim() === '' ? others : { ...others, [path]: text }
}

/**
 * The job that the answers state. Fails with a sentence for each answer that cannot be taken, at its field.
 * @param base what it starts from
 */
export function jobOfAnswers(
  answers: Answers,
  base: JobStatement = UNANSWERED,
): Result<JobStatement, AnswerFaults> {
  const faults: Record<FieldPath, string> = {}
  let statement = base
  for (const [path, text] of Object.entries(answers)) {
    const spec = fieldAt(path)
    const read = readText(spec, text)
    if (read.ok) statement = setField(statement, path, statedForm(spec, read.value))
    else faults[path] = read.error
  }
  if (Object.keys(faults).length > 0) return fail(faults)
  const job = readJob(statement)
  if (job.ok) return ok(statement)
  return fail(
    Object.fromEntries(
      job.error.toReversed().map((fault) => [asked(fault.path) ?? 'size.width', faultSentence(fault)]),
    ),
  )
}

/** The asked field at a path; none where the fault lies between answers and a default. */
function asked(path: FieldPath): FieldPath | undefined {
  const paths: readonly FieldPath[] = [...Object.values(ASKED).flat(), 'name']
  return paths.includes(path) ? findField(path)?.path : undefined
}
