import type { FieldPath, FieldSpec } from '../../../core/job/index.ts'
import type { Topic } from './help-topics.ts'

/** Fields are told of by their own words; more than so many are no answer. */
const MOST_FIELDS = 12

export interface FoundHelp {
  readonly topics: readonly Topic[]
  readonly fields: readonly {
    readonly path: FieldPath
    readonly label: string
    readonly help: string
    readonly basis: string
  }[]
}

/**
 * Topics and fields in which every word of a question occurs, those that have it in their title first.
 * An empty question finds every topic and no field.
 */
export function findHelp(
  question: string,
  topics: readonly Topic[],
  fields: readonly FieldSpec[],
): FoundHelp {
  const words = wordsOf(question)
  if (words.length === 0) return { topics, fields: [] }
  const places = (title: string, text: string) => {
    const inTitle = words.filter((word) => title.toLowerCase().includes(word)).length
    const isFound = words.every((word) => `${title} ${text}`.toLowerCase().includes(word))
    return isFound ? inTitle : -1
  }
  const best = <T>(list: readonly T[], placeOf: (each: T) => number) =>
    list
      .map((each) => ({ each, at: placeOf(each) }))
      .filter(({ at }) => at >= 0)
      .toSorted((a, b) => b.at - a.at)
      .map(({ each }) => each)
  return {
    topics: best(topics, ({ title, paragraphs }) => places(title, paragraphs.join(' '))),
    fields: best(fields, ({ label, help }) => places(label, help)).slice(0, MOST_FIELDS),
  }
}

function wordsOf(question: string): readonly string[] {
  return question
    .toLowerCase()
    .split(/[^\p{L}\p{N}/]+/u)
    .filter((word) => word !== '')
}
