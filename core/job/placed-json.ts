import { ok, type Result } from '../units/index.ts'
import { type ExpectedText, keyNodeAt, nodeAt, readJsonTree, valueOfTree } from './json-tree.ts'
import { placeOf, type TextPlace } from './text-place.ts'
import type { Fault, FieldPath, JsonValue } from './types.ts'

/** A file's value, and where in its text each part of it stands. */
export interface PlacedJson {
  readonly value: JsonValue
  /** Place of a dotted path such as `site.ground.spots.0.x`, or of the nearest branch that is there. */
  readonly placeOf: (path: FieldPath) => TextPlace
}

/**
 * Reads the text of a file that a person may write: JSON, with comments and trailing commas allowed. Refuses what
 * a plain parse passes over in silence: a name stated twice, and "__proto__".
 */
export function readPlacedJson(text: string, expected: ExpectedText): Result<PlacedJson, readonly Fault[]> {
  // an editor's byte order mark is no part of the value; a space keeps every place where it was
  const plain = text.startsWith('\uFEFF') ? ` ${text.slice(1)}` : text
  const tree = readJsonTree(plain, expected)
  if (!tree.ok) return tree
  const root = tree.value
  return ok({
    value: valueOfTree(root),
    placeOf: (path) => placeOf(plain, (keyNodeAt(root, path) ?? nodeAt(root, path)).offset),
  })
}
