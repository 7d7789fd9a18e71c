import type { Session } from '../../state/session.ts'

const TYPE = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet'

/** Has the workbook made and hands it to the browser or the desktop to be saved. */
export async function saveWorkbook(session: Session): Promise<void> {
  const made = await session.makeWorkbook()
  if (!made) return
  const bytes = Uint8Array.from(atob(made.base64), (letter) => letter.charCodeAt(0))
  const address = URL.createObjectURL(new Blob([bytes], { type: TYPE }))
  const link = document.createElement('a')
  link.href = address
  link.download = made.fileName
  link.click()
  setTimeout(() => URL.revokeObjectURL(address), 10_000)
  session.say(`Workbook made: ${made.fileName}`)
}
