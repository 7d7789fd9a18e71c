import { nearestName } from '../../core/job/index.ts'

/** The end of a sentence about an unknown word: the name it is nearest to, or those that there are. */
export function suggestion(word: string, names: readonly string[], before = ''): string {
  const near = nearestName(word, names)
  if (near !== null && near !== undefined) return `; did you mean ${before}${near}?`
  if (names.length === 0) return '.'
  return `; there ${names.length === 1 ? 'is' : 'are'} ${names.map((name) => before + name).join(', ')}.`
}
