import { fail, ok, type Result } from '../../core/units/index.ts'

/** A list's text, and how its bytes were read where that is not UTF-8. */
export interface DecodedList {
  readonly text: string
  /** null: UTF-8 */
  readonly readAs: string | null
}

/**
 * The text of a list that a spreadsheet saved: UTF-16 where it says so at its head, else UTF-8, else what Windows writes
 * for western languages. Bytes of no text at all are refused.
 */
export function decodeList(bytes: Uint8Array): Result<DecodedList, string> {
  const [first, second] = bytes
  const marked =
    first === 0xff && second === 0xfe ? 'utf-16le' : first === 0xfe && second === 0xff ? 'utf-16be' : null
  if (marked !== null) return ok({ text: new TextDecoder(marked).decode(bytes), readAs: 'UTF-16' })
  // a spreadsheet's own file is a packed one, and has bytes that no text has
  if (bytes.includes(0)) return fail('is not text: save the sheet as CSV')
  try {
    return ok({ text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), readAs: null })
  } catch (error) {
    if (!(error instanceof TypeError)) throw error
    return ok({ text: new TextDecoder('windows-1252').decode(bytes), readAs: 'Windows-1252' })
  }
}
