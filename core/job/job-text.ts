import { fail, ok, type Result } from '../units/index.ts'
import { isObject } from './json-shape.ts'
import { keyNodeAt, nodeAt, readJsonTree, valueOfTree } from './json-tree.ts'
import { readJob } from './read-job.ts'
import { placeOf } from './text-place.ts'
import type { Fault, JobStatement, ReadJob } from './types.ts'
import { JOB_VERSION } from './upgrade.ts'

/**
 * Reads a job file's text: JSON, with comments and trailing commas allowed.
 * Every fault has the line and column of what it is about, or of the branch that should hold it.
 */
export function readJobText(
  text: string,
): Result<{ readonly statement: JobStatement; readonly read: ReadJob }, readonly Fault[]> {
  // an editor's byte order mark is no part of the job; a space keeps every place where it was
  const plain = text.startsWith('\uFEFF') ? ` ${text.slice(1)}` : text
  const tree = readJsonTree(plain)
  if (!tree.ok) return tree
  const statement = valueOfTree(tree.value)
  const read = readJob(statement)
  if (!read.ok) {
    return fail(
      read.error.map((fault) => {
        const node = keyNodeAt(tree.value, fault.path) ?? nodeAt(tree.value, fault.path)
        return { ...fault, ...placeOf(plain, node.offset) }
      }),
    )
  }
  if (!isObject(statement)) throw new Error('only an object is read as a job')
  return ok({ statement, read: read.value })
}

/** A statement as the text of a job file, its version first. The same statement gives the same bytes. */
export function writeJobText(statement: JobStatement): string {
  const { version = JOB_VERSION, ...fields } = statement
  return `${JSON.stringify({ version, ...fields }, null, 2)}\n`
}
