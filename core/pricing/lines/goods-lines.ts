import type { Good } from '../../takeoff/index.ts'
import { goodLineId } from '../scope.ts'
import { cheapestGood } from '../suppliers/cheapest-good.ts'
import type { Line, LineGroup, PriceBook, PriceFault } from '../types.ts'
import { line } from './line.ts'

/** One line per sku: quantities of all that need it together, rounded up once to whole packs. */
export function goodsLines(goods: readonly Good[], book: PriceBook, faults: PriceFault[]): readonly Line[] {
  const prices = new Map(book.goods.map((good) => [good.sku, good]))
  const needs = new Map<string, Good[]>()
  for (const good of goods) needs.set(good.sku, [...(needs.get(good.sku) ?? []), good])

  const lines: Line[] = []
  for (const [sku, wanted] of needs) {
    const first = wanted[0]
    const price = prices.get(sku)
    const needed = wanted.reduce((sum, { thousandths }) => sum + thousandths, 0)
    if (first === undefined || needed === 0) continue
    if (price === undefined) {
      faults.push(missingGood(first, book))
      continue
    }
    if (price.unit !== first.unit) {
      faults.push(otherUnit(first, price.unit, book))
      continue
    }
    const bought = cheapestGood(price, needed, book)
    lines.push(
      line({
        id: goodLineId(sku),
        group: lineGroup(first.group),
        label: price.label,
        code: bought.code,
        thousandths: bought.thousandths,
        unit: price.unit,
        price: bought.price,
        part: lineGroup(first.group) === 'other' ? 'other' : 'material',
        cause: {
          fields: [...new Set(wanted.flatMap(({ cause }) => cause.fields))],
          ids: wanted.map(({ id }) => id),
          rule: `${needed / 1000} ${price.unit} needed, sold by ${bought.pack / 1000}`,
        },
        ...(bought.supplier === book.supplier && bought.date === undefined
          ? {}
          : { source: { date: bought.date ?? book.date, supplier: bought.supplier } }),
      }),
    )
  }
  return lines
}

/** Hire and fees are no material: sales tax is not on them. */
function lineGroup(group: Good['group']): LineGroup {
  return group === 'hire' || group === 'fees' ? 'other' : group
}

function missingGood(good: Good, book: PriceBook): PriceFault {
  return {
    subject: good.sku,
    message: `The price book "${book.name}" has no price for "${good.sku}" (${good.label}).`,
    fix: `Add "${good.sku}" under goods, with its price per ${good.unit}.`,
  }
}

function otherUnit(good: Good, unit: string, book: PriceBook): PriceFault {
  return {
    subject: good.sku,
    message: `The price book "${book.name}" prices "${good.sku}" per ${unit}; it is counted per ${good.unit}.`,
    fix: `State the price of "${good.sku}" per ${good.unit}.`,
  }
}
