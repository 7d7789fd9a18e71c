import { type CutListResult, writeDelimited } from '../../../core/cut-list/index.ts'
import { cutListRows } from '../../../core/papers/index.ts'
import type { Session } from '../../state/session.ts'
import { saveFile } from '../papers/save-file.ts'
import { saveText } from '../save-blob.ts'

const NAME = 'cut-list.csv'

/** Hands order and pieces over to be saved. The byte order mark tells a spreadsheet UTF-8. */
export function saveCsv(session: Session, result: CutListResult): void {
  saveText(NAME, `\uFEFF${writeDelimited(cutListRows(result))}`, 'text/csv')
  session.say(`Cut list made: ${NAME}`)
}

/** Has the workbook of the planned list made and saved. */
export async function saveListWorkbook(session: Session): Promise<void> {
  const made = await session.makeListWorkbook()
  if (!made) return
  saveFile(made, 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet')
  session.say(`Workbook made: ${made.fileName}`)
}
