/** Hands a text to the browser or the desktop to be saved as a file. */
export function saveText(fileName: string, text: string, type: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: `${type};charset=utf-8` }))
  const link = document.createElement('a')
  link.href = address
  link.download = fileName
  link.click()
  setTimeout(() => URL.revokeObjectURL(address), 10_000)
}
