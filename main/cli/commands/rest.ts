import { restCuttingTable, restPurchaseTable } from '../../../core/papers/index.ts'
import type { ProductRest } from '../../../core/plan-the-rest.ts'
import { printMoney } from '../../../core/units/index.ts'
import type { Command } from '../arguments.ts'
import { pricesUsed, readDayFile, readJobFile, readPrices } from '../inputs.ts'
import { type ExitCode, faultLines, type Output } from '../output.ts'
import { pricesHead } from '../report.ts'
import { textTable, wrap } from '../text-table.ts'

/** The rest of a job that is begun: what is cut otherwise, what is bought, what it costs. */
export async function runRest(
  { job, day, prices, json }: Extract<Command, { kind: 'rest' }>,
  output: Output,
): Promise<ExitCode> {
  const statement = readJobFile(job, output)
  const stated = readDayFile(day, output)
  const used = await readPrices(prices, statement, output)
  if (statement === null || stated === null || used === null) return 2
  const { loadCalculations } = await import('../../app/calculations.ts')
  const rests = (await loadCalculations()).planTheDay(statement.statement, used.book, stated.value)
  if (!rests.ok) {
    output.warn(
      faultLines(
        day,
        rests.error.map((fault) => ({ ...fault, ...stated.placeOf(fault.path) })),
      ),
    )
    return 2
  }
  if (json) output.say(`${JSON.stringify({ prices: pricesUsed(used), rests: rests.value }, null, 2)}\n`)
  else output.say(`${pricesHead(used)}\n${rests.value.map(bothWays).join('\n')}`)
  return 0
}

/** The cheapest way, and the one that changes fewer boards where that costs more. */
function bothWays(rest: ProductRest): string {
  const { fewerChanges } = rest.replan
  if (fewerChanges === null) return report(rest)
  return `${report(rest)}\nOr change fewer boards\n${report({ ...rest, replan: fewerChanges })}`
}

function report(rest: ProductRest): string {
  const { label, replan } = rest
  const { money, stays, changed } = replan
  const extra =
    money.extra > 0
      ? `${printMoney(money.extra)} more than planned`
      : money.extra < 0
        ? `${printMoney(money.extra)} against the plan`
        : 'nothing more than planned'
  const facts = [
    `${label}: ${extra}. To pay from now: ${printMoney(money.now)}.`,
    money.refund > 0 ? `Boards that are over bring back ${printMoney(money.refund)}.` : '',
    changed.length === 0
      ? ''
      : `Sawn otherwise: ${changed.length === 1 ? 'board' : 'boards'} ${changed.join(', ')}.`,
    stays.length === 0 ? '' : `Still sawn as planned: ${stays.map((board) => board.number).join(', ')}.`,
    replan.why,
  ].filter((fact) => fact !== '')
  return [
    `${facts.flatMap((fact) => wrap(fact, 106)).join('\n')}\n`,
    textTable(restCuttingTable(rest)),
    textTable(restPurchaseTable(rest)),
  ]
    .filter((part) => part !== '')
    .join('\n')
}
