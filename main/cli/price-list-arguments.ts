import { PRICE_MEANINGS, type PriceListRequest, type PriceMeaning } from '../../core/price-list/index.ts'
import { fail, isDate, ok, type Result } from '../../core/units/index.ts'
import { suggestion } from './suggestion.ts'

export type PriceListOption =
  | 'prices'
  | 'date'
  | 'supplier'
  | 'columns'
  | 'known'
  | 'beside'
  | 'write'
  | 'json'

/** What a list of prices is to do to which price book. */
export interface PriceListCommand {
  readonly kind: 'prices'
  readonly list: string
  /** price book that is changed; null: the sample */
  readonly prices: string | null
  readonly says: Omit<PriceListRequest, 'text'>
  /** file for the changed price book; null: it is only shown */
  readonly write: string | null
  readonly json: boolean
}

export function readPriceListOptions(
  list: string,
  values: ReadonlyMap<string, string>,
): Result<PriceListCommand, string> {
  const date = values.get('date') ?? ''
  if (date !== '' && !isDate(date)) return fail(`--date: "${date}" is no day; write it as 2026-11-01.`)
  const columns = readColumns(values.get('columns'))
  if (!columns.ok) return columns
  return ok({
    kind: 'prices',
    list,
    prices: values.get('prices') ?? null,
    says: {
      columns: columns.value,
      date,
      supplier: values.get('supplier') ?? '',
      leaveOutUnknown: values.has('known'),
      beside: values.has('beside'),
    },
    write: values.get('write') ?? null,
    json: values.has('json'),
  })
}

function readColumns(text: string | undefined): Result<readonly PriceMeaning[] | null, string> {
  if (text === undefined) return ok(null)
  const columns: PriceMeaning[] = []
  for (const word of text.split(',').map((each) => each.trim())) {
    const meaning = PRICE_MEANINGS.find((one) => one === word)
    if (meaning === undefined)
      return fail(`--columns: there is no "${word}"${suggestion(word, PRICE_MEANINGS)}`)
    columns.push(meaning)
  }
  return ok(columns)
}
