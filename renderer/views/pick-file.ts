/** Asks for a file without a field on the page; nothing happens where none is chosen. */
export function pickFile(accept: string, onChosen: (file: File) => void): void {
  const input = document.createElement('input')
  input.type = 'file'
  input.accept = accept
  input.addEventListener('change', () => {
    const [file] = input.files ?? []
    if (file) onChosen(file)
  })
  input.click()
}
