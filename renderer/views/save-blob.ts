/** Hands a text to the browser or the desktop to be saved as a file. */
export function saveText(fileName: string, text: string, type: string): void {
  saveBlob(fileName, new Blob([text], { type: `${type};charset=utf-8` }))
}

/** Hands any made content to the browser or the desktop to be saved as a file. */
export function saveBlob(fileName: string, content: Blob): void {
  const address = URL.createObjectURL(content)
  const link = document.createElement('a')
  link.href = address
  link.download = fileName
  link.click()
  setTimeout(() => URL.revokeObjectURL(address), 10_000)
}
