/** An expected outcome, good or bad, as a value. Bugs throw; bad input never does. */
export type Result<T, E> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly error: E }

export function ok<T>(value: T): { readonly ok: true; readonly value: T } {
  return { ok: true, value }
}

export function fail<E>(error: E): { readonly ok: false; readonly error: E } {
  return { ok: false, error }
}
