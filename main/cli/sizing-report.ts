import { percent } from '../../core/checks/index.ts'
import {
  basisWords,
  costWords,
  proofWords,
  type Sized,
  type SizingReason,
  unchangedWords,
} from '../../core/sizing/index.ts'
import { checksReport } from './checks-report.ts'
import { textTable, wrap } from './text-table.ts'

const WIDTH = 106

/** What sizing proposes, as plain text: the changes, their cost, what governs, and what no size mends. */
export function sizingReport(sized: Sized): string {
  const { changes, reasons, remaining, byCalculation } = sized
  const table =
    changes.length === 0
      ? `${unchangedWords(sized.work)}\n`
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
  const trusted =
    byCalculation.length === 0
      ? ''
      : `\nBy calculation alone\n${indented(basisWords(sized))}${checksReport(byCalculation).replace('Checks\n', '')}`
  return `${table}\n${costLines(sized)}\nWhat governs\n${reasons.map(reasonLines).join('')}${trusted}${left}`
}

function costLines(sized: Sized): string {
  return `Cost\n${[costWords(sized), proofWords(sized.work)].map(indented).join('')}`
}

function indented(words: string): string {
  return wrap(words, WIDTH)
    .map((line) => `  ${line}\n`)
    .join('')
}

function reasonLines({ part, chosen, governs, smaller }: SizingReason): string {
  const by =
    governs === null
      ? 'nothing comes near a limit'
      : `${governs.check.title}, ${percent(governs.finding.ratio ?? 0)} of its limit`
  const head = `${part}: ${chosen}; ${by}`
  return [
    ...wrap(head, WIDTH).map((line) => `  ${line}\n`),
    ...smaller.flatMap(({ option, why }) =>
      wrap(`${option}: ${why}`, WIDTH - 4).map((line) => `      ${line}\n`),
    ),
  ].join('')
}
