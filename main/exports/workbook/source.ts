import type { Estimate } from '../../../core/estimate-types.ts'
import type { Line, PriceBook, Pricing } from '../../../core/pricing/index.ts'

/** An estimate that has a price; without one there is no workbook to make. */
export type PricedEstimate = Estimate & { readonly pricing: Pricing }

export interface Source {
  readonly estimate: PricedEstimate
  readonly book: PriceBook
}

/** Where another sheet put a line's quantity and unit price, as formulas reach them: Order!D7. */
export interface LinePlaces {
  readonly quantity: ReadonlyMap<Line['id'], string>
  readonly price: ReadonlyMap<Line['id'], string>
}

export function linesOfParts(lines: readonly Line[], groups: readonly Line['group'][]): readonly Line[] {
  return groups.flatMap((group) => lines.filter((line) => line.group === group))
}
