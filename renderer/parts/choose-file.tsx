import { useRef } from 'react'

/** A button that asks for a file; the same file can be chosen twice in a row. */
export function ChooseFile({
  name,
  accept,
  onChosen,
  children,
}: {
  /** what the file is, for screen readers */
  readonly name: string
  readonly accept: string
  onChosen(file: File): void
  readonly children: string
}) {
  const input = useRef<HTMLInputElement>(null)
  return (
    <>
      <button type="button" className="button" onClick={() => input.current?.click()}>
        {children}
      </button>
      <input
        ref={input}
        type="file"
        hidden
        accept={accept}
        aria-label={name}
        onChange={(event) => {
          const [file] = event.target.files ?? []
          if (file) onChosen(file)
          event.target.value = ''
        }}
      />
    </>
  )
}
