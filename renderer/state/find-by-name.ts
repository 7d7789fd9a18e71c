/** How well a name answers what was typed; the least is the best. */
const WHOLE_WORD = 0
const BEGINNING = 1
const WITHIN = 3
const LETTERS = 9

/**
 * How well a name answers a query: every word of the query must begin a word of the name, stand within it, or have its
 * letters in the name in that order. Null: it does not; the less the better.
 */
export function distance(query: string, name: string): number | null {
  const words = lower(query).split(' ').filter(Boolean)
  const text = lower(name)
  let sum = 0
  for (const word of words) {
    const far = distanceOfWord(word, text)
    if (far === null) return null
    sum += far
  }
  return sum
}

/** Those that answer a query, the best first; equally good ones stay in their order. */
export function findByName<T>(query: string, list: readonly T[], nameOf: (each: T) => string): readonly T[] {
  return list
    .map((each) => ({ each, far: distance(query, nameOf(each)) }))
    .filter((found): found is { each: T; far: number } => found.far !== null)
    .toSorted((a, b) => a.far - b.far)
    .map(({ each }) => each)
}

function distanceOfWord(word: string, text: string): number | null {
  const words = text.split(' ')
  if (words.includes(word)) return WHOLE_WORD
  if (words.some((each) => each.startsWith(word))) return BEGINNING
  if (text.includes(word)) return WITHIN
  return word.length > 2 && hasLetters(word, text) ? LETTERS : null
}

/** Whether the letters of a word stand in a text in their order, beginning where a word begins. */
function hasLetters(word: string, text: string): boolean {
  const starts = [...text.matchAll(/(?<=^| )\S/g)].filter(([letter]) => letter === word[0])
  return starts.some(({ index }) => {
    let at = index
    for (const letter of word) {
      at = text.indexOf(letter, at) + 1
      if (at === 0) return false
    }
    return true
  })
}

function lower(text: string): string {
  return text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}/'"]+/gu, ' ')
    .trim()
}
