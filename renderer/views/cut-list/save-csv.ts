import { type CutListResult, writeDelimited } from '../../../core/cut-list/index.ts'
import { cutListRows } from '../../../core/papers/index.ts'
import type { Session } from '../../state/session.ts'
import { saveText } from '../save-blob.ts'

const NAME = 'cut-list.csv'

/** Hands order and pieces over to be saved. The byte order mark tells a spreadsheet UTF-8. */
export function saveCsv(session: Session, result: CutListResult): void {
  saveText(NAME, `\uFEFF${writeDelimited(cutListRows(result))}`, 'text/csv')
  session.say(`Cut list made: ${NAME}`)
}
