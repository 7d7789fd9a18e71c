import type { Session } from '../../state/session.ts'
import { saveFile } from './save-file.ts'

/** Has the workbook made and saved. */
export async function saveWorkbook(session: Session): Promise<void> {
  const made = await session.makeWorkbook()
  if (!made) return
  saveFile(made, 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet')
  session.say(`Workbook made: ${made.fileName}`)
}

/** Saves a PDF that was made, and says its name. */
export function savePdf(
  session: Session,
  made: { readonly fileName: string; readonly base64: string } | null,
): void {
  if (!made) return
  saveFile(made, 'application/pdf')
  session.say(`Saved: ${made.fileName}`)
}

/** Has the order of each supplier made as text or as a table, and saved. */
export async function saveOrder(session: Session, as: 'txt' | 'csv'): Promise<void> {
  const files = await session.makeOrder(as)
  for (const made of files) saveFile(made, as === 'txt' ? 'text/plain' : 'text/csv')
  if (files.length > 0) session.say(`Saved: ${files.map(({ fileName }) => fileName).join(', ')}`)
}

/** Has the chosen sheets made as a PDF and saved. */
export async function savePapers(session: Session): Promise<void> {
  const made = await session.makePapers()
  if (!made) return
  saveFile(made, 'application/pdf')
  session.say(`Papers made: ${made.fileName}`)
}
