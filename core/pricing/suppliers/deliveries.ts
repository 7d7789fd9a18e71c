import { type Cents, cents, printMoney, sumCents } from '../../units/index.ts'
import { countLine } from '../lines/line.ts'
import { goodLineId } from '../scope.ts'
import type { Line, PriceBook } from '../types.ts'
import { countsDeliveries, deliveryLineId } from './counted.ts'
import { isFromYard } from './offers.ts'

/** What one supplier brings. */
export interface SupplierOrder {
  readonly supplier: string
  readonly lines: readonly Line[]
  /** before tax */
  readonly material: Cents
  /** null: not stated */
  readonly fee: Cents | null
  readonly freeFrom: Cents | null
  /** what is paid for bringing it */
  readonly delivery: Cents
}

/** Material that is loaded on a yard's truck; what a joint takes is of the nails that are there. */
function isOrdered({ id, part, group, code }: Line): boolean {
  const notFromYard = id.startsWith(goodLineId('')) && !isFromYard(id.slice(goodLineId('').length))
  // offcuts on hand have no code and cost nothing
  const onHand = group !== 'other material' && id.startsWith('lumber-') && code === ''
  return part === 'material' && group !== 'joints' && !notFromYard && !onHand
}

/** The lines by the supplier who brings them, in the order in which the book states the suppliers. */
export function supplierOrders(lines: readonly Line[], book: PriceBook): readonly SupplierOrder[] {
  const bySupplier = new Map<string, Line[]>()
  for (const { name } of book.suppliers) bySupplier.set(name, [])
  for (const line of lines.filter(isOrdered)) {
    const supplier = line.source?.supplier ?? book.supplier
    bySupplier.set(supplier, [...(bySupplier.get(supplier) ?? []), line])
  }
  return [...bySupplier].flatMap(([supplier, own]) => {
    if (own.length === 0) return []
    const { delivery: fee = null, freeFrom = null } =
      book.suppliers.find(({ name }) => name === supplier) ?? {}
    const material = sumCents(own.map(({ amount }) => amount))
    const free = freeFrom !== null && material >= freeFrom
    return [{ supplier, lines: own, material, fee, freeFrom, delivery: free ? cents(0) : (fee ?? cents(0)) }]
  })
}

/** One line for each delivery; none where the book states no supplier's fee. */
export function deliveryLines(lines: readonly Line[], book: PriceBook): readonly Line[] {
  if (!countsDeliveries(book)) return []
  return supplierOrders(lines, book).map(({ supplier, material, fee, freeFrom, delivery }) =>
    countLine(
      {
        id: deliveryLineId(supplier),
        group: 'other',
        label: `Delivery, ${supplier}`,
        code: '',
        unit: 'delivery',
        part: 'other',
        cause: { fields: [], ids: [], rule: ruleOf(material, fee, freeFrom) },
      },
      1,
      delivery,
    ),
  )
}

function ruleOf(material: Cents, fee: Cents | null, freeFrom: Cents | null): string {
  const order = `an order of ${printMoney(material)} before tax`
  if (fee === null)
    return `${order}; the price book does not state what its delivery costs, so it counts as nothing`
  if (freeFrom === null) return `${order}, brought for ${printMoney(fee)} as the price book states`
  return material >= freeFrom
    ? `${order}, brought free from ${printMoney(freeFrom)}`
    : `${order}, brought for ${printMoney(fee)}; free from ${printMoney(freeFrom)}`
}
