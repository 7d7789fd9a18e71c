import type { EstimateResult } from '../../core/estimate-types.ts'
import {
  fieldAt,
  type JobStatement,
  optionList,
  readJob,
  statedValue,
  withOption,
} from '../../core/job/index.ts'
import { changeWords, type PricedOption } from '../../core/papers/index.ts'
import { cents } from '../../core/units/index.ts'
import type { PricedEstimate } from '../exports/workbook/index.ts'
import { faultSentence, isPriced, needsAttention, reasonsForNoPrice } from './estimate-outcome.ts'

/** The estimate, or why there is no price. */
export function pricedOr(result: EstimateResult): PricedEstimate | string {
  if (!result.ok) return result.faults.map(faultSentence)[0] ?? 'the job has a fault'
  const { estimate } = result
  return isPriced(estimate) ? estimate : (reasonsForNoPrice(estimate)[0] ?? 'it has no price')
}

/** Each option of a job estimated beside the job itself: what it changes, what it costs, what it makes fail. */
export async function pricedOptions(
  statement: JobStatement,
  base: PricedEstimate,
  estimate: (statement: JobStatement) => Promise<EstimateResult> | EstimateResult,
): Promise<readonly PricedOption[]> {
  const read = readJob(statement)
  if (!read.ok) return []
  const priced: PricedOption[] = []
  for (const option of optionList(read.value.job.pricing.options)) {
    const changed = withOption(statement, option)
    const changes = option.changes.map(({ path }) =>
      changeWords(fieldAt(path), statedValue(statement, path), statedValue(changed, path)),
    )
    const made = pricedOr(await estimate(changed))
    if (typeof made === 'string') {
      priced.push({ name: option.name, changes, price: null, caution: `no price: ${made}` })
      continue
    }
    const price = cents(made.pricing.totals.priceWithTax - base.pricing.totals.priceWithTax)
    const was = new Set(base.checks.filter(needsAttention).map(({ id }) => id))
    const [worse] = made.checks.filter((check) => needsAttention(check) && !was.has(check.id))
    const caution = worse === undefined ? '' : `${worse.title} ${worse.status} with it: ${worse.message}`
    priced.push({ name: option.name, changes, price, caution })
  }
  return priced
}
