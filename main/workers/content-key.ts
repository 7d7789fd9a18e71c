import { createHash } from 'node:crypto'

/** Hash of plain data, the same for equal data whatever the order of its fields. */
export function contentKey(...parts: readonly unknown[]): string {
  return createHash('sha256')
    .update(JSON.stringify(parts.map(sorted)))
    .digest('base64url')
}

function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sorted)
  if (value === null || typeof value !== 'object') return value
  return Object.entries(value)
    .sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0))
    .map(([key, part]) => [key, sorted(part)])
}
