import { fail, ok, type Result } from '../../core/units/index.ts'

/** What is looked for in a file, and how its user gets there. */
export interface TextWanted {
  readonly what: string
  /** in characters */
  readonly longest: number
  readonly make: string
}

/** A chosen file's text, or a sentence that says why it has none. */
export async function readFileText(
  file: File,
  { what, longest, make }: TextWanted,
): Promise<Result<string, string>> {
  if (file.size > longest * 3) return fail(`${file.name} is too large to be ${what}. ${make}`)
  try {
    return ok(new TextDecoder('utf-8', { fatal: true }).decode(await file.arrayBuffer()))
  } catch (error) {
    return error instanceof TypeError
      ? fail(`${file.name} is not text in UTF-8. ${make}`)
      : fail(`${file.name} cannot be read.`)
  }
}
