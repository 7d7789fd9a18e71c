import { type Cents, cents } from '../../units/index.ts'
import type { QuoteChange } from '../source.ts'

/**
 * What each step of a change costs: the difference of the prices before and after it. A step that has no price of its
 * own, as the deck between two changes cannot be built, stands with the next one that has; so the lines sum to the
 * difference of the last price and the first. `prices` holds one price for each step, the last of them never null.
 */
export function changeLines(
  first: Cents,
  steps: readonly { readonly what: string }[],
  prices: readonly (Cents | null)[],
): QuoteChange['lines'] {
  const lines: { what: string; amount: Cents }[] = []
  let before = first
  let waiting: string[] = []
  steps.forEach(({ what }, i) => {
    waiting = [...waiting, what]
    const price = prices[i] ?? null
    if (price === null) return
    lines.push({ what: waiting.join('; '), amount: cents(price - before) })
    before = price
    waiting = []
  })
  if (waiting.length > 0) throw new Error('the last step of a change has a price')
  return lines
}
