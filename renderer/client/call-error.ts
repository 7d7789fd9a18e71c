/** A refused or failed call: the contract's error code and a sentence that can be shown. */
export class CallError extends Error {
  readonly code: string

  constructor(code: string, message: string) {
    super(message)
    this.name = 'CallError'
    this.code = code
  }
}

/** The code of any thrown thing; 'unreachable' where the machine gave no answer at all. */
export function codeOf(error: unknown): string {
  if (error instanceof Error && 'code' in error && typeof error.code === 'string') return error.code
  return 'unreachable'
}

export function sentenceOf(error: unknown): string {
  return error instanceof Error && error.message !== '' ? error.message : 'The program gave no answer.'
}
