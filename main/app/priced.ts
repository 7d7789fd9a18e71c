import type { EstimateResult } from '../../core/estimate-types.ts'
import type { PricedEstimate } from '../exports/workbook/index.ts'
import { faultSentence, isPriced, reasonsForNoPrice } from './estimate-outcome.ts'
import { ServiceError } from './service-types.ts'

/** The estimate with its price, or a sentence that says what stands in the way. */
export function mustBePriced(result: EstimateResult, refusal: string): PricedEstimate {
  if (!result.ok) throw new ServiceError('bad-input', sentenceOf(refusal, result.faults.map(faultSentence)))
  const { estimate } = result
  if (!isPriced(estimate))
    throw new ServiceError('bad-input', sentenceOf(refusal, reasonsForNoPrice(estimate)))
  return estimate
}

function sentenceOf(refusal: string, reasons: readonly string[]): string {
  const more = reasons.length > 1 ? ` (and ${reasons.length - 1} more)` : ''
  const [first = 'the job has no price'] = reasons
  return `${refusal}: ${first.replace(/[.\s]+$/, '')}${more}.`
}
