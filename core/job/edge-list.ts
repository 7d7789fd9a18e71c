import { fail, ok, type Result } from '../units/index.ts'
import { excerpt } from './json-shape.ts'
import type { Fault } from './types.ts'

/** Reads numbers of edges as typed: `1, 6`. Edge 1 runs from the first corner to the second. */
export function readEdges(text: string): Result<readonly number[], Pick<Fault, 'message' | 'fix'>> {
  const read: number[] = []
  for (const entry of text.split(/[,;\s]+/).filter((one) => one !== '')) {
    if (!/^\d{1,3}$/.test(entry) || Number(entry) === 0) {
      return fail({
        message: `"${excerpt(entry)}" is no number of an edge`,
        fix: 'name edges by number, e.g. 1, 6; edge 1 runs from the first corner to the second',
      })
    }
    if (!read.includes(Number(entry))) read.push(Number(entry))
  }
  return ok(read)
}

/** Numbers that were read with their job. Throws on any other text: that is a bug, not input. */
export function edgeList(text: string): readonly number[] {
  const read = readEdges(text)
  if (!read.ok) throw new Error(read.error.message)
  return read.value
}
