import type { Ticks } from '../units/index.ts'

/** How far a calculation has come. */
export interface WorkProgress {
  /** what is worked on, in words */
  readonly subject: string
  /** which of how many parts, from 1 */
  readonly part: number
  readonly parts: number
  /** least that any plan of this part costs, and the best plan so far; null while there is none */
  readonly bound: number | null
  readonly best: number | null
  /** length that one unit of the two stands for, where they are no cents */
  readonly lengthUnit: Ticks | null
}

/** Watches a calculation, and may end it: what was found by then is kept and says that it was stopped. */
export interface Watch {
  /** asked every few milliseconds of work: true stops the search */
  readonly stop?: (() => boolean) | undefined
  readonly onProgress?: ((progress: WorkProgress) => void) | undefined
}

/** Options of one plan, from the watch over all of them. */
export function watchPart(
  { stop, onProgress }: Watch,
  part: Omit<WorkProgress, 'bound' | 'best'>,
): { readonly stop: Watch['stop']; readonly onProgress: (bound: number, best: number) => void } {
  const finite = (value: number) => (Number.isFinite(value) ? value : null)
  return {
    stop,
    onProgress: (bound, best) => onProgress?.({ ...part, bound: finite(bound), best: finite(best) }),
  }
}
