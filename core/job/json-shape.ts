import type { JsonValue } from './types.ts'

export type JsonObject = { readonly [key: string]: JsonValue }

export function isObject(value: unknown): value is JsonObject {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

/** What a value is, in words, for a sentence about it. */
export function kindOf(value: unknown): string {
  if (value === null) return 'null'
  if (Array.isArray(value)) return 'a list'
  switch (typeof value) {
    case 'object':
      return 'an object'
    case 'string':
      return 'text'
    case 'number':
      return 'a number'
    case 'boolean':
      return 'true or false'
    default:
      return 'nothing that a job file can hold'
  }
}

/** Foreign text, cut short and without control characters, for a sentence. */
export function excerpt(text: string): string {
  // cut by code points, so that no half of one is left
  const letters = [
    ...text
      .slice(0, 200)
      .replace(/\p{C}+/gu, ' ')
      .trim(),
  ]
  return letters.length > 40 ? `${letters.slice(0, 40).join('').trimEnd()}…` : letters.join('')
}
