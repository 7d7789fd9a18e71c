/** Hands a made file to the browser or the desktop to be saved. */
export function saveFile(
  { fileName, base64 }: { readonly fileName: string; readonly base64: string },
  type: string,
): void {
  const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0))
  const address = URL.createObjectURL(new Blob([bytes], { type }))
  const link = document.createElement('a')
  link.href = address
  link.download = fileName
  link.click()
  setTimeout(() => URL.revokeObjectURL(address), 10_000)
}
