import type { Line, Totals } from '../../../../core/pricing/index.ts'
import { type Cents, cents, type Share } from '../../../../core/units/index.ts'
import { type Cell, type CellLook, dollars, empty, formula, fraction, number, text } from '../cell.ts'
import type { SheetBuilder } from '../sheet.ts'
import type { PricedEstimate } from '../source.ts'

/** One step from the lines to the price: what it is, of what, at which rate, its amount. */
interface Step {
  readonly label: string
  readonly say?: string
  readonly rate?: Cell
  readonly amount: Cell
}

/** The sums and shares below the lines of the sheet Cost, each amount a cell with a name. */
export function writeTotals(
  sheet: SheetBuilder,
  { job, layout, pricing: { totals } }: PricedEstimate,
  rows: { readonly first: number; readonly last: number },
): void {
  const owner = totals.method === 'none'
  sheet.gap()
  sheet.heading('From the lines to the price')
  const steps: readonly Step[] = [
    { label: 'Material', amount: sumOf('material', totals.material, rows) },
    {
      label: 'Sales tax on material',
      rate: rate(job.pricing.salesTax, 'sales_tax_rate'),
      amount: money('tax', 'ROUND(material*sales_tax_rate,2)', totals.tax),
    },
    {
      label: 'Labour',
      ...(owner && totals.labour === 0 ? { say: 'own hours are not paid' } : {}),
      amount: sumOf('labour', totals.labour, rows),
    },
    { label: 'Hire, disposal, permit, delivery, allowances', amount: sumOf('other', totals.other, rows) },
    {
      label: 'Direct cost',
      amount: money('direct', 'ROUND(material+tax+labour+other,2)', totals.direct, {
        rule: 'thin',
        bold: true,
      }),
    },
    {
      label: 'Contingency',
      say: 'of the direct cost',
      rate: rate(job.pricing.contingency, 'contingency_share'),
      amount: money('contingency', 'ROUND(direct*contingency_share,2)', totals.contingency),
    },
    ...(owner ? [] : [overheadStep(job.pricing.overhead, totals)]),
    {
      label: 'Cost',
      amount: money('cost', `ROUND(direct+contingency${owner ? '' : '+overhead'},2)`, totals.cost, {
        rule: 'thin',
        bold: true,
      }),
    },
    ...(owner ? [] : priceSteps(totals, job.pricing.priceTax)),
    {
      label: owner ? 'Cost per square foot of deck' : 'Price per square foot of deck',
      say: 'square feet of outline',
      rate: number(layout.areaSquareFeet, 'decimal', { name: 'area' }),
      amount: money('per_square_foot', `ROUND(${owner ? 'cost' : 'price'}/area,2)`, totals.perSquareFoot),
    },
  ]
  for (const step of steps) writeStep(sheet, step)
}

function overheadStep(overhead: Share, totals: Totals): Step {
  return {
    label: 'Overhead',
    say: 'of direct cost and contingency',
    rate: rate(overhead, 'overhead_share'),
    amount: money('overhead', 'ROUND((direct+contingency)*overhead_share,2)', totals.overhead),
  }
}

/** A margin is a share of the price, a markup one of the cost; whichever the job names, the other is told too. */
function priceSteps(totals: Totals, priceTax: Share): readonly Step[] {
  const byMargin = totals.method === 'margin'
  const profit = cents(totals.price - totals.cost)
  const [otherOf, base, name] = byMargin
    ? ([totals.cost, 'cost', 'a markup on the cost'] as const)
    : ([totals.price, 'price', 'a margin on the price'] as const)
  return [
    {
      label: byMargin ? 'Margin' : 'Markup',
      say: byMargin ? 'of the price' : 'of the cost',
      rate: rate(totals.methodShare, byMargin ? 'margin' : 'markup'),
      amount: money('profit', 'ROUND(price-cost,2)', profit),
    },
    {
      label: '',
      say: `the same as ${name} of`,
      rate: formula(`IF(${base}=0,0,profit/${base})`, otherOf === 0 ? 0 : profit / otherOf, 'share', {
        soft: true,
      }),
      amount: empty,
    },
    {
      label: 'Price',
      amount: money(
        'price',
        byMargin ? 'ROUND(cost/(1-margin),2)' : 'ROUND(cost*(1+markup),2)',
        totals.price,
        {
          rule: 'strong',
          bold: true,
          size: 12,
        },
      ),
    },
    ...(priceTax === 0 ? [] : priceTaxSteps(totals, priceTax)),
  ]
}

function priceTaxSteps(totals: Totals, priceTax: Share): readonly Step[] {
  return [
    {
      label: 'Tax on the price',
      rate: rate(priceTax, 'price_tax_rate'),
      amount: money('price_tax', 'ROUND(price*price_tax_rate,2)', totals.priceTax),
    },
    {
      label: 'Price with tax',
      amount: money('price_with_tax', 'ROUND(price+price_tax,2)', totals.priceWithTax, {
        rule: 'thin',
        bold: true,
      }),
    },
  ]
}

function writeStep(sheet: SheetBuilder, { label, say, rate: share, amount }: Step): void {
  const look: CellLook = {
    bold: amount.bold === true,
    ...(amount.rule === undefined ? {} : { rule: amount.rule }),
    ...(amount.size === undefined ? {} : { size: amount.size }),
  }
  sheet.row([
    text(label, look),
    text(say ?? '', { soft: true, right: true, span: 3 }),
    empty,
    empty,
    share ?? empty,
    amount,
  ])
}

function rate(value: Share, name: string): Cell {
  return number(fraction(value), 'share', { input: true, name })
}

function money(name: string, expression: string, amount: Cents, look: CellLook = {}): Cell {
  return formula(expression, dollars(amount), 'money', { ...look, name })
}

function sumOf(part: Line['part'], amount: Cents, { first, last }: { first: number; last: number }): Cell {
  return money(part, `ROUND(SUMIF(G${first}:G${last},"${part}",F${first}:F${last}),2)`, amount)
}
