import { saveBlob } from '../save-blob.ts'

/** Hands a made file to the browser or the desktop to be saved. */
export function saveFile(
  { fileName, base64 }: { readonly fileName: string; readonly base64: string },
  type: string,
): void {
  const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0))
  saveBlob(fileName, new Blob([bytes], { type }))
}
