import type { WorkProgress } from '../../core/cutting/index.ts'
import { cents, printMoney } from '../../core/units/index.ts'

/** How far work is, in words: which part, and how near the best plan is to what any must cost. */
export function progressWords({ subject, part, parts, bound, best, lengthUnit }: WorkProgress): string {
  const which = parts > 1 ? `${subject} (${part} of ${parts})` : subject
  if (best === null || bound === null) return which
  const apart = `${(closeness(bound, best) * 100).toFixed(1)} % apart`
  if (lengthUnit !== null) return `${which}: best and least possible ${apart}`
  return `${which}: best ${printMoney(cents(best))}, at least ${printMoney(cents(Math.round(bound)))}, ${apart}`
}

/** What the best plan may be above the least, as a part of it. */
function closeness(bound: number, best: number): number {
  return best <= 0 ? 0 : Math.max(0, Math.min(1, (best - bound) / best))
}
