import type { Ticks } from '../units/index.ts'
import type { CutPlan } from './types.ts'

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
  /** told of each plan better than those before, by its job's id */
  readonly onPlan?: ((plan: CutPlan) => void) | undefined
  /** plans told before a calculation was ended at once: taken as they are */
  readonly plans?: ReadonlyMap<string, CutPlan> | undefined
}

/** Options of one plan, from the watch over all of them. */
export function watchPart(
  { stop, onProgress, onPlan }: Watch,
  part: Omit<WorkProgress, 'bound' | 'best'>,
): Pick<Watch, 'stop' | 'onPlan'> & { readonly onProgress: (bound: number, best: number) => void } {
  const finite = (value: number) => (Number.isFinite(value) ? value : null)
  return {
    stop,
    onPlan,
    onProgress: (bound, best) => onProgress?.({ ...part, bound: finite(bound), best: finite(best) }),
  }
}
