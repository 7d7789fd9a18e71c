import type { TableLookup } from '../rules/index.ts'
import type { CheckContext } from './context.ts'

/** A look-up, unless the deck's dead load is beyond what all the deck tables include: then nothing covers it. */
export function underTables(context: CheckContext, lookup: TableLookup): TableLookup {
  if (context.noTables === null) return lookup
  return { kind: 'outside', paged: lookup.paged, source: lookup.source, sentence: context.noTables }
}
