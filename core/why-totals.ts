import type { Line, Pricing } from './pricing/index.ts'
import { type Cents, printMoney, printShare } from './units/index.ts'
import type { Thing } from './why-things.ts'

const labels = {
  material: 'Materials',
  labour: 'Labour',
  other: 'Other',
  tax: 'Sales tax',
  direct: 'Direct cost',
  contingency: 'Contingency',
  overhead: 'Overhead',
  cost: 'Cost',
  price: 'Price',
  priceTax: 'Tax on the price',
  priceWithTax: 'Price with tax',
  perSquareFoot: 'Per square foot',
} as const

/** What each total is made of; lines are named by their ids, earlier totals by `totals.` and their name. */
export function totalThings({ lines, totals: t }: Pricing): ReadonlyMap<string, Thing> {
  const idsOf = (part: Line['part']) => lines.filter((line) => line.part === part).map((line) => line.id)
  const rule =
    t.method === 'none' ? 'an owner builder pays the cost' : `${t.method} ${printShare(t.methodShare)}`
  const total = (name: keyof typeof labels, amount: Cents, because: Thing['cause']): [string, Thing] => [
    `totals.${name}`,
    { text: `${labels[name]}: ${printMoney(amount)}`, cause: because },
  ]
  const from = (names: readonly string[], words: string, fields: readonly string[] = []): Thing['cause'] => ({
    fields,
    ids: names.map((name) => `totals.${name}`),
    rule: words,
  })
  return new Map([
    total('material', t.material, { fields: [], ids: idsOf('material'), rule: 'sum of its lines' }),
    total('labour', t.labour, { fields: ['builder'], ids: idsOf('labour'), rule: 'sum of its lines' }),
    total('other', t.other, { fields: [], ids: idsOf('other'), rule: 'sum of its lines' }),
    total('tax', t.tax, from(['material'], 'materials × sales tax', ['pricing.salesTax'])),
    total('direct', t.direct, from(['material', 'tax', 'labour', 'other'], 'sum')),
    total('contingency', t.contingency, from(['direct'], 'direct cost × share', ['pricing.contingency'])),
    total('overhead', t.overhead, from(['direct', 'contingency'], 'their sum × share', ['pricing.overhead'])),
    total('cost', t.cost, from(['direct', 'contingency', 'overhead'], 'sum')),
    total('price', t.price, from(['cost'], rule, ['builder', 'pricing.method', `pricing.${t.method}`])),
    total('priceTax', t.priceTax, from(['price'], 'price × tax', ['pricing.priceTax'])),
    total('priceWithTax', t.priceWithTax, from(['price', 'priceTax'], 'sum')),
    total(
      'perSquareFoot',
      t.perSquareFoot,
      from([t.perSquareFootOf], `${t.perSquareFootOf} ÷ outline area`, ['size']),
    ),
  ])
}
