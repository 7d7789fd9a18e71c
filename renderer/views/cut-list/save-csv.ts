import { type CutListResult, writeDelimited } from '../../../core/cut-list/index.ts'
import { cutListRows } from '../../../core/papers/index.ts'
import type { Session } from '../../state/session.ts'

const NAME = 'cut-list.csv'

/** Hands order and pieces to the browser or the desktop to be saved. The byte order mark tells a spreadsheet UTF-8. */
export function saveCsv(session: Session, result: CutListResult): void {
  const text = `\uFEFF${writeDelimited(cutListRows(result))}`
  const address = URL.createObjectURL(new Blob([text], { type: 'text/csv;charset=utf-8' }))
  const link = document.createElement('a')
  link.href = address
  link.download = NAME
  link.click()
  setTimeout(() => URL.revokeObjectURL(address), 10_000)
  session.say(`Cut list made: ${NAME}`)
}
