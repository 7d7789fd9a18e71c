/**
 * A call's outcome where it crosses between processes as plain data: an error object would lose everything but its
 * message on the way.
 */
export type Reply =
  | { readonly ok: true; readonly result: unknown }
  | { readonly ok: false; readonly code: string; readonly message: string }

/** What the desktop's preload script gives the window, and nothing more. */
export interface Bridge {
  call(method: string, input: unknown): Promise<Reply>
  on(event: string, listener: (data: unknown) => void): () => void
}
