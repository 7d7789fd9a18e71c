import { exceptions } from './licence-terms.ts'
import type { ShippedPackage } from './shipped-packages.ts'

/** The list of other people's work that reaches a user, made from the lock file. */
export function noticesText(packages: readonly ShippedPackage[]): string {
  const rows = packages.map(({ name, version, licence }) => `| ${name} | ${version} | ${licence} |`)
  const names = new Set(packages.map(({ name }) => name))
  const reasons = Object.entries(exceptions)
    .filter(([name]) => names.has(name))
    .map(([name, { reason }]) => `- ${name}: ${reason}.`)
  return [
    '# Third-party notices',
    '',
    'Kerfwright is distributed as source; npm fetches these packages, each with its own licence text in its folder.',
    'Made by `npm run notices` from the lock file; `npm test` fails where it is out of date.',
    '',
    '| package | version | licence |',
    '| --- | --- | --- |',
    ...new Set(rows),
    '',
    'Where a package states no licence of its own:',
    '',
    ...reasons,
    '',
  ].join('\n')
}
