import type { Check } from '../checks/index.ts'
import { design } from '../design.ts'
import type { Design } from '../estimate-types.ts'
import { fieldAt, type JobStatement, printFieldValue, setField, valueAt } from '../job/index.ts'
import { remedyTries, type Try } from './remedy-tries.ts'
import type { SizingChange } from './types.ts'

/** One way to make a check pass, tried before it is offered: fields with the values that a job file would state. */
export interface Remedy {
  readonly changes: readonly SizingChange[]
  /** e.g. "Joist size: 2x12 instead of 2x10" */
  readonly words: string
  /** titles of checks that passed and would not pass with it; the ways without any come first */
  readonly opens: readonly string[]
}

/** As many as a person weighs at once. */
const MOST = 5

/**
 * What would make a check pass, field by field: for each field that the check reads and that is for the builder to
 * choose, the nearest value with which it passes, found by framing and checking the deck with it. Facts of the place and
 * the size of the deck are left alone. Empty where no single choice mends it, or where nothing is to be mended.
 */
export function remediesFor(statement: JobStatement, checkId: string): readonly Remedy[] {
  const now = design(statement)
  if (!now.ok) return []
  const check = now.value.checks.find(({ id }) => id === checkId)
  if (check === undefined || passes(check)) return []
  const found = check.fields.flatMap((field) => {
    const remedy = nearest(statement, now.value, checkId, remedyTries(now.value.job, field))
    return remedy === null ? [] : [remedy]
  })
  const clean = found.filter(({ opens }) => opens.length === 0)
  return [...clean, ...found.filter(({ opens }) => opens.length > 0)].slice(0, MOST)
}

/** The first try that opens no other check, else the first that mends this one. */
function nearest(
  statement: JobStatement,
  now: Design,
  checkId: string,
  tries: readonly Try[],
): Remedy | null {
  const open = new Set(now.checks.filter((check) => !passes(check)).map(({ id }) => id))
  let second: Remedy | null = null
  for (const attempt of tries) {
    const then = design(changed(statement, attempt))
    if (!then.ok) continue
    const left = then.value.checks.filter((check) => !passes(check))
    if (left.some(({ id }) => id === checkId)) continue
    const opens = [...new Set(left.filter(({ id }) => !open.has(id)).map(({ title }) => title))]
    const remedy = told(now, then.value, attempt, opens)
    if (opens.length === 0) return remedy
    second ??= remedy
  }
  return second
}

function changed(statement: JobStatement, attempt: Try): JobStatement {
  return attempt.reduce((sum, [path, value]) => setField(sum, path, value), statement)
}

function told(now: Design, then: Design, attempt: Try, opens: readonly string[]): Remedy {
  const changes = attempt.flatMap(([path, value]): readonly SizingChange[] => {
    const field = fieldAt(path)
    const [from, to] = [printed(now, path), printed(then, path)]
    return from === to ? [] : [{ field: path, label: field.label, from, to, value }]
  })
  const parts = changes.map(({ label, from, to }) => `${label}: ${to} instead of ${from}`)
  return { changes, words: parts.join('; '), opens }
}

function printed({ job }: Design, path: string): string {
  const value = valueAt(job, path)
  if (typeof value === 'boolean') return value ? 'yes' : 'no'
  if (typeof value !== 'string' && typeof value !== 'number') return ''
  const field = fieldAt(path)
  const label = field.choiceLabels?.[field.choices?.indexOf(String(value)) ?? -1]
  return label ?? printFieldValue(field, value)
}

function passes({ status }: Check): boolean {
  return status === 'passes' || status === 'near'
}
