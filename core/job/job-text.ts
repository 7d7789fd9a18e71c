import { fail, ok, type Result } from '../units/index.ts'
import { isObject } from './json-shape.ts'
import type { ExpectedText } from './json-tree.ts'
import { readPlacedJson } from './placed-json.ts'
import { readJob } from './read-job.ts'
import type { Fault, JobStatement, ReadJob } from './types.ts'
import { JOB_VERSION } from './upgrade.ts'

/** In characters; a job with every field stated has a hundredth of it. */
export const LONGEST_JOB_TEXT = 1_000_000

const JOB_TEXT: ExpectedText = {
  name: 'job',
  sample: '{ "size": { "width": "20 ft", "depth": "12 ft" } }',
  longest: LONGEST_JOB_TEXT,
}

/**
 * Reads a job file's text: JSON, with comments and trailing commas allowed.
 * Every fault has the line and column of what it is about, or of the branch that should hold it.
 */
export function readJobText(
  text: string,
): Result<{ readonly statement: JobStatement; readonly read: ReadJob }, readonly Fault[]> {
  const json = readPlacedJson(text, JOB_TEXT)
  if (!json.ok) return json
  const statement = json.value.value
  const read = readJob(statement)
  if (!read.ok) return fail(read.error.map((fault) => ({ ...fault, ...json.value.placeOf(fault.path) })))
  if (!isObject(statement)) throw new Error('only an object is read as a job')
  return ok({ statement, read: read.value })
}

/** A statement as the text of a job file, its version first. The same statement gives the same bytes. */
export function writeJobText(statement: JobStatement): string {
  const { version = JOB_VERSION, ...fields } = statement
  return `${JSON.stringify({ version, ...fields }, null, 2)}\n`
}
