import { type Check, type CheckStatus, type Finding, percent } from '../../core/checks/index.ts'
import { wrap } from './text-table.ts'

const MARKS: { readonly [status in CheckStatus]: string } = {
  passes: '● passes',
  near: '◐ near',
  fails: '▲ fails',
  'calculated only': '◇ calculated only',
  'outside scope': '◇ outside scope',
}
const STATUS_WIDTH = 17
const TITLE_WIDTH = 26
/** what is said stands under the title */
const INDENT = ' '.repeat(2 + STATUS_WIDTH + 2)
const WIDTH = 110 - INDENT.length

/** Each check on a line of its own with what decides it, then what it says and what to do. */
export function checksReport(checks: readonly Check[]): string {
  return `Checks\n${checks.map(checkLines).join('')}`
}

function checkLines(check: Check): string {
  const head = `  ${MARKS[check.status].padEnd(STATUS_WIDTH)}  ${check.title.padEnd(TITLE_WIDTH)} ${basisOf(check.governing)}`
  const said = [byCalculation(check), check.message, check.remedy]
    .filter((words) => words !== '')
    .flatMap((words) => wrap(words, WIDTH))
  return [head.trimEnd(), ...said.map((line) => INDENT + line)].map((line) => `${line}\n`).join('')
}

/** Which of table and calculation decides, where the calculation does; a table stands beside its clause. */
function byCalculation({ governing, basis }: Check): string {
  return governing?.method === 'calculated' ? `Decided by ${basis}.` : ''
}

function basisOf(finding: Finding | null): string {
  if (finding === null) return ''
  const used = finding.ratio === null ? '      ' : percent(finding.ratio).padStart(6)
  const known = finding.method === 'calculated' ? '' : ` (${finding.confidence})`
  return `${used}  ${finding.document} ${finding.edition} ${finding.clause}${known}`
}
