import type { Check } from '../../checks/index.ts'
import { toldBy } from '../../job/index.ts'
import { printInches } from '../../units/index.ts'
import type { PaperSource } from '../source.ts'

/**
 * What the checks that pass stand on besides published tables that were read: values recalled, parts in no table, common
 * practice, and local facts that nobody is named for. A reviewer who reads "passes" is told of each.
 */
export function standsOn({ estimate }: Pick<PaperSource, 'estimate'>): readonly string[] {
  const { checks, job } = estimate
  const passing = checks.filter(({ status }) => status === 'passes' || status === 'near')
  const read = passing.filter(({ basis }) => basis === 'table, verified')
  const recalled = passing.filter(({ governing, findings }) =>
    [governing, ...findings].some((one) => one?.confidence.startsWith('from memory') === true),
  )
  const beside = passing.filter(({ remedy }) => remedy.includes('not in the tables'))
  const practice = passing.filter(
    ({ findings, remedy, message }) =>
      findings.some(({ confidence }) => confidence === 'common practice, no source') ||
      `${message} ${remedy}`.includes('common practice, no source'),
  )
  const { site } = job
  return [
    `Of ${checks.length} checks ${read.length} are decided by a value of a table or clause that was compared with the published one.`,
    named('With values from memory, which were not compared', recalled),
    named('With parts that are not in the tables, told under Remarks', beside),
    named('With values of common practice that have no source', practice),
    site.snowStated && site.snowSource.trim() !== ''
      ? ''
      : `On ground snow of ${site.snowLoad} psf, ${site.snowStated ? toldBy(site.snowSource) : 'which nobody stated: confirm it with the building department'}.`,
    site.frostStated && site.frostSource.trim() !== ''
      ? ''
      : `On a frost depth of ${printInches(site.frostDepth)}, ${site.frostStated ? toldBy(site.frostSource) : 'which nobody stated: confirm it with the building department'}.`,
  ].filter((text) => text !== '')
}

function named(what: string, checks: readonly Check[]): string {
  const titles = [...new Set(checks.map(({ title }) => title))]
  return titles.length === 0 ? '' : `${what}: ${titles.join(', ')}.`
}
