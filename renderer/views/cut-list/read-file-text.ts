import { LONGEST_LIST } from '../../../core/cut-list/index.ts'
import { fail, ok, type Result } from '../../../core/units/index.ts'

/** A chosen file's text, or a sentence that says why it has none. */
export async function readFileText(file: File): Promise<Result<string, string>> {
  if (file.size > LONGEST_LIST * 3)
    return fail(`${file.name} is too large to be a cut list. Choose a CSV or text file.`)
  try {
    return ok(new TextDecoder('utf-8', { fatal: true }).decode(await file.arrayBuffer()))
  } catch (error) {
    return error instanceof TypeError
      ? fail(
          `${file.name} is not text in UTF-8. Save it from the spreadsheet as CSV (UTF-8), or paste the cells.`,
        )
      : fail(`${file.name} cannot be read.`)
  }
}
