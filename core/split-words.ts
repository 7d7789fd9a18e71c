import type { SupplierSplit } from './estimate-types.ts'
import { cents, printMoney } from './units/index.ts'

/** Things that are named of those a supplier does not sell. */
const NAMED = 3

/** From whom it is bought, how sure that is the cheapest, what it would be from each alone, and what is not stated. */
export function splitWords(split: SupplierSplit): readonly string[] {
  const { orders, alone } = split
  return [
    boughtFrom(split),
    ...alone.flatMap((one) => (isAllOf(split, one.supplier) ? [] : [aloneWords(one, split.cost)])),
    ...orders
      .filter(({ fee }) => fee === null)
      .map(
        ({ supplier }) =>
          `What ${supplier} asks for a delivery is not stated and counts as nothing: state it in the price book.`,
      ),
    ...orders.flatMap(({ supplier, freeFrom, material, delivery }) =>
      freeFrom === null || delivery === 0 || freeFrom - material >= delivery
        ? []
        : [
            `${printMoney(cents(freeFrom - material))} more at ${supplier} makes its delivery of ${printMoney(delivery)} free.`,
          ],
    ),
  ]
}

function boughtFrom({ orders, cost, proven, gap }: SupplierSplit): string {
  const names = orders.map(({ supplier }) => supplier)
  const from = names.length === 1 ? `All of it from ${names[0]}` : `Bought from ${listed(names)}`
  const sure = proven
    ? 'No other split of what is needed costs less.'
    : gap === 0
      ? 'Other splits may cost less: not all were looked at, or lines are stated by hand.'
      : `Another split may cost up to ${printMoney(gap)} less before tax.`
  return `${from}: ${printMoney(cost)} for the whole job, deliveries in it. ${sure}`
}

function isAllOf({ orders }: SupplierSplit, supplier: string): boolean {
  return orders.length === 1 && orders[0]?.supplier === supplier
}

function aloneWords(
  { supplier, cost, lacks, message }: SupplierSplit['alone'][number],
  chosen: SupplierSplit['cost'],
): string {
  if (lacks.length > 0) {
    const more = lacks.length > NAMED ? ` and ${lacks.length - NAMED} more` : ''
    return `${supplier} alone does not sell all of it: no ${lacks.slice(0, NAMED).join('; ')}${more}.`
  }
  if (cost === null) return `From ${supplier} alone it cannot be had: ${message}`
  const more = cost - chosen
  return `All of it from ${supplier}: ${printMoney(cost)}, ${
    more < 0 ? `${printMoney(cents(-more))} less` : `${printMoney(cents(more))} more`
  }.`
}

function listed(names: readonly string[]): string {
  return `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`
}
