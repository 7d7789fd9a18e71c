import type { Sized, SizingReason } from '../../core/sizing/index.ts'
import { cents, printMoney } from '../../core/units/index.ts'
import { checksReport } from './checks-report.ts'
import { textTable, wrap } from './text-table.ts'

const WIDTH = 106

/** What sizing proposes, as plain text: the changes, their cost, what governs, and what no size mends. */
export function sizingReport(sized: Sized): string {
  const { changes, reasons, remaining } = sized
  const table =
    changes.length === 0
      ? 'The sizes as stated are the cheapest that pass.\n'
      : textTable({
          id: 'sizing',
          title: 'Change',
          columns: [
            { key: 'label', label: 'Field', align: 'left' },
            { key: 'from', label: 'From', align: 'left' },
            { key: 'to', label: 'To', align: 'left' },
          ],
          rows: changes.map(({ label, from, to }) => ({ label, from, to })),
        })
  const left =
    remaining.length === 0 ? '' : `\nWhat no size mends\n${checksReport(remaining).replace('Checks\n', '')}`
  return `${table}\n${costLines(sized)}\nWhat governs\n${reasons.map(reasonLines).join('')}${left}`
}

function costLines({ costBefore, costAfter, failingBefore, work }: Sized): string {
  const before = costBefore === null ? 'no price' : printMoney(costBefore)
  const change = costBefore === null ? '' : `, ${moneyChange(costAfter - costBefore)}`
  const failing =
    failingBefore.length === 0
      ? ''
      : `  As stated, ${failingBefore.length} of its checks ${failingBefore.length === 1 ? 'does' : 'do'} not pass.\n`
  const proof = work.proven
    ? `Nothing that passes is cheaper: ${work.ways} ways, all but ${work.priced} ruled out by checks or by their least cost.`
    : `The work allowed is done after ${work.priced} ways priced in full; a cheaper one may be left.`
  const lines = wrap(proof, WIDTH).map((line) => `  ${line}\n`)
  return `Cost\n  ${before} → ${printMoney(costAfter)}${change}\n  The estimate, worked to its end, may come out a little lower.\n${failing}${lines.join('')}`
}

function moneyChange(change: number): string {
  if (change === 0) return 'no change'
  return change < 0 ? `${printMoney(cents(-change))} less` : `${printMoney(cents(change))} more`
}

function reasonLines({ part, chosen, governs, smaller }: SizingReason): string {
  const by =
    governs === null
      ? 'nothing comes near a limit'
      : `${governs.check.title}, ${Math.round((governs.finding.ratio ?? 0) * 100)} % of its limit`
  const head = `${part}: ${chosen}; ${by}`
  return [
    ...wrap(head, WIDTH).map((line) => `  ${line}\n`),
    ...smaller.flatMap(({ option, why }) =>
      wrap(`${option}: ${why}`, WIDTH - 4).map((line) => `      ${line}\n`),
    ),
  ].join('')
}
