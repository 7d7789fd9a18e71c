import { fail, ok, parseLength, printLength, type Result, type Ticks } from '../units/index.ts'
import { excerpt } from './json-shape.ts'
import type { Fault } from './types.ts'

/** A length that a person states for one post, by its number on the plan. */
export interface PostLength {
  readonly post: number
  readonly length: Ticks
}

const SAMPLE = '2: 3 in; 4: -1 1/2 in'

/**
 * Reads lengths post by post, as typed: `2: 3 in; 4: -1 1/2 in`, semicolons or lines between them. The first fault is
 * told; an empty text is an empty list.
 */
export function readPostList(text: string): Result<readonly PostLength[], Pick<Fault, 'message' | 'fix'>> {
  const entries = text
    .split(/[;\n]/)
    .map((entry) => entry.trim())
    .filter((entry) => entry !== '')
  const read: PostLength[] = []
  for (const entry of entries) {
    const [, number = '', stated = ''] = /^(?:post\s*|p)?(\d{1,3})\s*[:=]\s*(.+)$/i.exec(entry) ?? []
    if (number === '') {
      return fail({ message: `"${excerpt(entry)}" names no post`, fix: `write it as ${SAMPLE}` })
    }
    const length = parseLength(stated)
    if (!length.ok)
      return fail({
        message: `post ${number}, "${excerpt(stated)}": ${length.error.message}`,
        fix: length.error.fix,
      })
    const post = Number(number)
    if (read.some((one) => one.post === post))
      return fail({ message: `post ${post} is named twice`, fix: 'give one length for each post' })
    read.push({ post, length: length.value })
  }
  return ok(read)
}

/** Such a list as text, by number; a length of nothing is left out. */
export function printPostList(posts: readonly PostLength[]): string {
  return posts
    .filter(({ length }) => length !== 0)
    .toSorted((a, b) => a.post - b.post)
    .map(({ post, length }) => `${post}: ${printLength(length)}`)
    .join('; ')
}

/** A list that was read with its job. Throws on any other text: that is a bug, not input. */
export function postList(text: string): readonly PostLength[] {
  const read = readPostList(text)
  if (!read.ok) throw new Error(read.error.message)
  return read.value
}
