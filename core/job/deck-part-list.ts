import { fail, ok, parseLength, type Result, type Ticks } from '../units/index.ts'
import { excerpt } from './json-shape.ts'
import type { Fault } from './types.ts'

/** How the decking of one part of the deck is laid, where it is not laid as the rest. */
export interface DeckPart {
  /** as numbered on the decking plan, from 1 */
  readonly part: number
  /** null: as the rest */
  readonly angle: number | null
  readonly leans: 'right' | 'left'
  /** null: as the rest */
  readonly breakers: readonly Ticks[] | null
}

type Wrong = Pick<Fault, 'message' | 'fix'>

const SAMPLE = '2: 45 left; 3: straight, breaker 8 ft'

/** The table of joist spacing ends here (IRC 2018 Table R507.7). */
const MOST_DEGREES = 45

/** Reads parts as typed, `part: how, how`, with semicolons or lines between them. The first fault is told. */
export function readDeckParts(text: string): Result<readonly DeckPart[], Wrong> {
  const parts: DeckPart[] = []
  for (const entry of text.split(/[;\n]/).filter((one) => one.trim() !== '')) {
    const part = readPart(entry.trim())
    if (!part.ok) return part
    if (parts.some((one) => one.part === part.value.part))
      return fail({ message: `part ${part.value.part} is named twice`, fix: 'say all of a part at once' })
    parts.push(part.value)
  }
  return ok(parts)
}

/** Parts that were read with their job. Throws on any other text: that is a bug, not input. */
export function deckPartList(text: string): readonly DeckPart[] {
  const read = readDeckParts(text)
  if (!read.ok) throw new Error(read.error.message)
  return read.value
}

function readPart(entry: string): Result<DeckPart, Wrong> {
  const [, number = '', stated = ''] = /^(?:part\s*)?(\d{1,3})\s*:\s*(.+)$/i.exec(entry) ?? []
  const part = Number(number)
  if (part < 1)
    return fail({
      message: `"${excerpt(entry)}" names no part and how it is laid`,
      fix: `write it as ${SAMPLE}`,
    })
  let own: DeckPart = { part, angle: null, leans: 'right', breakers: null }
  for (const word of stated.split(',').map((one) => one.trim().toLowerCase())) {
    const read = withWord(own, word)
    if (!read.ok) return read
    own = read.value
  }
  return ok(own)
}

function withWord(own: DeckPart, word: string): Result<DeckPart, Wrong> {
  if (word === 'straight') return ok({ ...own, angle: 0 })
  if (word === 'no breaker') return ok({ ...own, breakers: [] })
  const [, breaker] = /^breaker\s+(.+)$/.exec(word) ?? []
  if (breaker !== undefined) {
    const at = parseLength(breaker)
    if (!at.ok) return fail({ message: `"${excerpt(word)}": ${at.error.message}`, fix: at.error.fix })
    return at.value > 0
      ? ok({ ...own, breakers: [...(own.breakers ?? []), at.value] })
      : fail({
          message: `"${excerpt(word)}" is not over 0`,
          fix: 'give how far its middle lies from the end',
        })
  }
  const [, degrees, leans] = /^(\d{1,3})\s*°?\s+(left|right)$/.exec(word) ?? []
  if (degrees === undefined || leans === undefined)
    return fail({ message: `"${excerpt(word)}" says no way of laying boards`, fix: `write it as ${SAMPLE}` })
  if (Number(degrees) > MOST_DEGREES)
    return fail({ message: `${degrees} degrees are more than ${MOST_DEGREES}`, fix: 'give 45 or less' })
  return ok({ ...own, angle: Number(degrees), leans: leans === 'left' ? 'left' : 'right' })
}
